import { CalculationError, fail, requireResult } from '../../checks/index.js';
import type { UncertainInput } from '../uncertain-input.js';
import { numberArithmetic } from './arithmetic.js';
import { type Derivatives, differentiate } from './directional.js';
import type { AnalyticModel, ArithmeticModel, DifferentiationMethod, Model, OrdinaryModel, Values } from './model.js';
import { type SlopePair, slopePairArithmetic } from './slope-pair.js';
import { type Taylor, taylorArithmetic } from './taylor.js';

/** A model around the values of its inputs: its value and sensitivities, and its derivatives along a direction. */
export interface DifferentiableModel {
  readonly method: DifferentiationMethod;
  /** The model at the values of the inputs. */
  readonly value: number;
  /** Partial derivative by each input, in the order of the names, in the unit of the model over that of the input. */
  readonly sensitivities: readonly number[];
  /** Derivatives of `t ↦ model(x + t·direction)` at t = 0; inputs without a direction stay. */
  readonly along: (direction: Readonly<Record<string, number>>) => Derivatives;
}

/** Brings the three forms of a model to one, around the values of the inputs, whose names are given too. */
export function differentiable(
  model: Model,
  names: readonly string[],
  inputs: Readonly<Record<string, UncertainInput>>,
): DifferentiableModel {
  if (typeof model !== 'function' && 'arithmetic' in model) return forward(model, names, inputs);
  const values = valuesOf(names, inputs);
  return typeof model === 'function' ? ordinary(model, values, names, inputs) : analytic(model, values, names);
}

function valuesOf(names: readonly string[], inputs: Readonly<Record<string, UncertainInput>>): Values {
  const values: Record<string, number> = {};
  for (const name of names) values[name] = (inputs[name] as UncertainInput).value;
  return values;
}

/** A model as a function of numbers, unguarded. */
export function numberFunction(model: Model): (x: Values) => number {
  if (typeof model === 'function') return model;
  if ('arithmetic' in model) return (x) => model.arithmetic(x, numberArithmetic);
  return model.evaluate;
}

/** The model at given values, or an error where that is no finite number. */
function finiteAt(f: (x: Values) => number, x: Values): number {
  return requireModelValue(guarded(f, x), x);
}

function requireModelValue(y: number, x: Values): number {
  if (typeof y === 'number' && Number.isFinite(y)) return y;
  return fail('function-not-finite', 'model', y, `must be a finite number at ${show(x)}`);
}

function guarded(f: (x: Values) => number, x: Values): number {
  try {
    return f(x);
  } catch (error) {
    return failThrown(error, x);
  }
}

function failThrown(error: unknown, x: Values): never {
  if (error instanceof CalculationError) throw error;
  return fail('function-not-finite', 'model', String(error), `must not throw at ${show(x)}`);
}

function show(x: Values): string {
  const entries = Object.entries(x).slice(0, 8);
  return entries.map(([name, value]) => `${name} = ${value}`).join(', ');
}

function shifted(
  values: Values,
  names: readonly string[],
  direction: Readonly<Record<string, number>>,
  t: number,
): Values {
  const x: Record<string, number> = {};
  for (const name of names) x[name] = (values[name] as number) + t * (direction[name] ?? 0);
  return x;
}

function analytic(model: AnalyticModel, values: Values, names: readonly string[]): DifferentiableModel {
  return {
    method: 'analytic',
    value: finiteAt(model.evaluate, values),
    sensitivities: names.map((name) => {
      const given = Object.hasOwn(model.sensitivities, name) ? model.sensitivities[name] : undefined;
      if (given === undefined)
        fail('wrong-type', `model.sensitivities.${name}`, given, 'must be a function of the inputs');
      return requireResult(guarded(given, values), `model.sensitivities.${name}`);
    }),
    // Higher derivatives are found from the model itself; the first stays as the caller gives it.
    along: (direction) => differentiate((t) => numberAt(model.evaluate, shifted(values, names, direction, t))),
  };
}

/** Values off the middle may not exist; the differences try a smaller step then. */
function numberAt(f: (x: Values) => number, x: Values): number {
  try {
    return f(x);
  } catch {
    return Number.NaN;
  }
}

function ordinary(
  model: OrdinaryModel,
  values: Values,
  names: readonly string[],
  inputs: Readonly<Record<string, UncertainInput>>,
): DifferentiableModel {
  const along = (direction: Readonly<Record<string, number>>): Derivatives =>
    differentiate((t) => numberAt(model, shifted(values, names, direction, t)));
  return {
    method: 'extrapolated differences',
    value: finiteAt(model, values),
    sensitivities: names.map((name) => {
      const { value, standardUncertainty } = inputs[name] as UncertainInput;
      // Without an uncertainty the value itself sets the scale of the step.
      const scale = standardUncertainty > 0 ? standardUncertainty : Math.abs(value) * 1e-3 || 1e-3;
      return along({ [name]: scale }).first / scale;
    }),
    along,
  };
}

function forward(
  model: ArithmeticModel,
  names: readonly string[],
  inputs: Readonly<Record<string, UncertainInput>>,
): DifferentiableModel {
  const along = (direction: Readonly<Record<string, number>>): Derivatives => {
    const moved: Record<string, Taylor | number> = {};
    for (const name of names) {
      const constant = (inputs[name] as UncertainInput).value;
      const slope = direction[name] ?? 0;
      moved[name] = slope === 0 ? constant : [constant, slope, 0, 0];
    }
    const y = model.arithmetic(moved, taylorArithmetic);
    const [, c1, c2, c3] = typeof y === 'number' ? ([y, 0, 0, 0] as const) : y;
    return { first: c1, second: 2 * c2, third: 6 * c3, firstError: 0 };
  };
  const sensitivities: number[] = [];
  let value = Number.NaN;
  // Two inputs carry their derivatives at a time, the rest are constants; every round gives the same value.
  for (let i = 0; i < names.length; i += 2) {
    const x: Record<string, SlopePair | number> = {};
    for (let j = 0; j < names.length; j++) {
      const name = names[j] as string;
      const constant = (inputs[name] as UncertainInput).value;
      x[name] = j === i ? [constant, 1, 0] : j === i + 1 ? [constant, 0, 1] : constant;
    }
    const y = slopesAt(model, x, names, inputs);
    value = y[0];
    if (!Number.isFinite(value)) requireModelValue(value, valuesOf(names, inputs));
    for (let j = i; j < i + 2 && j < names.length; j++) {
      const slope = y[j === i ? 1 : 2];
      sensitivities.push(Number.isFinite(slope) ? slope : alone(along, names[j] as string));
    }
  }
  return { method: 'forward mode', value, sensitivities, along };
}

/** A sensitivity along one direction, where two at once gave no number. */
function alone(along: DifferentiableModel['along'], name: string): number {
  return requireResult(along({ [name]: 1 }).first, `model, derivative by ${name}`);
}

function slopesAt(
  model: ArithmeticModel,
  x: Readonly<Record<string, SlopePair | number>>,
  names: readonly string[],
  inputs: Readonly<Record<string, UncertainInput>>,
): SlopePair {
  try {
    const y = model.arithmetic(x, slopePairArithmetic);
    // A constant, or what is no result at all: its value says so.
    return Array.isArray(y) ? (y as SlopePair) : [y as number, 0, 0];
  } catch (error) {
    return failThrown(error, valuesOf(names, inputs));
  }
}
