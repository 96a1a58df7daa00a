import { combineDimensions, type Dimension, plain, raiseDimension } from './dimension.js';
import { addRational, negateRational, type Rational } from './rational.js';
import { unitNames } from './unit-names.js';

/** A unit as named units with exponents, none of them 0, in the order they were written. */
export type UnitFactors = ReadonlyMap<string, Rational>;

/** The unit of a quotient, such as that of a sensitivity; undefined where an exponent is no longer exact. */
export function divideFactors(a: UnitFactors, b: UnitFactors): UnitFactors | undefined {
  const quotient = new Map(a);
  for (const [name, exponent] of b) {
    const sum = addRational(quotient.get(name) ?? { numerator: 0, denominator: 1 }, negateRational(exponent));
    if (sum === undefined) return undefined;
    if (sum.numerator === 0) quotient.delete(name);
    else quotient.set(name, sum);
  }
  return quotient;
}

/** The dimension of a unit; undefined where an exponent is no longer exact. */
export function dimensionOfFactors(factors: UnitFactors): Dimension | undefined {
  let product: Dimension | undefined = plain;
  for (const [name, exponent] of factors) {
    const raised = raiseDimension(unitNames.get(name) as Dimension, exponent);
    product = product && raised && combineDimensions(product, raised, 1);
  }
  return product;
}

/** A unit as text: `W`, `A^2 s`, `V/K`, `W/(m K)`, `1/K`, and `1` for a plain number. */
export function printFactors(factors: UnitFactors): string {
  const above: string[] = [];
  const below: string[] = [];
  for (const [name, exponent] of factors) {
    if (exponent.numerator > 0) above.push(printFactor(name, exponent));
    else below.push(printFactor(name, negateRational(exponent)));
  }
  const numerator = above.join(' ') || '1';
  if (below.length === 0) return numerator;
  return `${numerator}/${below.length === 1 ? below[0] : `(${below.join(' ')})`}`;
}

function printFactor(name: string, { numerator, denominator }: Rational): string {
  if (denominator !== 1) return `${name}^(${numerator}/${denominator})`;
  return numerator === 1 ? name : `${name}^${numerator}`;
}
