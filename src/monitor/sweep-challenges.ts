import { limitNames, type SweepChallenge } from './challenge.js';
import type { Monitor, MonitorRise } from './monitor.js';
import { sweepValues } from './sweep-values.js';
import type { Setup, ThresholdPlan } from './threshold-plan.js';

/** Steps in a tolerance: what a step adds to U is then about an eighth of it, so that a guard band leaves room. */
const stepsOfTolerance = 5;

/** Sweeps both ways over a threshold; none where a sweep could not tell. */
export function sweepsOf(
  plan: ThresholdPlan,
  { lower, upper, rise, alarmDelay }: Monitor,
  setup: Setup,
): SweepChallenge[] {
  const { limit, baseline, mustNotAlarm, mustAlarm, trip, status } = plan;
  // A baseline that follows would move along with a slow sweep: only single challenges tell.
  if (mustNotAlarm === null || mustAlarm === null || (limit === 'rise' && rise?.baseline === 'tracked')) return [];
  const gap = Math.abs(mustAlarm - mustNotAlarm);
  const base = Math.max(baseline === undefined ? 0 : baseline + setup.series, rise?.floor ?? 0);
  const hysteresis =
    limit === 'rise' ? (rise?.hysteresis ?? 0) * base : ((limit === 'lower' ? lower : upper)?.hysteresis ?? 0);
  const width = (trip.upper ?? 0) - (trip.lower ?? 0);
  const spacing =
    status === 'verifiable' && width > 0
      ? (width - 2 * setup.fixed - 2 * setup.part * (trip.upper ?? 0)) / stepsOfTolerance
      : gap / 10;
  // Beyond the must-not value by the hysteresis, where the alarm must have ended again.
  const back = hysteresis > 0 ? hysteresis : gap;
  const [from, to] =
    limit === 'lower' ? [mustAlarm, mustNotAlarm + back] : [Math.max(mustNotAlarm - back, baseline ?? 0), mustAlarm];
  const up = sweepValues(setup.box, from, to, Math.max(spacing, 0));
  if (limit === 'upper' && isConfounded(rise, setup, up)) return [];
  const down = [...up].reverse();
  const common = {
    kind: 'sweep',
    limit,
    wait: alarmDelay ?? null,
    ...(baseline === undefined ? {} : { baseline }),
  } as const;
  const trips = `Finds the trip point of ${limitNames[limit]}.`;
  const releases = 'Finds where the alarm ends, and with it the hysteresis.';
  const isLower = limit === 'lower';
  const sweep = (direction: 'up' | 'down'): SweepChallenge => ({
    ...common,
    direction,
    values: direction === 'up' ? up : down,
    reason: (direction === 'up') === isLower ? releases : trips,
  });
  return isLower ? [sweep('down'), sweep('up')] : [sweep('up'), sweep('down')];
}

/** Whether the rise over the first value of a sweep could alarm before its last. */
function isConfounded(
  rise: MonitorRise | undefined,
  { series, fixed, part }: Setup,
  values: readonly number[],
): boolean {
  if (rise === undefined) return false;
  const [first, last] = [values[0] as number, values.at(-1) as number];
  const base = Math.max(first * (1 - part) - fixed + series, rise.floor ?? 0);
  return last * (1 + part) + fixed + series > base * (1 + rise.fraction - (rise.tolerance ?? 0));
}
