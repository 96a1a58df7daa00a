/** An exact decimal number of zero or more: digits × 10^exponent. */
export interface Decimal {
  readonly digits: bigint;
  readonly exponent: number;
}

/** The shortest decimal that stands for a number of zero or more: reading it gives the same number. */
export function shortestDecimal(value: number): Decimal {
  const [mantissa = '', exponent = ''] = value.toExponential().split('e');
  return decimalOf(mantissa, Number(exponent));
}

/** The decimal that a mantissa such as `1.25` and an exponent write. */
export function decimalOf(mantissa: string, exponent: number): Decimal {
  const point = mantissa.indexOf('.');
  return {
    digits: BigInt(mantissa.replace('.', '')),
    exponent: point < 0 ? exponent : exponent - (mantissa.length - point - 1),
  };
}

/** The nearest double to a decimal: reading decimal text is correctly rounded. */
export function decimalToNumber({ digits, exponent }: Decimal): number {
  return Number(`${digits}e${exponent}`);
}

/** Signed digits of both decimals at their common, lower exponent. */
export function alignDecimals(a: Decimal, b: Decimal): { a: bigint; b: bigint; exponent: number } {
  const exponent = Math.min(a.exponent, b.exponent);
  return { a: a.digits * tenTo(a.exponent - exponent), b: b.digits * tenTo(b.exponent - exponent), exponent };
}

/** Power of ten of the first digit: 2 for 120. Minus infinity for zero. */
export function magnitudeOf({ digits, exponent }: Decimal): number {
  return digits === 0n ? Number.NEGATIVE_INFINITY : String(digits).length - 1 + exponent;
}

/** Rounds to a whole multiple of a step; a tie of `nearest` goes away from zero. */
export function roundDecimal(value: Decimal, step: Decimal, rounding: 'nearest' | 'down' | 'up'): Decimal {
  const { a, b, exponent } = alignDecimals(value, step);
  const whole = a / b;
  const rest = a % b;
  const up = rounding === 'nearest' ? rest * 2n >= b : rounding === 'up' && rest > 0n;
  const multiple = (up ? whole + 1n : whole) * b;
  // Back at the exponent of the step, so that the digits are those that the step lets stand.
  return { digits: multiple / tenTo(step.exponent - exponent), exponent: step.exponent };
}

/** The same decimal without zeros at its end. */
export function stripZeros({ digits, exponent }: Decimal): Decimal {
  const all = String(digits);
  const significant = all.replace(/0+$/, '');
  return significant === ''
    ? { digits: 0n, exponent: 0 }
    : { digits: BigInt(significant), exponent: exponent + all.length - significant.length };
}

/** Digits with their point, or with an exponent where the point would be far away. */
export function decimalText({ digits, exponent }: Decimal): string {
  const all = String(digits);
  const magnitude = all.length - 1 + exponent;
  if (digits === 0n) return exponent < 0 ? `0.${'0'.repeat(-exponent)}` : '0';
  if (magnitude > 20 || magnitude < -7) {
    const significant = all.length > 20 ? all.replace(/0+$/, '') : all;
    return `${significant[0]}${significant.length > 1 ? '.' : ''}${significant.slice(1)}e${magnitude}`;
  }
  if (exponent >= 0) return all + '0'.repeat(exponent);
  const padded = all.padStart(1 - exponent, '0');
  return `${padded.slice(0, exponent)}.${padded.slice(exponent)}`;
}

function tenTo(power: number): bigint {
  return 10n ** BigInt(power);
}
