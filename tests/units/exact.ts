/*
 * Exact arithmetic for the laws of rounding: doubles and decimals as fractions of whole numbers,
 * so that a comparison has no rounding of its own.
 */

/** numerator / denominator, the denominator above zero. */
export interface Fraction {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

const view = new DataView(new ArrayBuffer(8));

/** A finite double, exactly. */
export function fractionOfDouble(value: number): Fraction {
  view.setFloat64(0, value);
  const bits = view.getBigUint64(0);
  const biased = Number((bits >> 52n) & 0x7ffn);
  const fraction = bits & 0xfffffffffffffn;
  const mantissa = biased === 0 ? fraction : fraction | 0x10000000000000n;
  const exponent = Math.max(biased, 1) - 1075;
  const signed = value < 0 ? -mantissa : mantissa;
  return exponent < 0
    ? { numerator: signed, denominator: 2n ** BigInt(-exponent) }
    : { numerator: signed * 2n ** BigInt(exponent), denominator: 1n };
}

/** Digits × 10^exponent, exactly. */
export function fractionOfDecimal(digits: bigint, exponent: number): Fraction {
  return exponent < 0
    ? { numerator: digits, denominator: 10n ** BigInt(-exponent) }
    : { numerator: digits * 10n ** BigInt(exponent), denominator: 1n };
}

export function add(a: Fraction, b: Fraction): Fraction {
  return {
    numerator: a.numerator * b.denominator + b.numerator * a.denominator,
    denominator: a.denominator * b.denominator,
  };
}

function subtract(a: Fraction, b: Fraction): Fraction {
  return add(a, { numerator: -b.numerator, denominator: b.denominator });
}

/** −1, 0 or 1 as a is below, equal to or above b. */
export function compare(a: Fraction, b: Fraction): -1 | 0 | 1 {
  const { numerator } = subtract(a, b);
  if (numerator === 0n) return 0;
  return numerator < 0n ? -1 : 1;
}

export function distance(a: Fraction, b: Fraction): Fraction {
  const { numerator, denominator } = subtract(a, b);
  return { numerator: numerator < 0n ? -numerator : numerator, denominator };
}

/** The double so many places further from zero; negative for nearer. */
export function neighbour(value: number, places: -1 | 1): number {
  view.setFloat64(0, value);
  view.setBigUint64(0, view.getBigUint64(0) + BigInt(places));
  return view.getFloat64(0);
}

/** How many doubles two doubles of one sign are apart. */
export function ulpsApart(a: number, b: number): number {
  view.setFloat64(0, Math.abs(a));
  const first = view.getBigUint64(0);
  view.setFloat64(0, Math.abs(b));
  const apart = Number(first - view.getBigUint64(0));
  return Math.sign(a) === Math.sign(b) ? Math.abs(apart) : Number.POSITIVE_INFINITY;
}
