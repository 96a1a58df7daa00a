import { type Band, contains } from '../band/index.js';
import type { Warning } from '../checks/index.js';
import { type Quantity, quantityUnits } from '../circuit/index.js';
import { testUncertaintyRatio } from '../decision/index.js';
import {
  type ExpandedUncertainty,
  expandedUncertainty,
  type ReadingBudget,
  type ReadingBudgetInput,
  readingBudget,
  roundUncertainty,
} from '../uncertainty/index.js';
import type { Step } from '../working/index.js';
import type { Bench, BenchLoad } from './bench.js';
import type { CurveSlope } from './curve-slope.js';
import type { PlanDecisionRule } from './decision-rule.js';
import { percentText } from './percent-text.js';
import type { PointMeasurement } from './plan.js';
import { pointAcceptance } from './point-acceptance.js';
import { quantityText } from './quantity-text.js';
import type { Output } from './specification.js';

/** Conditions under which a point is read. */
export interface MeasurementConditions {
  readonly bench: Bench;
  readonly output: Output;
  readonly load: BenchLoad;
  readonly reads: Quantity;
  readonly range: { readonly maximum: number; readonly resolution: number };
  readonly slope: CurveSlope;
  /** What strays do to the reading, where the plan does not correct for it. */
  readonly effect?: number;
}

/** The measurement of a point, and what comes with its acceptance limits. */
export interface MeasuredPoint {
  readonly measurement: PointMeasurement;
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/** Budget of any reading at a point; undefined where the bench states no accuracy for the quantity. */
export function budgetAt(conditions: MeasurementConditions, reading: number): ReadingBudget | undefined {
  const { bench, output, load, reads, range, slope, effect } = conditions;
  const accuracy = bench.instrument.reads.find((f) => f.quantity === reads)?.accuracy;
  if (accuracy === undefined) return undefined;
  const input: ReadingBudgetInput = {
    reads,
    reading,
    range,
    accuracy,
    slope: slope.slope,
    ...(effect === undefined ? {} : { effect }),
    load: {
      resistance: load.resistance,
      ...(load.tolerance === undefined ? {} : { tolerance: load.tolerance }),
      ...(load.certificate === undefined ? {} : { certificate: load.certificate }),
      ...(load.temperature === undefined ? {} : { temperature: load.temperature }),
      ...(load.strays === undefined ? {} : { strays: load.strays }),
    },
    ...(output.carrierFrequency === undefined ? {} : { frequency: output.carrierFrequency }),
    ...(output.crestFactor === undefined ? {} : { crestFactor: output.crestFactor }),
  };
  return readingBudget(input);
}

/** Expanded uncertainty of a budget at 95 %. */
export function expand(budget: ReadingBudget): ExpandedUncertainty {
  return expandedUncertainty({
    standardUncertainty: budget.standardUncertainty,
    ...(budget.degreesOfFreedom === undefined ? {} : { degreesOfFreedom: budget.degreesOfFreedom }),
  });
}

/** How well a point can be measured: at the nominal and at both limits, and what the rule accepts. */
export function pointMeasurement(
  conditions: MeasurementConditions,
  nominal: number,
  limits: Band,
  rule: PlanDecisionRule,
): MeasuredPoint | undefined {
  const budget = budgetAt(conditions, nominal);
  if (budget === undefined) return undefined;
  const expanded = expand(budget);
  const at = (limit: number | undefined): ExpandedUncertainty | undefined => {
    const there = limit === undefined ? undefined : budgetAt(conditions, limit);
    return there === undefined ? undefined : expand(there);
  };
  const atLower = at(limits.lower);
  const atUpper = at(limits.upper);
  const measurement: { -readonly [K in keyof PointMeasurement]: PointMeasurement[K] } = {
    budget,
    expanded,
    slope: conditions.slope.slope,
    assumptions: [],
    statement: statementOf(conditions, budget, expanded.expandedUncertainty, nominal, limits),
  };
  if (atLower !== undefined) measurement.atLower = atLower.expandedUncertainty;
  if (atUpper !== undefined) measurement.atUpper = atUpper.expandedUncertainty;
  if (atLower === undefined && atUpper === undefined) return { measurement, warnings: [], working: [] };
  const ratio = ratioOf(limits, nominal, expanded.expandedUncertainty);
  if (ratio !== undefined) measurement.testUncertaintyRatio = ratio;
  const { reads, range } = conditions;
  const question = { rule, limits, nominal, unit: quantityUnits[reads], resolution: range.resolution };
  const { acceptance, failing, assumptions, warnings, working } = pointAcceptance({
    ...question,
    ...(atLower === undefined ? {} : { atLower }),
    ...(atUpper === undefined ? {} : { atUpper }),
  });
  if (acceptance !== undefined) measurement.acceptance = acceptance;
  if (failing !== undefined) measurement.failing = failing;
  measurement.assumptions = assumptions;
  return { measurement, warnings, working };
}

/** Test uncertainty ratio, where limits and uncertainty allow one. */
function ratioOf(limits: Band, nominal: number, expanded: number): number | undefined {
  const { lower = nominal, upper = nominal } = limits;
  const isTwoSided = limits.lower !== undefined && limits.upper !== undefined;
  if (!(expanded > 0 && upper > lower) || (!isTwoSided && !contains(limits, nominal))) return undefined;
  return testUncertaintyRatio(limits, expanded, { nominal });
}

function statementOf(
  { reads, slope }: MeasurementConditions,
  budget: ReadingBudget,
  expanded: number,
  nominal: number,
  limits: Band,
): string {
  const percent = (fraction: number): string => percentText(fraction, 2);
  const shown = expanded > 0 ? roundUncertainty(nominal, expanded).uncertainty : 0;
  const parts = [`U = ${quantityText(shown, reads)} (${percent(expanded / nominal)}) at the nominal`];
  const largest = budget.contributions.reduce((a, b) => (b.share > a.share ? b : a));
  if (largest.share > 0) parts.push(`mostly from the ${largest.description} (${percent(largest.share)})`);
  const sides = [limits.lower, limits.upper]
    .filter((limit) => limit !== undefined)
    .map((limit) => Math.abs(limit - nominal));
  if (sides.length > 0 && expanded > 0) {
    const ratio = Math.min(...sides) / expanded;
    parts.push(`the nearer limit is ${Number(ratio.toPrecision(2))} U away`);
  }
  const assumed = slope.published ? '' : ' No curve says how the output follows the load: constant power is assumed.';
  return `${parts.join('; ')}. ${budget.loadStatement}${assumed}`;
}
