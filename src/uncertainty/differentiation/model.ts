import type { Arithmetic } from './arithmetic.js';

/** Values of the inputs by name. */
export type Values<N extends string = string> = Readonly<Record<N, number>>;

/** An ordinary function of the inputs' values. Its derivatives are found by extrapolated differences. */
export type OrdinaryModel<N extends string = string> = (x: Values<N>) => number;

/**
 * A model written over an arithmetic: `{ arithmetic: (x, m) => m.multiply(m.power(x.I, 2), x.R) }`.
 * Its derivatives are exact to rounding (forward mode).
 */
export interface ArithmeticModel<N extends string = string> {
  readonly arithmetic: <T>(x: Readonly<Record<N, T>>, m: Arithmetic<T>) => T;
}

/** A model that brings its sensitivities along, as functions of the inputs' values. */
export interface AnalyticModel<N extends string = string> {
  readonly evaluate: (x: Values<N>) => number;
  /** Partial derivative of the model with respect to an input. */
  readonly sensitivities: Readonly<Record<N, (x: Values<N>) => number>>;
}

/** A measurement model in one of its three forms. */
export type Model<N extends string = string> = OrdinaryModel<N> | ArithmeticModel<N> | AnalyticModel<N>;

/** How derivatives of a model were found. */
export type DifferentiationMethod = 'analytic' | 'forward mode' | 'extrapolated differences';
