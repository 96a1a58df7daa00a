import type { Arithmetic } from './arithmetic.js';

/** Taylor coefficients c₀…c₃ of a quantity along one direction: value, and derivatives over their factorials. */
export type Taylor = readonly [number, number, number, number];

function lift(a: Taylor | number): Taylor {
  return typeof a === 'number' ? [a, 0, 0, 0] : a;
}

function scaled(a: Taylor, factor: number): Taylor {
  return [a[0] * factor, a[1] * factor, a[2] * factor, a[3] * factor];
}

function multiply(a: Taylor | number, b: Taylor | number): Taylor | number {
  if (typeof a === 'number') return typeof b === 'number' ? a * b : scaled(b, a);
  if (typeof b === 'number') return scaled(a, b);
  return [
    a[0] * b[0],
    a[0] * b[1] + a[1] * b[0],
    a[0] * b[2] + a[1] * b[1] + a[2] * b[0],
    a[0] * b[3] + a[1] * b[2] + a[2] * b[1] + a[3] * b[0],
  ];
}

/** A function of a Taylor number, from the function's own coefficients at its value. */
function compose(a: Taylor | number, at: (value: number) => Taylor): Taylor | number {
  if (typeof a === 'number') return at(a)[0];
  const f = at(a[0]);
  const square = a[1] * a[1];
  return [f[0], f[1] * a[1], f[1] * a[2] + f[2] * square, f[1] * a[3] + 2 * f[2] * a[1] * a[2] + f[3] * square * a[1]];
}

function powerAt(value: number, n: number): Taylor {
  // Coefficients that are 0 stay 0 at value 0, where the power itself would be infinite.
  const term = (factor: number, exponent: number): number => (factor === 0 ? 0 : factor * value ** exponent);
  return [value ** n, term(n, n - 1), term((n * (n - 1)) / 2, n - 2), term((n * (n - 1) * (n - 2)) / 6, n - 3)];
}

/** Arithmetic of quantities that carry their derivatives to the third order along one direction; a constant carries none. */
export const taylorArithmetic: Arithmetic<Taylor | number> = {
  add: (x, y) => {
    const a = lift(x);
    const b = lift(y);
    return [a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3]];
  },
  subtract: (x, y) => {
    const a = lift(x);
    const b = lift(y);
    return [a[0] - b[0], a[1] - b[1], a[2] - b[2], a[3] - b[3]];
  },
  multiply,
  divide: (x, y) => {
    const a = lift(x);
    const b = lift(y);
    const q0 = a[0] / b[0];
    const q1 = (a[1] - q0 * b[1]) / b[0];
    const q2 = (a[2] - q0 * b[2] - q1 * b[1]) / b[0];
    const q3 = (a[3] - q0 * b[3] - q1 * b[2] - q2 * b[1]) / b[0];
    return [q0, q1, q2, q3];
  },
  power: (x, exponent) => (exponent === 2 ? multiply(x, x) : compose(x, (value) => powerAt(value, exponent))),
  sqrt: (x) =>
    compose(x, (value) => {
      const root = Math.sqrt(value);
      return [root, 1 / (2 * root), -1 / (8 * root * value), 1 / (16 * root * value * value)];
    }),
  exp: (x) =>
    compose(x, (value) => {
      const e = Math.exp(value);
      return [e, e, e / 2, e / 6];
    }),
  log: (x) => compose(x, (value) => [Math.log(value), 1 / value, -1 / (2 * value ** 2), 1 / (3 * value ** 3)]),
  sin: (x) =>
    compose(x, (value) => {
      const s = Math.sin(value);
      const c = Math.cos(value);
      return [s, c, -s / 2, -c / 6];
    }),
  cos: (x) =>
    compose(x, (value) => {
      const s = Math.sin(value);
      const c = Math.cos(value);
      return [c, -s, -c / 2, s / 6];
    }),
};
