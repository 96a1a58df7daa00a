import type { Quantity } from '../circuit/index.js';
import type { AlarmReason } from '../monitor/index.js';
import type { DegreesOfFreedom } from '../uncertainty/index.js';

/** What was read at the bench. All numbers in SI units. */
export interface Readings {
  readonly schema: 'esu-limits/readings';
  readonly version: 1;
  readonly note?: string;
  /** Who read. */
  readonly by?: string;
  /** When, as text. */
  readonly date?: string;
  readonly readings: readonly Reading[];
  readonly monitor?: readonly MonitorReading[];
  /** What the monitor did at the challenges of the plan, in the order in which they were made. */
  readonly monitorChallenges?: readonly ChallengeReading[];
  /** Resistances against time, with the alarms that were noted. */
  readonly monitorTraces?: readonly MonitorTrace[];
}

/** State of the unit when it was read: before or after an adjustment or repair. */
export type Phase = 'as-found' | 'as-left';

/** One reading at one point of a plan. */
export interface Reading {
  /** Identifier or number of the point in the plan. */
  readonly point: string;
  readonly phase: Phase;
  /** Quantity that the instrument showed. */
  readonly quantity: Quantity;
  /** What the instrument showed, in watts, amperes rms or volts rms. */
  readonly value: number;
  /** Uncertainty of this reading, in its own unit, where it is not that of the bench's instrument. */
  readonly uncertainty?: {
    readonly standardUncertainty: number;
    readonly degreesOfFreedom?: DegreesOfFreedom;
  };
  /** What the generator's own display showed at the same time. */
  readonly display?: DisplayReading;
  /** Peak voltage, in volts, where it was read. */
  readonly peakVoltage?: number;
  /** True when the supply was interrupted and restored just before this reading. */
  readonly afterInterruption?: boolean;
  /** After an interruption: whether the mode was the same as before. */
  readonly modeUnchanged?: boolean;
  readonly note?: string;
}

/** A value of the generator's own display. */
export interface DisplayReading {
  readonly quantity: Quantity;
  readonly value: number;
}

/** One reading of the return-electrode monitor's display. */
export interface MonitorReading {
  /** Resistance that was set, in ohms, or an open circuit. */
  readonly set: number | 'open';
  /** Displayed resistance, in ohms, or that the display showed over-range. */
  readonly displayed: number | 'over-range';
  readonly phase: Phase;
}

/** What the monitor did at one resistance. */
export interface ChallengeReading {
  /** Number of the challenge in the plan. */
  readonly challenge: number;
  /** Of a sweep: the resistance that was set, in ohms. */
  readonly set?: number;
  readonly alarm: boolean;
  /** Time from setting to the alarm, in seconds, where it was taken. */
  readonly responseTime?: number;
  /** Of an alarm: the reason that the monitor gave, where it gives one. */
  readonly alarmReason?: AlarmReason;
  readonly phase: Phase;
  readonly note?: string;
}

/** A resistance that changed with time, as columns, and what the monitor did meanwhile. */
export interface MonitorTrace {
  /** What was done, in a few words. */
  readonly name?: string;
  readonly phase: Phase;
  /** Whether the resistances are those that were set on the box of the bench, or those that the monitor displayed. */
  readonly of: 'set' | 'displayed';
  /** Times, in seconds, rising. */
  readonly time: readonly number[];
  /** Resistances, in ohms, each from its time until the next; an open circuit, or a display over its range, is `open`. */
  readonly resistance: readonly (number | 'open')[];
  /** End of the trace, in seconds; the last time unless stated. */
  readonly end?: number;
  /** `alarm`: the monitor was in alarm when the trace began; `accepted` unless stated. */
  readonly startsIn?: 'accepted' | 'alarm';
  /** Alarms that were noted, in order. */
  readonly alarms: readonly NotedAlarm[];
}

/** An alarm that was seen or heard. */
export interface NotedAlarm {
  /** Time at which it began, in seconds. */
  readonly from: number;
  /** Time at which it ended, in seconds; absent where it stood at the end of the trace. */
  readonly to?: number;
  /** The reason that the monitor gave, where it gives one. */
  readonly reason?: AlarmReason;
}
