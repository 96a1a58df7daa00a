import { describe, type Fault, nearName } from '../../checks/index.js';
import type { Dimension } from './dimension.js';
import { addRational, type Rational, rational } from './rational.js';
import { dimensionOfFactors, type UnitFactors } from './unit-factors.js';
import { otherSpellings, unitNames } from './unit-names.js';

/** A unit that was read. */
export interface ParsedUnit {
  readonly factors: UnitFactors;
  readonly dimension: Dimension;
}

const longest = 80;
const factor = String.raw`(?:1|[A-Za-z\u03a9\u2126\u00b5\u03bc]+(?:\^(?:-?\d{1,2}|\(-?\d{1,2}(?:\/\d{1,2})?\)))?)`;
const product = `${factor}(?:(?:[ ]*[*·][ ]*|[ ]+)${factor})*`;
const unit = /* @__PURE__ */ new RegExp(
  String.raw`^[ ]*(${product})(?:[ ]*\/[ ]*(?:\([ ]*(${product})[ ]*\)|(${factor})))?[ ]*$`,
);
const factorParts = /^([^^]+)(?:\^\(?(-?\d+)(?:\/(\d+))?\)?)?$/;

/** Units that a bench uses, and what a model takes instead. */
const instead: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['degC', 'K'],
  ['celsius', 'K'],
  ['min', 's'],
  ['h', 's'],
  ['g', 'kg'],
  ['percent', '1'],
  ['deg', 'rad'],
]);

/**
 * Reads a unit of the SI: named units with `*` or a blank between them, `^` and one `/`.
 * Prefixes are refused, since the values of a model are in SI units without them.
 */
export function parseUnit(text: unknown, path: string): ParsedUnit | readonly Fault[] {
  const received = describe(text);
  if (typeof text !== 'string') {
    return [{ code: 'wrong-type', path, received, requirement: 'must be text, such as ohm' }];
  }
  const match = text.length > longest ? null : unit.exec(text);
  if (!match) {
    const requirement = 'must be SI units with *, ^ and one /, such as W, 1/K, A^2 s or W/(m K)';
    return [{ code: 'text-malformed', path, received, requirement, ...hintFor(text) }];
  }
  const faults: Fault[] = [];
  const factors = new Map<string, Rational>();
  const read = (part: string, sign: 1 | -1): void => {
    const [, written = '', numerator = '1', denominator = '1'] = factorParts.exec(part) ?? [];
    if (written === '1') return;
    const name = otherSpellings.get(written) ?? written;
    const exponent = rational(sign * Number(numerator), Number(denominator));
    if (exponent === undefined || exponent.numerator === 0) {
      faults.push({ code: 'text-malformed', path, received, requirement: 'must have exponents other than 0' });
    } else if (!unitNames.has(name)) {
      const requirement = `must be made of SI units without prefix, and ${written} is none of: ${[...unitNames.keys()].join(', ')}`;
      faults.push({ code: 'unit-unknown', path, received, requirement, ...nearUnit(written) });
    } else {
      const before = factors.get(name);
      const sum = before === undefined ? exponent : (addRational(before, exponent) ?? exponent);
      if (sum.numerator === 0) factors.delete(name);
      else factors.set(name, sum);
    }
  };
  for (const part of partsOf(match[1] as string)) read(part, 1);
  for (const part of partsOf(match[2] ?? match[3] ?? '1')) read(part, -1);
  const dimension = faults.length > 0 ? undefined : dimensionOfFactors(factors);
  return dimension ? { factors, dimension } : faults;
}

function partsOf(text: string): readonly string[] {
  return text.split(/[ *·]+/);
}

function hintFor(text: string): { readonly hint?: string } {
  if (text.includes('%')) return { hint: 'A fraction is a plain number: write 1.' };
  if (text.includes('°')) return { hint: 'Temperatures are in kelvins: write K, and give the value in kelvins.' };
  if (text.split('/').length > 2 || /\/[^(]*[ *·]/.test(text)) {
    return { hint: 'Write all units of the denominator in one pair of parentheses.' };
  }
  return {};
}

function nearUnit(written: string): { readonly hint?: string } {
  const bare = /^(?:da|[pnµμumcdhkMGT])(.+)$/.exec(written)?.[1] ?? '';
  const plain = instead.get(written) ?? otherSpellings.get(bare) ?? (unitNames.has(bare) ? bare : undefined);
  if (plain !== undefined)
    return { hint: `Values are in SI units without prefix: write ${plain}, and give the value in it.` };
  const near = nearName(written, [...unitNames.keys(), ...otherSpellings.keys()]);
  return near === undefined || written.length < 2 ? {} : { hint: `Is ${near} meant?` };
}
