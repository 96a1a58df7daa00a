/*
 * An independent way to first and second derivatives: arithmetic with numbers x + a·ε₁ + b·ε₂ + c·ε₁ε₂, where
 * ε₁² = ε₂² = 0. It carries derivatives along with values and knows nothing of expressions for them.
 */

/** A value with its derivatives by two variables and the mixed second one. */
export interface HyperDual {
  readonly value: number;
  readonly first: number;
  readonly second: number;
  readonly both: number;
}

export const constant = (value: number): HyperDual => ({ value, first: 0, second: 0, both: 0 });

/** Applies a function whose value and first two derivatives at a point are known. */
export function lift(u: HyperDual, [g, g1, g2]: readonly [number, number, number]): HyperDual {
  return {
    value: g,
    first: g1 * u.first,
    second: g1 * u.second,
    both: g1 * u.both + g2 * u.first * u.second,
  };
}

export function plus(a: HyperDual, b: HyperDual, sign = 1): HyperDual {
  return {
    value: a.value + sign * b.value,
    first: a.first + sign * b.first,
    second: a.second + sign * b.second,
    both: a.both + sign * b.both,
  };
}

export function times(a: HyperDual, b: HyperDual): HyperDual {
  return {
    value: a.value * b.value,
    first: a.first * b.value + a.value * b.first,
    second: a.second * b.value + a.value * b.second,
    both: a.both * b.value + a.first * b.second + a.second * b.first + a.value * b.both,
  };
}

export function over(a: HyperDual, b: HyperDual): HyperDual {
  const product = times(a, lift(b, [1 / b.value, -1 / b.value ** 2, 2 / b.value ** 3]));
  return { ...product, value: a.value / b.value };
}

/** Value and first two derivatives of each function of one argument. */
export const elementary: Readonly<Record<string, (x: number) => readonly [number, number, number]>> = {
  abs: (x) => [Math.abs(x), x === 0 ? Number.NaN : Math.sign(x), 0],
  acos: (x) => [Math.acos(x), -((1 - x * x) ** -0.5), -x * (1 - x * x) ** -1.5],
  acosh: (x) => [Math.acosh(x), (x * x - 1) ** -0.5, -x * (x * x - 1) ** -1.5],
  asin: (x) => [Math.asin(x), (1 - x * x) ** -0.5, x * (1 - x * x) ** -1.5],
  asinh: (x) => [Math.asinh(x), (1 + x * x) ** -0.5, -x * (1 + x * x) ** -1.5],
  atan: (x) => [Math.atan(x), 1 / (1 + x * x), (-2 * x) / (1 + x * x) ** 2],
  atanh: (x) => [Math.atanh(x), 1 / (1 - x * x), (2 * x) / (1 - x * x) ** 2],
  cbrt: (x) => [Math.cbrt(x), 1 / (3 * Math.cbrt(x) ** 2), -2 / (9 * Math.cbrt(x) ** 5)],
  cos: (x) => [Math.cos(x), -Math.sin(x), -Math.cos(x)],
  cosh: (x) => [Math.cosh(x), Math.sinh(x), Math.cosh(x)],
  exp: (x) => [Math.exp(x), Math.exp(x), Math.exp(x)],
  expm1: (x) => [Math.expm1(x), Math.exp(x), Math.exp(x)],
  log: (x) => [Math.log(x), 1 / x, -1 / (x * x)],
  log10: (x) => [Math.log10(x), 1 / (x * Math.LN10), -1 / (x * x * Math.LN10)],
  log1p: (x) => [Math.log1p(x), 1 / (1 + x), -1 / (1 + x) ** 2],
  log2: (x) => [Math.log2(x), 1 / (x * Math.LN2), -1 / (x * x * Math.LN2)],
  sin: (x) => [Math.sin(x), Math.cos(x), -Math.sin(x)],
  sinh: (x) => [Math.sinh(x), Math.cosh(x), Math.sinh(x)],
  sqrt: (x) => [Math.sqrt(x), 0.5 * x ** -0.5, -0.25 * x ** -1.5],
  square: (x) => [x * x, 2 * x, 2],
  tan: (x) => [Math.tan(x), 1 + Math.tan(x) ** 2, 2 * Math.tan(x) * (1 + Math.tan(x) ** 2)],
  tanh: (x) => [Math.tanh(x), 1 - Math.tanh(x) ** 2, -2 * Math.tanh(x) * (1 - Math.tanh(x) ** 2)],
};

/** A power: by the exponent's own rule where it is constant, else by way of the logarithm. */
export function toThe(a: HyperDual, b: HyperDual): HyperDual {
  const { value: x } = a;
  const { value: n } = b;
  if (b.first === 0 && b.second === 0 && b.both === 0) {
    return lift(a, [x ** n, n === 0 ? 0 : n * x ** (n - 1), n === 0 || n === 1 ? 0 : n * (n - 1) * x ** (n - 2)]);
  }
  const log = (elementary['log'] as (x: number) => readonly [number, number, number])(x);
  const exponent = times(b, lift(a, log));
  const power = x ** n;
  return lift(exponent, [power, power, power]);
}
