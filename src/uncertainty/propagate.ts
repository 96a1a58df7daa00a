import { fail, requireFinite, requireNonNegative, requireResult } from '../checks/index.js';
import { type Correlation, type CorrelationMatrix, correlationMatrix } from './correlation.js';
import { type DifferentiableModel, differentiable } from './differentiation/differentiate-model.js';
import type { DifferentiationMethod, Model } from './differentiation/model.js';
import { effectiveDegrees } from './effective-degrees.js';
import { requireDegrees } from './require-uncertainty.js';
import { type SecondOrder, secondOrderTerms } from './second-order.js';
import type { DegreesOfFreedom, UncertainInput } from './uncertain-input.js';

/** How a propagation is made. */
export interface PropagateOptions {
  /** Correlated pairs of inputs; the others are taken as independent. */
  readonly correlations?: readonly Correlation[];
  /** Whether second-order terms are worked out, to say whether the first order is enough; true unless stated. */
  readonly secondOrder?: boolean;
}

/** What one input brings to the combined uncertainty: a row of the budget. */
export interface Contribution {
  readonly name: string;
  readonly description?: string;
  readonly unit?: string;
  readonly value: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: DegreesOfFreedom;
  readonly type: 'A' | 'B';
  readonly distribution: UncertainInput['distribution']['kind'];
  /** Partial derivative of the model. */
  readonly sensitivity: number;
  /** Sensitivity times standard uncertainty, with its sign. */
  readonly contribution: number;
  /** Part of the combined variance, correlations included; all shares add to 1 (all 0 where there is no uncertainty). */
  readonly share: number;
}

/** A propagated value with its budget. */
export interface Propagated {
  readonly value: number;
  /** Combined standard uncertainty, by the law of propagation of uncertainty. */
  readonly standardUncertainty: number;
  /** Effective degrees of freedom; absent where they are not defined. */
  readonly degreesOfFreedom?: DegreesOfFreedom;
  /** Why the degrees of freedom are absent. */
  readonly degreesOfFreedomReason?: string;
  readonly contributions: readonly Contribution[];
  readonly correlations: readonly Correlation[];
  /** How the sensitivities were found. */
  readonly method: DifferentiationMethod;
  /** Second-order terms and whether the first order is enough; absent when not asked for. */
  readonly secondOrder?: SecondOrder;
  /** What the result takes for granted. */
  readonly assumptions: readonly string[];
}

/**
 * Propagates uncertainty through a measurement model by the law of propagation of uncertainty (first order), and says
 * by second-order terms whether that is enough.
 *
 * @param model Ordinary function of the inputs; `{ arithmetic: (x, m) => … }` for exact derivatives; or an object that
 * brings its sensitivities
 * @param inputs Inputs by name
 * @param options Correlations, second order
 * @returns Value, combined standard uncertainty, effective degrees of freedom, budget, assumptions
 * @throws CalculationError `function-not-finite`, `negative`, `out-of-range`, `not-positive-semidefinite`,
 * `result-out-of-range`, `unknown-choice`, `wrong-count`
 * @source JCGM 100:2008, 5.1.2 (10), 5.2.2 (13), G.4.1
 * @accuracy Sensitivities exact to rounding in forward mode; by differences typically to 1e-9
 * @example
 * ```ts
 * import { normalInput, propagate, rectangularInput } from 'esu-limits/uncertainty';
 * const inputs = {
 *   I: normalInput({ value: 0.5, standardUncertainty: 0.004 }),
 *   R: rectangularInput({ value: 400, halfWidth: 4 }),
 * };
 * const power = propagate({ arithmetic: (x, m) => m.multiply(m.power(x.I, 2), x.R) }, inputs);
 * power.value; // → 100
 * power.standardUncertainty.toFixed(4); // → "1.7010"
 * ```
 */
export function propagate<N extends string>(
  model: Model<N>,
  inputs: Readonly<Record<N, UncertainInput>>,
  options: PropagateOptions = {},
): Propagated {
  const names = checkInputs(inputs);
  const correlations = options.correlations ?? [];
  const matrix = correlations.length === 0 ? undefined : correlationMatrix(names, correlations);
  return propagateChecked(differentiable(model as Model, names, inputs), names, inputs, matrix, correlations, options);
}

/** Names of the inputs, after a check of every one. */
export function checkInputs(inputs: Readonly<Record<string, UncertainInput>>): readonly string[] {
  const names = Object.keys(inputs);
  if (names.length === 0) fail('wrong-count', 'inputs', inputs, 'must hold at least one input');
  for (const name of names) checkInput(inputs[name] as UncertainInput, name);
  return names;
}

