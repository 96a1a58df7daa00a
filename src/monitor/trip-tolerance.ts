import { type Band, bandAround } from '../band/index.js';
import { riseLimitFormula, seenFormula } from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import { type BoxAccuracy, offBy } from './box.js';
import type { Monitor } from './monitor.js';
import type { SweepEvent } from './sweep-events.js';

/** What the maker states of trip points, in ohms as the monitor sees them. */
interface TripStatement {
  /** Where it trips; `null` of a release. */
  readonly nominal: number | null;
  /** Where it may trip; none of a release. */
  readonly tolerance: Band;
  /** By how much both are off because the baseline is. */
  readonly baselineLimits: number;
}

/** What the maker states of the trip points of a limit. */
export function tripTolerance(
  { event, limit, baseline = 0 }: Pick<SweepEvent, 'event' | 'limit' | 'baseline'>,
  { lower, upper, rise, series }: Monitor,
  accuracy: BoxAccuracy,
  working: Step[],
): TripStatement {
  if (event === 'release') return { nominal: null, tolerance: {}, baselineLimits: 0 };
  if (limit !== 'rise') {
    const stated = limit === 'lower' ? lower : upper;
    const tolerance = stated?.tolerance === undefined ? {} : bandAround(stated.resistance, stated.tolerance);
    return { nominal: stated?.resistance ?? null, tolerance, baselineLimits: 0 };
  }
  if (rise === undefined) return { nominal: null, tolerance: {}, baselineLimits: 0 };
  const { fraction, tolerance: spread, floor: f = 0 } = rise;
  const R_s = series?.resistance ?? 0;
  const b = baseline + R_s;
  const limitAt = (r: number) => Math.max(b, f) * (1 + r);
  const nominal = limitAt(fraction);
  if (spread === undefined) return { nominal, tolerance: {}, baselineLimits: 0 };
  const tolerance = { lower: limitAt(fraction - spread), upper: limitAt(fraction + spread) };
  working.push(
    step(seenFormula, 'baseline as the monitor sees it', { R: baseline, R_s }, b),
    step(riseLimitFormula, 'stated trip point', { b, f, r: fraction }, nominal),
    step(riseLimitFormula, 'lowest permitted trip point', { b, f, r: fraction - spread }, tolerance.lower),
    step(riseLimitFormula, 'highest permitted trip point', { b, f, r: fraction + spread }, tolerance.upper),
  );
  const off = offBy(accuracy, baseline) + (series?.limits ?? 0);
  // Below the floor the baseline does not count, unless it might reach it.
  return { nominal, tolerance, baselineLimits: b + off > f ? off * (1 + fraction) : 0 };
}
