import { fail, requireChoice, requireResult } from '../checks/index.js';
import type { AlarmReason } from './alarm-reason.js';
import { checkMonitor } from './check-monitor.js';
import { holdUntil } from './hold-until.js';
import { type MachineLimits, machineLimits, releaseTopAt, topAt } from './machine-limits.js';
import type { Monitor, MonitorRise } from './monitor.js';
import { type Cursor, skipAccepted } from './skip-accepted.js';
import { columnsOf, type ResistanceTrace, type TraceColumns, type TracedResistance, timeAt } from './trace.js';

/** One alarm. */
export interface MonitorAlarm {
  /** The limit that was passed first; `not-yet-accepted` of a trace that starts in alarm. */
  readonly reason: AlarmReason;
  /** Time at which the limit was passed, in seconds. */
  readonly since: number;
  /** Time at which the alarm begins and the output is stopped, in seconds. */
  readonly from: number;
  /** Time at which it ends, in seconds; `null` where it stands at the end of the trace. */
  readonly to: number | null;
  /** The resistance of the trace that passed the limit, in ohms. */
  readonly resistance: TracedResistance;
  /** The same as the monitor sees it, with lead and fixture. */
  readonly seen: TracedResistance;
  /** The limit that was passed, in ohms as the monitor sees it; `null` of a trace that starts in alarm. */
  readonly limit: number | null;
  /** The baseline at that time, in ohms as the monitor sees it; `null` where there is none. */
  readonly baseline: number | null;
}

/** A stretch of time in one state. */
export interface MonitorState {
  readonly state: 'accepted' | 'alarm';
  /** From when, in seconds. */
  readonly from: number;
  /** Until when, in seconds. */
  readonly to: number;
  /** Whether the monitor permits output. */
  readonly outputPermitted: boolean;
}

/** What a monitor makes of a trace. */
export interface MonitorStates {
  /** Start and end of the trace, in seconds. */
  readonly start: number;
  readonly end: number;
  readonly alarms: readonly MonitorAlarm[];
  /** Stretches from start to end; one of no length is left out. */
  readonly states: readonly MonitorState[];
  /** Time without permission, in seconds. */
  readonly timeInAlarm: number;
  /** Since when a limit is passed at the end, its delay not over, in seconds; `null` where none is. */
  readonly pendingSince: number | null;
  /** The baseline at the end, in ohms as the monitor sees it; `null` where there is none. */
  readonly baseline: number | null;
  /** What was taken because the maker does not state it. */
  readonly assumptions: readonly string[];
}

/** How a trace begins. */
export interface MonitorStatesOptions {
  /** `accepted` (default): output is permitted until a limit is passed. `alarm`: until the resistance is accepted, it is not. */
  readonly startsIn?: 'accepted' | 'alarm';
}

/**
 * What a monitor makes of a resistance that changes with time: states, alarms, whether output is permitted.
 *
 * A resistance holds until the next one. An alarm begins when a limit has been passed without a break for the alarm
 * delay, and ends when the resistance has been inside every limit, by its hysteresis, for the release delay. A limit
 * itself is accepted; a value within 1e-12 (relative) of a limit or of a delay counts as on it. The baseline of a rise
 * stands still while a limit is passed and while an alarm stands, and an open circuit never becomes a baseline.
 *
 * Of long traces give the resistance as a Float64Array: it is read in place, and the memory depends on the alarms alone.
 *
 * @param monitor The monitor; what it does not state is taken as 0 and listed as an assumption
 * @param trace Steps, samples at equal intervals, or samples with times
 * @param options Whether the trace starts in alarm
 * @returns States, alarms, baseline
 * @throws CalculationError as `checkMonitor`; `not-a-number`, `negative`, `wrong-count`, `not-ascending` (time runs
 * backwards), `out-of-range`, `result-out-of-range`
 * @source Definition of the monitor, as its maker states it
 * @example
 * ```ts
 * import { monitorStates } from 'esu-limits/monitor';
 * const monitor = {
 *   kind: 'contact-quality',
 *   upper: { resistance: 135 },
 *   rise: { fraction: 0.4, baseline: 'lowest' },
 *   alarmDelay: 0.5,
 * } as const;
 * const steps = [{ time: 0, resistance: 50 }, { time: 10, resistance: 71 }, { time: 20, resistance: 50 }];
 * const { alarms, states } = monitorStates(monitor, { steps, end: 30 });
 * alarms; // → [{ reason: "rise", since: 10, from: 10.5, to: 20, limit: 70, baseline: 50, … }]
 * states.map(({ from, outputPermitted }) => [from, outputPermitted]); // → [[0, true], [10.5, false], [20, true]]
 * ```
 */
