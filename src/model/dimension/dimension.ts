import { addRational, multiplyRational, negateRational, type Rational } from './rational.js';

/** The base units of the SI, in the order of the exponents of a dimension. */
export const baseUnits = ['kg', 'm', 's', 'A', 'K', 'mol', 'cd'] as const;

/** Exponents of the base units. */
export type Dimension = readonly Rational[];

/** A dimension from whole exponents. */
export function dimension(...exponents: readonly number[]): Dimension {
  return baseUnits.map((_, i) => ({ numerator: exponents[i] ?? 0, denominator: 1 }));
}

/** That of a plain number. */
export const plain: Dimension = /* @__PURE__ */ dimension();

export function sameDimension(a: Dimension, b: Dimension): boolean {
  return a.every(({ numerator, denominator }, i) => numerator === b[i]?.numerator && denominator === b[i]?.denominator);
}

export function isPlain(a: Dimension): boolean {
  return a.every(({ numerator }) => numerator === 0);
}

/** Product of two dimensions, or quotient; undefined where an exponent is no longer exact. */
export function combineDimensions(a: Dimension, b: Dimension, sign: 1 | -1): Dimension | undefined {
  return allOf(a.map((exponent, i) => addRational(exponent, sign === 1 ? at(b, i) : negateRational(at(b, i)))));
}

/** A dimension to a power; undefined where an exponent is no longer exact. */
export function raiseDimension(a: Dimension, power: Rational): Dimension | undefined {
  return allOf(a.map((exponent) => multiplyRational(exponent, power)));
}

function at(a: Dimension, i: number): Rational {
  return a[i] as Rational;
}

function allOf(exponents: readonly (Rational | undefined)[]): Dimension | undefined {
  return exponents.includes(undefined) ? undefined : (exponents as Rational[]);
}
