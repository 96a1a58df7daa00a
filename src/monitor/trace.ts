import { fail, requireFinite, requirePositive, requireResult } from '../checks/index.js';

/** A resistance of a trace, in ohms, or an open circuit; in a Float64Array an open circuit is `Infinity`. */
export type TracedResistance = number | 'open';

/** Resistances that are set one after the other: each holds until the next. */
export interface StepTrace {
  /** Time of each step, in seconds, rising; the resistance from then on. */
  readonly steps: readonly { readonly time: number; readonly resistance: TracedResistance }[];
  /** End of the trace, in seconds; the time of the last step unless stated. */
  readonly end?: number;
}

/** Samples at equal intervals: each holds until the next. */
export interface SampledTrace {
  /** Time between two samples, in seconds. */
  readonly interval: number;
  /** Time of the first sample, in seconds; 0 unless stated. */
  readonly start?: number;
  readonly resistance: Float64Array | readonly TracedResistance[];
}

/** Samples with a time each: each holds until the next. */
export interface TimedTrace {
  /** Times, in seconds, rising. */
  readonly time: Float64Array | readonly number[];
  readonly resistance: Float64Array | readonly TracedResistance[];
  /** End of the trace, in seconds; the time of the last sample unless stated. */
  readonly end?: number;
}

/** Resistance against time, in any of its forms. */
export type ResistanceTrace = StepTrace | SampledTrace | TimedTrace;

/** A trace as columns. */
export interface TraceColumns {
  readonly resistance: Float64Array;
  /** Absent where the samples are at equal intervals. */
  readonly time: Float64Array | undefined;
  readonly start: number;
  readonly interval: number;
  readonly end: number;
  /** Where the resistance of a sample stands, for an error. */
  readonly pathOf: (index: number) => string;
}

/** Brings a trace into columns; the resistances are checked while they are used. */
export function columnsOf(trace: ResistanceTrace): TraceColumns {
  if ('interval' in trace) {
    const resistance = resistanceColumn(trace.resistance);
    const interval = requirePositive(trace.interval, 'trace.interval');
    const start = requireFinite(trace.start ?? 0, 'trace.start');
    const end = requireDuration(start, start + (resistance.length - 1) * interval);
    return { resistance, time: undefined, start, interval, end, pathOf: (i) => `trace.resistance[${i}]` };
  }
  if ('steps' in trace) {
    const resistance = resistanceColumn(trace.steps.map((step) => step.resistance));
    const time = Float64Array.from(trace.steps, (step) => step.time);
    return {
      ...timed(time, resistance, trace.end, (i) => `steps[${i}].time`),
      pathOf: (i) => `trace.steps[${i}].resistance`,
    };
  }
  if (trace.time === undefined) {
    fail('missing-member', 'trace.time', trace.time, 'must be given, or an interval, or steps');
  }
  const resistance = resistanceColumn(trace.resistance);
  const time = trace.time instanceof Float64Array ? trace.time : Float64Array.from(trace.time);
  if (time.length !== resistance.length) {
    fail('wrong-count', 'trace.time', time.length, `must have as many values as the resistance, ${resistance.length}`);
  }
  return { ...timed(time, resistance, trace.end, (i) => `time[${i}]`), pathOf: (i) => `trace.resistance[${i}]` };
}

/** Time at which a sample begins; that of the end beyond the last. */
export function timeAt({ time, start, interval, resistance, end }: TraceColumns, index: number): number {
  if (index >= resistance.length) return end;
  return time === undefined ? start + index * interval : (time[index] as number);
}

function resistanceColumn(values: Float64Array | readonly TracedResistance[]): Float64Array {
  if (values.length === 0) fail('wrong-count', 'trace', values, 'must have at least one resistance');
  if (values instanceof Float64Array) return values;
  return Float64Array.from(values as readonly TracedResistance[], (value) =>
    value === 'open' ? Number.POSITIVE_INFINITY : value,
  );
}

function timed(
  time: Float64Array,
  resistance: Float64Array,
  stated: number | undefined,
  pathOf: (index: number) => string,
): Omit<TraceColumns, 'pathOf'> {
  const bad = firstBadTime(time);
  if (bad >= 0) {
    requireFinite(time[bad] as number, `trace.${pathOf(bad)}`);
    const previous = time[bad - 1];
    fail('not-ascending', `trace.${pathOf(bad)}`, time[bad], `must be greater than the time before it, ${previous}`);
  }
  const last = time[time.length - 1] as number;
  const end = requireFinite(stated ?? last, 'trace.end');
  if (end < last) fail('out-of-range', 'trace.end', end, `must not lie before the last time, ${last}`);
  const start = time[0] as number;
  return { resistance, time, start, interval: 0, end: requireDuration(start, end) };
}

/** An end whose time since the start a number can hold. */
function requireDuration(start: number, end: number): number {
  requireResult(end - start, 'trace.end');
  return end;
}

/** The first time that is not finite or does not rise, or −1. */
function firstBadTime(time: Float64Array): number {
  let previous = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < time.length; i++) {
    const now = time[i] as number;
    if (!(now > previous && now < Number.POSITIVE_INFINITY)) return i;
    previous = now;
  }
  return -1;
}