export function monitorStates(
  monitor: Monitor,
  trace: ResistanceTrace,
  { startsIn = 'accepted' }: MonitorStatesOptions = {},
): MonitorStates {
  const limits = machineLimits(checkMonitor(monitor));
  const columns = columnsOf(trace);
  requireChoice(startsIn, 'startsIn', ['accepted', 'alarm']);
  const { start, end } = columns;
  const cursor: Cursor = { index: 0, time: start, baseline: Number.NaN };
  const alarms: MonitorAlarm[] = [];
  let pendingSince: number | null = null;
  if (startsIn === 'alarm') {
    const began = alarmAt(monitor, columns, limits, cursor);
    alarms.push({ ...began, reason: 'not-yet-accepted', limit: null, to: release(columns, limits, cursor) });
  }
  while (cursor.index < columns.resistance.length) {
    skipAccepted(columns, limits, cursor);
    if (cursor.index >= columns.resistance.length) break;
    const began = alarmAt(monitor, columns, limits, cursor);
    const top = topAt(limits, cursor.baseline);
    const isOutside = (seen: number) => seen < limits.low || seen > top;
    const outcome = holdUntil(columns, limits.series, cursor, began.since + limits.alarmDelay, isOutside);
    if (outcome === 'ended') pendingSince = began.since;
    if (outcome === 'held') {
      const from = cursor.time;
      alarms.push({ ...began, from, to: release(columns, limits, cursor) });
    }
  }
  const states = statesBetween(alarms, start, end);
  return {
    start,
    end,
    alarms,
    states,
    timeInAlarm: alarms.reduce((total, { from, to }) => total + ((to ?? end) - from), 0),
    pendingSince,
    baseline: orNull(cursor.baseline),
    assumptions: assumptionsOf(monitor),
  };
}

/** The alarm that the sample at the cursor would begin. */
function alarmAt(
  { lower, upper, rise }: Monitor,
  columns: TraceColumns,
  { series, low, high }: MachineLimits,
  { index, time, baseline }: Cursor,
): MonitorAlarm {
  const resistance = requireSample(columns, index);
  const seen = resistance + series;
  const [reason, limit] =
    seen > high
      ? (['above-upper', upper?.resistance ?? null] as const)
      : seen < low
        ? (['below-lower', lower?.resistance ?? null] as const)
        : (['rise', riseLimitAt(rise, baseline)] as const);
  const open = seen === Number.POSITIVE_INFINITY;
  return {
    reason,
    since: time,
    from: time,
    to: null,
    resistance: open ? 'open' : resistance,
    seen: open ? 'open' : seen,
    limit,
    baseline: orNull(baseline),
  };
}

/** The limit of a rise; none before there is a baseline. */
function riseLimitAt(rise: MonitorRise | undefined, baseline: number): number | null {
  if (rise === undefined || Number.isNaN(baseline)) return null;
  return requireResult(Math.max(baseline, rise.floor ?? 0) * (1 + rise.fraction), 'limit');
}

/** Moves the cursor to the end of an alarm and returns its time; `null` where the alarm stands at the end. */
function release(columns: TraceColumns, limits: MachineLimits, cursor: Cursor): number | null {
  const { resistance } = columns;
  const { series, releaseLow, releaseDelay } = limits;
  const top = releaseTopAt(limits, cursor.baseline);
  const isClear = (seen: number) => seen >= releaseLow && seen <= top;
  for (;;) {
    let i = cursor.index;
    while (i < resistance.length && !isClear(requireSample(columns, i) + series)) i++;
    if (i > cursor.index) {
      cursor.index = i;
      cursor.time = timeAt(columns, i);
    }
    if (i >= resistance.length) return null;
    const outcome = holdUntil(columns, series, cursor, cursor.time + releaseDelay, isClear);
    if (outcome === 'held') return cursor.time;
    if (outcome === 'ended') return null;
  }
}

/** A sample that is a resistance or an open circuit, or an error that names it. */
function requireSample({ resistance, pathOf }: TraceColumns, index: number): number {
  const x = resistance[index] as number;
  if (x >= 0) return x;
  return fail(
    Number.isNaN(x) ? 'not-a-number' : 'negative',
    pathOf(index),
    x,
    'must be a resistance of 0 or more, or open',
  );
}

function statesBetween(alarms: readonly MonitorAlarm[], start: number, end: number): MonitorState[] {
  const states: MonitorState[] = [];
  const add = (state: MonitorState['state'], from: number, to: number) => {
    if (to > from) states.push({ state, from, to, outputPermitted: state === 'accepted' });
  };
  let since = start;
  for (const { from, to } of alarms) {
    add('accepted', since, from);
    add('alarm', from, to ?? end);
    since = to ?? end;
  }
  add('accepted', since, end);
  return states;
}

function assumptionsOf({ lower, upper, rise, alarmDelay, releaseDelay }: Monitor): string[] {
  const isSilent = [lower, upper, rise].some((limit) => limit !== undefined && limit.hysteresis === undefined);
  return [
    ...(isSilent ? ['No hysteresis is stated: the alarm ends at the limit itself.'] : []),
    ...(alarmDelay === undefined ? ['No alarm delay is stated: the alarm begins at once.'] : []),
    ...(releaseDelay === undefined ? ['No release delay is stated: the alarm ends at once.'] : []),
  ];
}

function orNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
