import { type Band, bandAround } from '../band/index.js';
import type { AlarmReason, Monitor, MonitorLimit } from '../monitor/index.js';
import type { Bench } from './bench.js';
import type { MonitorTrace } from './readings.js';

/** What the monitor may see of a resistance of a trace, in ohms. */
export interface SeenRange {
  readonly least: number;
  readonly most: number;
}

/** How well the resistances of a trace are known, and with it what must and what must not alarm. */
export interface TraceLimits {
  /** Whether a resistance is surely beyond the limit of a reason, whatever tolerance, box and fixture are off by. */
  readonly isSurelyBeyond: (resistance: number, reason: AlarmReason, baseline: number | null) => boolean;
  /** Whether a resistance is surely inside every limit. */
  readonly isSurelyInside: (resistance: number, baseline: number | null) => boolean;
}

/** What the monitor may see of a resistance; undefined where nothing says how well it is known. */
export function seenRangeOf(
  { of }: MonitorTrace,
  { display, series }: Monitor,
  { resistanceBox }: Bench,
): ((resistance: number) => SeenRange) | undefined {
  if (of === 'set') {
    if (resistanceBox === undefined) return undefined;
    const { relative = 0, absolute = 0 } = resistanceBox.accuracy;
    const [R_s, a] = [series?.resistance ?? 0, absolute + (series?.limits ?? 0)];
    return (R) => ({ least: R * (1 - relative) - a + R_s, most: R * (1 + relative) + a + R_s });
  }
  if (display === undefined) return undefined;
  const { resolution, tolerance } = display;
  return (R) => {
    if (R === Number.POSITIVE_INFINITY) return { least: R, most: R };
    const { lower = R, upper = R } = tolerance === undefined ? {} : bandAround(R, tolerance);
    return { least: R - (upper - R) - resolution / 2, most: R + (R - lower) + resolution / 2 };
  };
}

/** What surely is beyond the limits of a monitor, and what surely inside. */
export function traceLimits(
  { lower, upper, rise }: Monitor,
  seen: (resistance: number) => SeenRange,
  series: number,
): TraceLimits {
  const [low, high] = [tripBand(lower), tripBand(upper)];
  const risen = (baseline: number, end: 'least' | 'most', spread: number): number => {
    const { fraction, floor = 0 } = rise ?? { fraction: Number.POSITIVE_INFINITY };
    return Math.max(seen(baseline - series)[end], floor) * (1 + fraction + spread);
  };
  const spread = rise?.tolerance ?? 0;
  return {
    isSurelyBeyond: (resistance, reason, baseline) => {
      const { least, most } = seen(resistance);
      switch (reason) {
        case 'above-upper':
          return least > (high.upper ?? Number.POSITIVE_INFINITY);
        case 'below-lower':
          return most < (low.lower ?? 0);
        case 'rise':
          return baseline !== null && least > risen(baseline, 'most', spread);
        case 'not-yet-accepted':
          return false;
      }
    },
    isSurelyInside: (resistance, baseline) => {
      const { least, most } = seen(resistance);
      if (most > (high.lower ?? Number.POSITIVE_INFINITY) || least < (low.upper ?? 0)) return false;
      return rise === undefined || baseline === null || most <= risen(baseline, 'least', -spread);
    },
  };
}

/** Trip points that the maker permits; the limit alone where no tolerance is stated. */
function tripBand(limit: MonitorLimit | undefined): Band {
  if (limit === undefined) return {};
  const { resistance, tolerance } = limit;
  return tolerance === undefined ? { lower: resistance, upper: resistance } : bandAround(resistance, tolerance);
}
