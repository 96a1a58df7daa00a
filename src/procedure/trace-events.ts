import type { MonitorAlarm } from '../monitor/index.js';
import type { MonitorTrace, NotedAlarm } from './readings.js';

/** A stretch of time, in seconds. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Resistance at a place of a trace; an open circuit is infinite. */
export function resistanceAt({ resistance }: MonitorTrace, index: number): number {
  const value = resistance[index] as number | 'open';
  return value === 'open' ? Number.POSITIVE_INFINITY : value;
}

/** End of a trace. */
export function endOf({ time, end }: MonitorTrace): number {
  return end ?? (time.at(-1) as number);
}

/** The first unbroken stretch after a time in which a resistance is as is asked, up to the end of the trace. */
export function firstStretch(
  trace: MonitorTrace,
  { from, to }: Stretch,
  isSo: (resistance: number) => boolean,
): Stretch | undefined {
  const { time } = trace;
  let start: number | undefined;
  for (let i = 0; i < time.length; i++) {
    const [begins, ends] = [time[i] as number, time[i + 1] ?? endOf(trace)];
    if (ends < from || (ends === from && i + 1 < time.length)) continue;
    if (isSo(resistanceAt(trace, i))) start ??= Math.max(begins, from);
    else if (start !== undefined) return { from: start, to: begins };
    if (start === undefined && ends >= to) return undefined;
  }
  return start === undefined ? undefined : { from: start, to: endOf(trace) };
}

/** Whether every resistance within a stretch is as is asked. */
export function isThroughout(trace: MonitorTrace, stretch: Stretch, isSo: (resistance: number) => boolean): boolean {
  const { time } = trace;
  return time.every((begins, i) => {
    const ends = time[i + 1] ?? Number.POSITIVE_INFINITY;
    return ends <= stretch.from || begins > stretch.to || isSo(resistanceAt(trace, i));
  });
}

/** An alarm of the model with the noted one that answers it, or one of them alone. */
export interface AlarmPair {
  readonly expected?: MonitorAlarm;
  readonly noted?: NotedAlarm;
  /** True where a noted alarm that began before still stood. */
  readonly isStanding?: boolean;
}

/**
 * Puts noted alarms beside those of the model: the first that begins after the limit was passed and before the next one
 * is, not later after the end of the excursion than the delay that is permitted.
 */
export function pairAlarms(
  expected: readonly MonitorAlarm[],
  noted: readonly NotedAlarm[],
  slack: number,
  permitted: number,
): readonly AlarmPair[] {
  const free = new Set(noted);
  const pairs = expected.map((alarm, k): AlarmPair => {
    const standing = noted.find(
      ({ from, to }) => from < alarm.since - slack && (to ?? Number.POSITIVE_INFINITY) > alarm.since + slack,
    );
    const next = expected[k + 1]?.since ?? Number.POSITIVE_INFINITY;
    const latest = Math.min(next - slack, (alarm.to ?? Number.POSITIVE_INFINITY) + permitted + slack);
    const answer = [...free].find(({ from }) => from >= alarm.since - slack && from <= latest);
    if (answer !== undefined) {
      free.delete(answer);
      return { expected: alarm, noted: answer };
    }
    return standing === undefined ? { expected: alarm } : { expected: alarm, noted: standing, isStanding: true };
  });
  // One that answers nothing, and one that still stood when the next was due, are looked at by themselves.
  return [...pairs, ...[...free].map((alone) => ({ noted: alone }))];
}
