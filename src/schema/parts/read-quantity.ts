import type { Fault } from '../../checks/index.js';
import type { Quantity } from '../../circuit/index.js';
import { safeParseQuantity } from '../../units/index.js';
import { finite } from './members.js';
import type { QuantityRule } from './quantity-pattern.js';
import type { Report } from './report-fault.js';

/** The number in SI units that a member gives; undefined after a fault was reported. */
export function readQuantity(
  input: unknown,
  path: readonly PropertyKey[],
  rule: QuantityRule,
  report: Report,
): number | undefined {
  // What is neither was reported where its type is checked.
  if (typeof input !== 'string' && finite(input) === undefined) return undefined;
  const value = typeof input === 'string' ? readText(input, rule) : (input as number);
  if (typeof value !== 'number') {
    report(value.code, path, input, value.requirement, value.hint);
    return undefined;
  }
  const wrong = rangeFault(value, rule.range ?? 'positive');
  if (wrong === undefined) return value;
  report(wrong.code, path, input, wrong.requirement, wrong.hint);
  return undefined;
}

/** What a text gives in SI units, or its fault. */
export function readText(text: string, { kind, form }: QuantityRule): number | Fault {
  const options = form === undefined ? { expect: kind } : { expect: kind, form };
  let result = safeParseQuantity(text, options);
  if (!result.ok && form === 'peak' && result.fault.code === 'form-mismatch' && !/rms|p-p|pp|pk/i.test(text)) {
    // The name of the member says peak, so the text need not say it again.
    result = safeParseQuantity(`${text} peak`, options);
  }
  return result.ok ? result.value.value : result.fault;
}

/** Kind of value of a quantity that is read at a load. */
export function ruleFor(quantity: Quantity, range: QuantityRule['range'] = 'positive'): QuantityRule {
  return { kind: quantity, range };
}

/** Whether a value is one of the three quantities, whatever it is. */
export function isQuantity(value: unknown): value is Quantity {
  return value === 'power' || value === 'current' || value === 'voltage';
}

function rangeFault(
  value: number,
  range: NonNullable<QuantityRule['range']>,
): Pick<Fault, 'code' | 'requirement' | 'hint'> | undefined {
  if (range === 'positive')
    return value > 0 ? undefined : { code: 'not-positive', requirement: 'must be greater than 0' };
  if (range === 'zero or more') return value >= 0 ? undefined : { code: 'negative', requirement: 'must be 0 or more' };
  if (value >= 0 && value <= 1) return undefined;
  return {
    code: 'not-a-fraction',
    requirement: 'must be a fraction from 0 to 1',
    ...(value > 1 && value <= 100 ? { hint: `If ${value} % is meant, write "${value} %" or ${value / 100}.` } : {}),
  };
}
