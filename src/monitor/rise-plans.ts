import type { Band } from '../band/index.js';
import { riseLimitFormula, seenLeastFormula, seenMostFormula } from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import { atOrAbove, atOrBelow } from './box-values.js';
import type { MonitorRise } from './monitor.js';
import { planThreshold, type Setup, type ThresholdPlan } from './threshold-plan.js';

/** The baselines at which a rise is challenged: three, spread over what the limits and the box leave. */
export function risePlans(setup: Setup, rise: MonitorRise, room: Band): readonly ThresholdPlan[] {
  const plans = candidates(setup, rise, room).map((baseline) => planRise(setup, rise, room, baseline));
  const usable = plans.filter(({ mustNotAlarm, mustAlarm }) => mustNotAlarm !== null && mustAlarm !== null);
  // Where nothing works, one plan says why.
  if (usable.length === 0) return plans.slice(0, 1);
  const [first, last] = [usable[0] as ThresholdPlan, usable.at(-1) as ThresholdPlan];
  const centre = Math.sqrt((first.baseline as number) * (last.baseline as number));
  const farFromCentre = ({ baseline }: ThresholdPlan) => Math.abs(Math.log((baseline as number) / centre));
  const middle = usable.slice(1, -1).sort((a, b) => farFromCentre(a) - farFromCentre(b))[0];
  return [...new Set([first, ...(middle ? [middle] : []), last])];
}

/** Values of the box that can be baselines, at most about 25 of a decade. */
function candidates({ box }: Setup, rise: MonitorRise, room: Band): number[] {
  const largest = 'values' in box ? (box.values.at(-1) as number) : box.maximum;
  const end = Math.min(room.upper ?? largest, largest) / (1 + rise.fraction);
  if ('values' in box) {
    return box.values.filter((value) => value > 0 && value >= (room.lower ?? 0) && value <= end);
  }
  const start = Math.max(room.lower ?? 0, end / 20, box.step);
  if (!(start < end)) return [atOrBelow(box, end) ?? end];
  const values = Array.from({ length: 25 }, (_, i) => atOrAbove(box, start * (end / start) ** (i / 24)));
  return [...new Set(values)].filter((value): value is number => value !== undefined && value <= end);
}

function planRise(setup: Setup, rise: MonitorRise, room: Band, baseline: number): ThresholdPlan {
  const { series, fixed, part } = setup;
  const { fraction, tolerance: spread = 0, floor: f = 0 } = rise;
  const least = baseline * (1 - part) - fixed + series;
  const most = baseline * (1 + part) + fixed + series;
  const limitAt = (seen: number, r: number) => Math.max(seen, f) * (1 + r);
  const [rLeast, rMost] = [fraction - spread, fraction + spread];
  const trip = { lower: limitAt(least, rLeast), upper: limitAt(most, rMost) };
  const plan = planThreshold(setup, {
    limit: 'rise',
    baseline,
    trip,
    // The baseline is as uncertain as the box: a trip is proven only inside what holds for all of its values.
    ...(rise.tolerance === undefined
      ? {}
      : { tolerance: { lower: limitAt(most, rLeast), upper: limitAt(least, rMost) } }),
    room: { ...room, lower: Math.max(room.lower ?? 0, baseline) },
  });
  const inputs = { R: baseline, R_s: series, a: fixed, q: part };
  const working: Step[] = [
    step(seenLeastFormula, 'least that the monitor sees of the baseline', inputs, least),
    step(seenMostFormula, 'most that the monitor sees of the baseline', inputs, most),
    step(riseLimitFormula, 'lowest trip point', { b: least, f, r: rLeast }, trip.lower),
    step(riseLimitFormula, 'highest trip point', { b: most, f, r: rMost }, trip.upper),
  ];
  return { ...plan, working: [...working, ...plan.working] };
}
