/** An exact fraction in lowest terms, with a denominator above 0. */
export interface Rational {
  readonly numerator: number;
  readonly denominator: number;
}

/** A fraction in lowest terms; undefined where its parts are no longer exact. */
export function rational(numerator: number, denominator = 1): Rational | undefined {
  if (!Number.isSafeInteger(numerator) || !Number.isSafeInteger(denominator) || denominator === 0) return undefined;
  const divisor = commonDivisor(Math.abs(numerator), Math.abs(denominator)) * Math.sign(denominator);
  // + 0: no negative zero.
  return { numerator: numerator / divisor + 0, denominator: denominator / divisor };
}

export function addRational(a: Rational, b: Rational): Rational | undefined {
  return rational(a.numerator * b.denominator + b.numerator * a.denominator, a.denominator * b.denominator);
}

export function multiplyRational(a: Rational, b: Rational): Rational | undefined {
  return rational(a.numerator * b.numerator, a.denominator * b.denominator);
}

export function invertRational(a: Rational): Rational | undefined {
  return rational(a.denominator, a.numerator);
}

export function negateRational(a: Rational): Rational {
  return { numerator: -a.numerator + 0, denominator: a.denominator };
}

/** The fraction that the digits of a number mean: 0.1 is 1/10. */
export function rationalOf(value: number): Rational | undefined {
  const match = /^(-?\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(value));
  if (!match) return undefined;
  const [, whole = '', decimals = '', exponent = '0'] = match;
  const scale = Number(exponent) - decimals.length;
  const digits = Number(whole + decimals);
  return scale < 0 ? rational(digits, 10 ** -scale) : rational(digits * 10 ** scale);
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a || 1 : commonDivisor(b, a % b);
}
