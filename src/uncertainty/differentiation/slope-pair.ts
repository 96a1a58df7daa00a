import type { Arithmetic } from './arithmetic.js';

/** A quantity with its first derivatives along two directions. */
export type SlopePair = readonly [value: number, first: number, second: number];

function lift(a: SlopePair | number): SlopePair {
  return typeof a === 'number' ? [a, 0, 0] : a;
}

function multiply(x: SlopePair | number, y: SlopePair | number): SlopePair {
  const a = lift(x);
  const b = lift(y);
  return [a[0] * b[0], a[0] * b[1] + a[1] * b[0], a[0] * b[2] + a[2] * b[0]];
}

/** A function of a quantity, from the function's value and slope there. */
function chain(
  x: SlopePair | number,
  value: (a: number) => number,
  slope: (a: number, value: number) => number,
): SlopePair {
  const a = lift(x);
  const y = value(a[0]);
  const rise = slope(a[0], y);
  return [y, rise * a[1], rise * a[2]];
}

/**
 * Arithmetic to the first order along two directions at once: the sensitivities of two inputs cost one evaluation.
 * Where a slope is infinite a direction that does not count turns into no number; one direction alone decides then.
 */
export const slopePairArithmetic: Arithmetic<SlopePair | number> = {
  add: (x, y) => {
    const a = lift(x);
    const b = lift(y);
    return [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
  },
  subtract: (x, y) => {
    const a = lift(x);
    const b = lift(y);
    return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
  },
  multiply,
  divide: (x, y) => {
    const a = lift(x);
    const b = lift(y);
    const q = a[0] / b[0];
    return [q, (a[1] - q * b[1]) / b[0], (a[2] - q * b[2]) / b[0]];
  },
  power: (x, n) =>
    n === 2
      ? multiply(x, x)
      : chain(
          x,
          (a) => a ** n,
          (a) => (n === 0 ? 0 : n * a ** (n - 1)),
        ),
  sqrt: (x) => chain(x, Math.sqrt, (_, root) => 1 / (2 * root)),
  exp: (x) => chain(x, Math.exp, (_, e) => e),
  log: (x) => chain(x, Math.log, (a) => 1 / a),
  sin: (x) => chain(x, Math.sin, Math.cos),
  cos: (x) => chain(x, Math.cos, (a) => -Math.sin(a)),
};
