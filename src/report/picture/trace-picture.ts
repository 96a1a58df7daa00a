/** A trace of a monitor's resistance against time, ready to draw; times in seconds, resistances in ohms as on the trace. */
export interface TracePicture {
  readonly title: string;
  /** The picture in sentences, for those who cannot see it. */
  readonly description: string;
  readonly time: readonly number[];
  /** Each holds until the next time; an open circuit is infinite. */
  readonly resistance: readonly number[];
  readonly end: number;
  readonly thresholds: readonly TraceThreshold[];
  /** Alarms of the stated monitor: the limit is passed, and after the permitted delay the alarm must stand. */
  readonly expected: readonly TraceSpan[];
  /** Alarms that were noted. */
  readonly noted: readonly TraceSpan[];
  /** From when an alarm had to stand until it did. */
  readonly late: readonly TraceSpan[];
}

/** A threshold, with the tolerance that its maker states. */
export interface TraceThreshold {
  readonly label: string;
  readonly value: number;
  readonly lower?: number;
  readonly upper?: number;
  /** Where it holds for a part of the trace only. */
  readonly from?: number;
  readonly to?: number;
}

/** A stretch of time with a few words. */
export interface TraceSpan {
  readonly from: number;
  readonly to: number;
  readonly label?: string;
  /** When what led to it began. */
  readonly since?: number;
}
