import { requireFinite, requireFraction } from '../../checks/index.js';
import { type Quantity, quantityUnits } from '../../circuit/index.js';
import type { Values } from '../differentiation/model.js';
import { rectangularInput } from '../inputs/rectangular-input.js';
import { type Propagated, propagate } from '../propagate.js';
import type { UncertainInput } from '../uncertain-input.js';
import type { AccuracyStatement, ReadingConditions } from './accuracy-statement.js';
import { type LoadStatement, loadErrors } from './load-errors.js';
import { readingErrors } from './reading-errors.js';

/** A reading that is compared with limits in its own quantity. */
export interface ReadingBudgetInput extends ReadingConditions {
  /** Quantity that the instrument reads and in which the limits are. */
  readonly reads: Quantity;
  /** The instrument's statement for this quantity. */
  readonly accuracy: AccuracyStatement;
  readonly load: LoadStatement;
  /**
   * How the generator's power follows the load around this point: d ln P / d ln R.
   * 1 in a stretch of constant current, 0 of constant power, −1 of constant voltage.
   */
  readonly slope: number;
  /** Relative limits of what strays of load and leads do to the reading itself, where nothing is corrected for; 0 unless stated. */
  readonly effect?: number;
}

/** Budget of a reading, and how the load enters it. */
export interface ReadingBudget extends Propagated {
  /** Quantity of the budget. */
  readonly quantity: Quantity;
  /** Exponent with which the reading, at the true resistance, is referred to the nominal one. */
  readonly loadExponent: number;
  /** Why the load counts here, or does not. */
  readonly loadStatement: string;
}

/**
 * Budget of a reading that is compared with limits which hold at the nominal load.
 *
 * The generator feeds the load that is really there. What it would have fed into the nominal load follows from the
 * slope of its curve: x₀ = x·(R₀/R)^e with e = (slope − 1)/2 for current, (slope + 1)/2 for voltage, slope for power.
 *
 * @param input Reading, range, instrument statement, load statement, slope
 * @returns The budget in the quantity that is read
 * @throws CalculationError as `readingErrors` and `loadErrors`
 * @source JCGM 100:2008, 5.1; the exponents follow from I = √(P/R) and V = √(P·R)
 * @example
 * ```ts
 * import { readingBudget } from 'esu-limits/uncertainty';
 * const base = { reads: 'current', reading: 0.5, range: { maximum: 1, resolution: 0.001 }, accuracy: { ofReading: 0.01 } } as const;
 * const load = { resistance: 500, tolerance: 0.02 };
 * readingBudget({ ...base, load, slope: 0 }).standardUncertainty.toFixed(5); // → "0.00409"
 * readingBudget({ ...base, load, slope: 1 }).standardUncertainty.toFixed(5); // → "0.00290"
 * ```
 */
export function readingBudget(input: ReadingBudgetInput): ReadingBudget {
  const { reads, accuracy, load, slope, reading } = input;
  requireFinite(slope, 'slope');
  const exponent = reads === 'current' ? (slope - 1) / 2 : reads === 'voltage' ? (slope + 1) / 2 : slope;
  const unit = quantityUnits[reads];
  const errors: Record<string, UncertainInput> = { ...readingErrors(accuracy, input, unit) };
  if (input.effect !== undefined) {
    const halfWidth = requireFraction(input.effect, 'effect') * reading;
    errors['effect'] = rectangularInput({ value: 0, halfWidth }, { description: 'strays of load and leads', unit });
  }
  const ofLoad = loadErrors(load);
  const readingNames = Object.keys(errors);
  const loadNames = Object.keys(ofLoad);
  const inputs: Record<string, UncertainInput> = { ...errors, ...ofLoad };
  // Reading plus its errors, referred to the nominal load; all derivatives are in closed form.
  const resistance = (x: Values): number => loadNames.reduce((ratio, name) => ratio * (1 + (x[name] as number)), 1);
  const shown = (x: Values): number => readingNames.reduce((sum, name) => sum + (x[name] as number), reading);
  const evaluate = (x: Values): number => shown(x) * resistance(x) ** -exponent;
  const sensitivities: Record<string, (x: Values) => number> = {};
  for (const name of readingNames) sensitivities[name] = (x) => resistance(x) ** -exponent;
  for (const name of loadNames) sensitivities[name] = (x) => (-exponent * evaluate(x)) / (1 + (x[name] as number));
  const result = propagate({ evaluate, sensitivities }, inputs, { secondOrder: false });
  return { ...result, quantity: reads, loadExponent: exponent, loadStatement: statementOf(reads, exponent, loadNames) };
}

const quantityNames = { power: 'power', current: 'current', voltage: 'voltage' } as const;

function statementOf(reads: Quantity, exponent: number, loadNames: readonly string[]): string {
  const name = quantityNames[reads];
  const domain = `The budget is in ${name}, as the limits are.`;
  if (loadNames.length === 0) return `${domain} Nothing is stated of the load's error: it is taken as none.`;
  if (Math.abs(exponent) < 1e-6) {
    return `${domain} The load does not count: around this load the generator keeps the ${name} whatever the load.`;
  }
  const sign = exponent > 0 ? 'rises' : 'falls';
  const percent = Number(Math.abs(exponent).toPrecision(2));
  return `${domain} The load counts: for 1 % more resistance the expected ${name} ${sign} by ${percent} %.`;
}
