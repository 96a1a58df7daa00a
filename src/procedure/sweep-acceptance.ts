import { type BoxAccuracy, type Monitor, type SweepChallenge, tripPoints } from '../monitor/index.js';
import { expandedUncertainty } from '../uncertainty/index.js';
import { judgeMeasured } from './judge-measured.js';
import type { Plan, SweepAcceptance } from './plan.js';

/**
 * What a planned sweep can tell of the trip point: U of one found in the middle of its values, and what the rule accepts
 * with it. Undefined of a sweep that finds the release, and where the sheet states no tolerance.
 */
export function sweepAcceptance(
  plan: Pick<Plan, 'options'>,
  monitor: Monitor,
  accuracy: BoxAccuracy,
  { limit, direction, values, baseline }: SweepChallenge,
): SweepAcceptance | undefined {
  const findsTrip = (limit === 'lower') === (direction === 'down');
  if (!findsTrip || values.length < 2) return undefined;
  const steps = values.map((set, i) => ({ set, alarm: i >= values.length / 2 }));
  const sweep = { steps, ...(baseline === undefined ? {} : { baseline }) };
  const [point] = tripPoints([sweep], { monitor, accuracy }).points;
  if (point === undefined || point.nominal === null) return undefined;
  const { tolerance: limits, nominal } = point;
  if (limits.lower === undefined && limits.upper === undefined) return undefined;
  const expanded = expandedUncertainty(point);
  const { judged } = judgeMeasured(plan, { limits, nominal, value: nominal, unit: 'ohm', expanded });
  const { acceptance, failing } = judged;
  return {
    expandedUncertainty: expanded.expandedUncertainty,
    limits,
    ...(acceptance === undefined ? {} : { acceptance }),
    ...(failing === undefined ? {} : { failing }),
  };
}
