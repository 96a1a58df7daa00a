import type { Monitor } from './monitor.js';

/** Relative distance within which a value counts as on a limit: it absorbs the binary form of decimals. */
const onLimit = 1e-12;

/** The numbers of a monitor as its loop needs them; of resistances as the monitor sees them. */
export interface MachineLimits {
  readonly series: number;
  readonly low: number;
  readonly high: number;
  readonly releaseLow: number;
  readonly releaseHigh: number;
  readonly rise: MachineRise | undefined;
  readonly alarmDelay: number;
  readonly releaseDelay: number;
}

/** The rule of a rise: the limit is a factor times the baseline, or its floor. */
interface MachineRise {
  readonly baseline: 'at-start' | 'lowest' | 'tracked';
  readonly factor: number;
  readonly releaseFactor: number;
  readonly floor: number;
  readonly timeConstant: number;
}

/** The limits of a checked monitor; what it does not state is unlimited, 0 or at once. */
export function machineLimits({ lower, upper, rise, alarmDelay, releaseDelay, series }: Monitor): MachineLimits {
  const high = upper?.resistance ?? Number.POSITIVE_INFINITY;
  const low = lower?.resistance ?? 0;
  return {
    series: series?.resistance ?? 0,
    low: low * (1 - onLimit),
    high: high * (1 + onLimit),
    releaseLow: (low + (lower?.hysteresis ?? 0)) * (1 - onLimit),
    releaseHigh: (high - (upper?.hysteresis ?? 0)) * (1 + onLimit),
    rise:
      rise === undefined
        ? undefined
        : {
            baseline: rise.baseline,
            factor: (1 + rise.fraction) * (1 + onLimit),
            releaseFactor: (1 + rise.fraction - (rise.hysteresis ?? 0)) * (1 + onLimit),
            floor: rise.floor ?? 0,
            timeConstant: rise.timeConstant ?? Number.POSITIVE_INFINITY,
          },
    alarmDelay: alarmDelay ?? 0,
    releaseDelay: releaseDelay ?? 0,
  };
}

/** The upper end of what is accepted at a baseline; NaN is no baseline yet. */
export function topAt({ high, rise }: MachineLimits, baseline: number): number {
  if (rise === undefined || Number.isNaN(baseline)) return high;
  return Math.min(high, Math.max(baseline, rise.floor) * rise.factor);
}

/** The upper end of what ends an alarm. */
export function releaseTopAt({ releaseHigh, rise }: MachineLimits, baseline: number): number {
  if (rise === undefined || Number.isNaN(baseline)) return releaseHigh;
  return Math.min(releaseHigh, Math.max(baseline, rise.floor) * rise.releaseFactor);
}
