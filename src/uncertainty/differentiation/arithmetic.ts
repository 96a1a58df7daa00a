/**
 * The arithmetic in which a measurement model can be written once and evaluated with numbers, or with numbers that
 * carry their derivatives (forward mode). Plain numbers may stand for any operand.
 */
export interface Arithmetic<T> {
  readonly add: (a: T | number, b: T | number) => T;
  readonly subtract: (a: T | number, b: T | number) => T;
  readonly multiply: (a: T | number, b: T | number) => T;
  readonly divide: (a: T | number, b: T | number) => T;
  /** A power with a constant exponent. */
  readonly power: (a: T | number, exponent: number) => T;
  readonly sqrt: (a: T | number) => T;
  readonly exp: (a: T | number) => T;
  /** Natural logarithm. */
  readonly log: (a: T | number) => T;
  readonly sin: (a: T | number) => T;
  readonly cos: (a: T | number) => T;
}

/** The arithmetic of plain numbers. */
export const numberArithmetic: Arithmetic<number> = {
  add: (a, b) => a + b,
  subtract: (a, b) => a - b,
  multiply: (a, b) => a * b,
  divide: (a, b) => a / b,
  power: (a, exponent) => (exponent === 2 ? a * a : a ** exponent),
  sqrt: Math.sqrt,
  exp: Math.exp,
  log: Math.log,
  sin: Math.sin,
  cos: Math.cos,
};
