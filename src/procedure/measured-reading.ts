import type { Band } from '../band/index.js';
import { type Quantity, quantityUnits } from '../circuit/index.js';
import { type Conformance, conformanceProbability } from '../decision/index.js';
import { type ExpandedUncertainty, expandedUncertainty } from '../uncertainty/index.js';
import type { PlanDecisionRule } from './decision-rule.js';
import { acceptanceOf, type JudgedValue } from './judge.js';
import { uncorrectedEffect } from './judge-effect.js';
import type { Plan, PlanPoint } from './plan.js';
import { pointAcceptance } from './point-acceptance.js';
import { budgetAt, expand } from './point-measurement.js';
import type { Reading } from './readings.js';
import type { Output } from './specification.js';

/** How well a reading is known, and what the rule accepts with that; members are absent where nothing says so. */
export interface MeasuredReading extends Pick<JudgedValue, 'acceptance' | 'failing'> {
  readonly expanded?: ExpandedUncertainty;
  readonly conformance?: Conformance;
}

/**
 * Uncertainty of a reading and the probability that the quantity conforms: the reading's own where it brings one, else
 * that of the bench's instrument, which holds only for the quantity that the plan reads.
 */
export function measuredReading(
  plan: Plan,
  output: Output,
  point: PlanPoint,
  reading: Reading,
  value: number,
): MeasuredReading {
  const { limits } = point;
  if (reading.uncertainty !== undefined) {
    const expanded = ownUncertainty(reading, reading.uncertainty, point.reads, value);
    return {
      expanded,
      conformance: conformanceOf(limits, value, expanded),
      ...ownAcceptance(plan.options.decisionRule, point, expanded),
    };
  }
  if (reading.quantity !== point.reads) return {};
  const expanded = benchUncertainty(plan, output, point, value);
  const planned = acceptanceOf(point.measurement);
  return expanded === undefined
    ? planned
    : { expanded, conformance: conformanceOf(limits, value, expanded), ...planned };
}

function benchUncertainty(
  { bench }: Plan,
  output: Output,
  { reads, range, measurement, load: pointLoad, effect }: PlanPoint,
  value: number,
): ExpandedUncertainty | undefined {
  const load = bench.loads.find(({ id }) => id === pointLoad?.id);
  if (range === undefined || measurement === undefined || load === undefined) return undefined;
  const slope = { slope: measurement.slope, published: true };
  const budget = budgetAt(
    { bench, output, load, reads, range, slope, ...uncorrectedEffect(load, reads, effect) },
    value,
  );
  return budget === undefined ? undefined : expand(budget);
}

/** Exponent of the power in each quantity: P, I = √(P/R), V = √(P·R). */
const exponents: Readonly<Record<Quantity, number>> = { power: 1, current: 0.5, voltage: 0.5 };

/** The reading's own uncertainty, in the quantity of the limits. */
export function ownUncertainty(
  { quantity, value: read }: Reading,
  { standardUncertainty, degreesOfFreedom }: NonNullable<Reading['uncertainty']>,
  reads: Quantity,
  value: number,
): ExpandedUncertainty {
  const slope = quantity === reads ? 1 : read > 0 ? ((exponents[reads] / exponents[quantity]) * value) / read : 0;
  const scaled = slope * standardUncertainty;
  return expandedUncertainty(
    degreesOfFreedom === undefined
      ? { standardUncertainty: scaled }
      : { standardUncertainty: scaled, degreesOfFreedom },
  );
}

/** Acceptance limits with the uncertainty of this reading. */
function ownAcceptance(
  rule: PlanDecisionRule,
  { limits, nominal, reads }: PlanPoint,
  expanded: ExpandedUncertainty,
): Pick<JudgedValue, 'acceptance' | 'failing'> {
  if (nominal === undefined) return {};
  return acceptanceOf(
    pointAcceptance({ rule, limits, nominal, unit: quantityUnits[reads], atLower: expanded, atUpper: expanded }),
  );
}

/** Probability that the quantity conforms, from a reading and its uncertainty. */
export function conformanceOf(limits: Band, value: number, expanded: ExpandedUncertainty): Conformance {
  const { expandedUncertainty: U, coverageFactor, degreesOfFreedom } = expanded;
  return conformanceProbability(limits, value, U / coverageFactor, { degreesOfFreedom });
}
