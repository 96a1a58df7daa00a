import type { Tolerance } from '../band/index.js';

/**
 * A return-electrode monitor as its maker states it. All thresholds are the maker's: nothing here has a default.
 * All numbers in SI units; relative values as fractions. JSON-safe.
 */
export interface Monitor {
  /**
   * `continuity` (single-foil neutral electrode: it sees the connection) or `contact-quality` (split electrode: it sees
   * the contact of both foils with the patient).
   */
  readonly kind: 'continuity' | 'contact-quality';
  /** Lower limit of the accepted resistance; absent: unlimited, so that a short circuit is accepted. */
  readonly lower?: MonitorLimit;
  /** Upper limit of the accepted resistance; absent: unlimited. */
  readonly upper?: MonitorLimit;
  /** Rise over a baseline that alarms; only of a contact quality monitor. */
  readonly rise?: MonitorRise;
  /**
   * Time from passing a limit to the alarm, in seconds: simulated as it stands, judged as the longest permitted.
   * Absent: not stated.
   */
  readonly alarmDelay?: number;
  /** Time for which the resistance must be accepted again before the alarm ends, in seconds. Absent: not stated. */
  readonly releaseDelay?: number;
  /** The resistance display, where there is one. */
  readonly display?: MonitorDisplay;
  /** Lead and fixture between what is set and the place where the maker's limits hold. Absent: none. */
  readonly series?: SeriesResistance;
}

/** One limit of the accepted resistance; the limit itself is accepted. */
export interface MonitorLimit {
  /** Resistance, in ohms. */
  readonly resistance: number;
  /** How far the trip point may lie from it, as the maker states; absent: not stated. */
  readonly tolerance?: Tolerance;
  /** How far back inside the limit the resistance must come before the alarm ends, in ohms. Absent: not stated. */
  readonly hysteresis?: number;
}

/** The rule of a rise over a baseline: alarm above baseline · (1 + fraction). */
export interface MonitorRise {
  /** Rise as a fraction of the baseline, above 0. */
  readonly fraction: number;
  /** How far the fraction may be off, to either side, as a fraction of the baseline; absent: not stated. */
  readonly tolerance?: number;
  /** How far back the rise must come before the alarm ends, as a fraction of the baseline. Absent: not stated. */
  readonly hysteresis?: number;
  /**
   * `at-start`: the first value between the limits. `lowest`: the lowest accepted value so far. `tracked`: it follows
   * accepted values with a time constant. It stands still while a limit is passed and while an alarm stands.
   */
  readonly baseline: 'at-start' | 'lowest' | 'tracked';
  /** Time constant of a tracked baseline, in seconds. */
  readonly timeConstant?: number;
  /** The baseline counts as this where it is lower, in ohms. Absent: no floor. */
  readonly floor?: number;
}

/** A display of the resistance that the monitor sees. */
export interface MonitorDisplay {
  /** One step of the last digit, in ohms. */
  readonly resolution: number;
  /** Largest value that it shows, in ohms. */
  readonly maximum: number;
  /** What it shows for an open circuit and for everything above its maximum: a word, or a number of ohms. */
  readonly open: 'over-range' | number;
  /** How far the display may be off, as the maker states; absent: not stated. */
  readonly tolerance?: Tolerance;
}

/** Resistance in series with what is set. */
export interface SeriesResistance {
  /** Resistance, in ohms. */
  readonly resistance: number;
  /** How far it may be off, to either side, in ohms; absent: taken as exact. */
  readonly limits?: number;
}