function checkInput({ value, standardUncertainty, degreesOfFreedom }: UncertainInput, name: string): void {
  // The paths are spelt out for a fault only: they cost more than the checks.
  const good =
    Number.isFinite(value) &&
    Number.isFinite(standardUncertainty) &&
    standardUncertainty >= 0 &&
    (degreesOfFreedom === 'infinite' || (Number.isFinite(degreesOfFreedom) && degreesOfFreedom >= 1));
  if (good) return;
  requireFinite(value, `inputs.${name}.value`);
  requireNonNegative(standardUncertainty, `inputs.${name}.standardUncertainty`);
  requireDegrees(degreesOfFreedom, `inputs.${name}.degreesOfFreedom`);
}

const noNames: ReadonlySet<string> = new Set();

/** The propagation itself, for inputs that were checked. */
export function propagateChecked(
  prepared: DifferentiableModel,
  names: readonly string[],
  inputs: Readonly<Record<string, UncertainInput>>,
  matrix: CorrelationMatrix | undefined,
  correlations: readonly Correlation[],
  options: PropagateOptions,
): Propagated {
  const { method, value, sensitivities } = prepared;
  const rows: Row[] = [];
  for (let i = 0; i < names.length; i++) {
    const name = names[i] as string;
    rows.push(rowOf(name, inputs[name] as UncertainInput, sensitivities[i] as number));
  }
  const standardUncertainty = combine(rows, matrix);
  const correlated =
    correlations.length === 0
      ? noNames
      : new Set(correlations.filter((c) => c.coefficient !== 0).flatMap((c) => c.between));
  const degrees = effectiveDegrees(rows, standardUncertainty, correlated);
  const secondOrder =
    options.secondOrder === false
      ? undefined
      : secondOrderTerms(prepared, names, inputs, standardUncertainty, correlated.size > 0);
  const assumptions = assumptionsOf(correlations, method);
  const contributions = rows;
  if ('reason' in degrees || secondOrder !== undefined) {
    return {
      value,
      standardUncertainty,
      ...('reason' in degrees ? { degreesOfFreedomReason: degrees.reason } : degrees),
      contributions,
      correlations,
      method,
      ...(secondOrder === undefined ? {} : { secondOrder }),
      assumptions,
    };
  }
  const { degreesOfFreedom } = degrees;
  return { value, standardUncertainty, degreesOfFreedom, contributions, correlations, method, assumptions };
}

/** A row whose share is filled in when all contributions are known. */
type Row = Omit<Contribution, 'share'> & { share: number };

function rowOf(name: string, input: UncertainInput, sensitivity: number): Row {
  const { value, standardUncertainty, degreesOfFreedom, type } = input;
  const distribution = input.distribution.kind;
  const contribution = sensitivity * standardUncertainty;
  const share = 0;
  const described = input.description !== undefined || input.unit !== undefined;
  return described
    ? {
        name,
        ...(input.description === undefined ? {} : { description: input.description }),
        ...(input.unit === undefined ? {} : { unit: input.unit }),
        value,
        standardUncertainty,
        degreesOfFreedom,
        type,
        distribution,
        sensitivity,
        contribution,
        share,
      }
    : { name, value, standardUncertainty, degreesOfFreedom, type, distribution, sensitivity, contribution, share };
}

/** Combined standard uncertainty of the contributions; gives each row the part of the variance that its input has. */
function combine(rows: readonly Row[], matrix: CorrelationMatrix | undefined): number {
  // Scaled by the largest, so that squares neither overflow nor vanish.
  let largest = 0;
  for (const { contribution } of rows) largest = Math.max(largest, Math.abs(contribution));
  if (largest === 0) return 0;
  let variance = 0;
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i] as Row;
    const scaled = row.contribution / largest;
    row.share =
      scaled * (matrix === undefined ? scaled : withCorrelated(rows, matrix.rows[i] as readonly number[], largest));
    variance += row.share;
  }
  // Fully correlated inputs may cancel: what is left is then rounding, of either sign.
  const cancelled = variance <= 8 * Number.EPSILON * rows.length;
  for (const row of rows) row.share = cancelled ? 0 : row.share / variance;
  return cancelled ? 0 : requireResult(largest * Math.sqrt(variance), 'standardUncertainty');
}

/** Contributions as one input meets them: each by its correlation with that input. */
function withCorrelated(rows: readonly Row[], coefficients: readonly number[], largest: number): number {
  return rows.reduce((total, { contribution }, j) => total + (coefficients[j] as number) * (contribution / largest), 0);
}

const linear = 'The model is close to linear over the uncertainties of its inputs.';
const independent = 'All inputs are independent of each other.';
const independentButStated = 'Inputs are independent of each other except for the stated correlations.';
const smooth = 'The model is smooth around the values of its inputs: sensitivities are extrapolated differences.';

function assumptionsOf(correlations: readonly Correlation[], method: DifferentiationMethod): readonly string[] {
  const dependence = correlations.length === 0 ? independent : independentButStated;
  return method === 'extrapolated differences' ? [linear, dependence, smooth] : [linear, dependence];
}
