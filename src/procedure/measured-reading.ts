import type { Band } from '../band/index.js';
import { conformanceProbability } from '../decision/index.js';
import type { Bench } from './bench.js';
import type { PointFinding } from './findings.js';
import { loadWithStrays } from './judge-effect.js';
import type { PlanPoint } from './plan.js';
import { budgetAt, expand } from './point-measurement.js';
import type { Output } from './specification.js';

/** Uncertainty of a reading, and the probability that the quantity conforms; empty where the plan has no budget. */
export function measuredReading(
  bench: Bench,
  output: Output,
  point: PlanPoint,
  value: number,
  limits: Band,
): Pick<PointFinding, 'expanded' | 'conformance'> {
  const { reads, range, measurement } = point;
  const load = bench.loads.find(({ id }) => id === point.load?.id);
  if (range === undefined || measurement === undefined || load === undefined) return {};
  const slope = { slope: measurement.slope, published: true };
  const budget = budgetAt(
    { bench, output, load: loadWithStrays(load, reads, point.effect), reads, range, slope },
    value,
  );
  if (budget === undefined) return {};
  const expanded = expand(budget);
  const { degreesOfFreedom } = expanded;
  return {
    expanded,
    conformance: conformanceProbability(limits, value, budget.standardUncertainty, { degreesOfFreedom }),
  };
}
