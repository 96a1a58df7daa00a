import type { Band } from '../band/index.js';
import type { Quantity } from '../circuit/index.js';
import {
  expandedUncertainty,
  type ReadingBudget,
  type ReadingBudgetInput,
  readingBudget,
  roundUncertainty,
} from '../uncertainty/index.js';
import type { Bench, BenchLoad } from './bench.js';
import type { CurveSlope } from './curve-slope.js';
import type { PointMeasurement } from './plan.js';
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
}

/** Budget of any reading at a point; undefined where the bench states no accuracy for the quantity. */
export function budgetAt(conditions: MeasurementConditions, reading: number): ReadingBudget | undefined {
  const { bench, output, load, reads, range, slope } = conditions;
  const accuracy = bench.instrument.reads.find((f) => f.quantity === reads)?.accuracy;
  if (accuracy === undefined) return undefined;
  const input: ReadingBudgetInput = {
    reads,
    reading,
    range,
    accuracy,
    slope: slope.slope,
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
export function expand(budget: ReadingBudget): ReturnType<typeof expandedUncertainty> {
  return expandedUncertainty({
    standardUncertainty: budget.standardUncertainty,
    ...(budget.degreesOfFreedom === undefined ? {} : { degreesOfFreedom: budget.degreesOfFreedom }),
  });
}

/** How well a point can be measured: at the nominal and at both limits. */
export function pointMeasurement(
  conditions: MeasurementConditions,
  nominal: number,
  limits: Band,
): PointMeasurement | undefined {
  const budget = budgetAt(conditions, nominal);
  if (budget === undefined) return undefined;
  const expanded = expand(budget);
  const at = (limit: number | undefined): number | undefined => {
    const there = limit === undefined ? undefined : budgetAt(conditions, limit);
    return there === undefined ? undefined : expand(there).expandedUncertainty;
  };
  const atLower = at(limits.lower);
  const atUpper = at(limits.upper);
  return {
    budget,
    expanded,
    ...(atLower === undefined ? {} : { atLower }),
    ...(atUpper === undefined ? {} : { atUpper }),
    statement: statementOf(conditions, budget, expanded.expandedUncertainty, nominal, limits),
  };
}

function statementOf(
  { reads, slope }: MeasurementConditions,
  budget: ReadingBudget,
  expanded: number,
  nominal: number,
  limits: Band,
): string {
  const percent = (fraction: number): string => `${Number((fraction * 100).toPrecision(2))} %`;
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
