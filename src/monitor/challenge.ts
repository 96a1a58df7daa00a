import type { Band } from '../band/index.js';

/** A resistance to set, and what the monitor must do. */
export interface AlarmChallenge {
  readonly kind: 'must-not-alarm' | 'must-alarm';
  /** The limit that it challenges; `any` of a short or an open circuit that no single one answers for. */
  readonly limit: 'lower' | 'upper' | 'rise' | 'any';
  /** Resistance, in ohms (0: a short circuit), or an open circuit. */
  readonly set: number | 'open';
  /** The baseline to set first, in ohms; absent: start the monitor anew, so that nothing is left of an earlier one. */
  readonly baseline?: number;
  /** How long to wait for the alarm, or for its absence, in seconds: the maker's delay; `null` where none is stated. */
  readonly wait: number | null;
  /** Why, in a sentence. */
  readonly reason: string;
}

/** Values to set one after the other, until the monitor alarms or releases. */
export interface SweepChallenge {
  readonly kind: 'sweep';
  readonly limit: 'lower' | 'upper' | 'rise';
  readonly direction: 'up' | 'down';
  /** Values in the order of setting, in ohms. */
  readonly values: readonly number[];
  readonly baseline?: number;
  readonly wait: number | null;
  readonly reason: string;
}

/** A resistance at which the display is read. */
export interface ReadingChallenge {
  readonly kind: 'reading';
  readonly set: number;
  /** What the display may show, in ohms; absent where the maker states no tolerance. */
  readonly limits?: Band;
  readonly reason: string;
}

export type MonitorChallenge = AlarmChallenge | SweepChallenge | ReadingChallenge;

/** Limits in words. */
export const limitNames = {
  lower: 'the lower limit',
  upper: 'the upper limit',
  rise: 'the rise over the baseline',
} as const;
