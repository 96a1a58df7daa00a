import type { Warning } from '../checks/index.js';
import { type AlarmReason, explainAlarm, type Monitor, type MonitorAlarm, monitorStates } from '../monitor/index.js';
import { formatQuantity } from '../units/index.js';
import type { Step } from '../working/index.js';
import { alarmReasonWarnings } from './alarm-reasons.js';
import type { TraceFindings, TripFinding } from './findings.js';
import { judgeResponse } from './judge-response.js';
import type { Plan } from './plan.js';
import { monitorAtBench } from './plan-monitor.js';
import type { MonitorTrace, NotedAlarm } from './readings.js';
import { difference } from './steps.js';
import { endOf, firstStretch, isThroughout, pairAlarms, type Stretch } from './trace-events.js';
import { seenRangeOf, type TraceLimits, traceLimits } from './trace-limits.js';

/** One trace: alarms of the stated monitor beside those that were noted, or a warning why it cannot be judged. */
export function assessTrace(plan: Plan, trace: MonitorTrace, number: number): TraceFindings | Warning {
  const { bench, specification } = plan;
  const stated = specification.monitor?.model;
  if (stated === undefined) {
    return {
      code: 'reading-extra',
      message: `Trace ${number} has no place: the sheet states no thresholds of a monitor.`,
    };
  }
  const model = modelOf(trace, monitorAtBench(stated, bench));
  const seen = seenRangeOf(trace, model, bench);
  if (seen === undefined) {
    return trace.of === 'set'
      ? { code: 'box-not-on-bench', message: `Trace ${number} is not judged: the bench states no resistance box.` }
      : {
          code: 'missing-member',
          message: `Trace ${number} is not judged: the sheet states no display of the monitor.`,
        };
  }
  const { phase, name, startsIn } = trace;
  const expected = monitorStates(model, columnsOf(trace), startsIn === undefined ? {} : { startsIn });
  const limits = traceLimits(model, seen, model.series?.resistance ?? 0);
  const scene: Scene = { plan, trace, model, limits };
  const pairs = pairAlarms(expected.alarms, trace.alarms, slackOf(plan), model.alarmDelay ?? 0);
  const made = pairs.map(({ expected: alarm, noted, isStanding }) => {
    if (alarm === undefined) return withReasons(falseAlarm(scene, noted as NotedAlarm), noted as NotedAlarm);
    if (noted === undefined || isStanding === true) return missed(scene, alarm, isStanding);
    return withReasons(answered(scene, alarm, noted), noted, comparedWith(scene, alarm, noted));
  });
  return {
    number,
    ...(name === undefined ? {} : { name }),
    phase,
    expected,
    rows: made.map(({ row }) => ({ phase, ...row })),
    warnings: [...exactDisplay(trace, model), ...made.flatMap(({ warnings }) => warnings ?? [])],
    working: [
      ...expected.alarms.flatMap((alarm) => explainAlarm(model, alarm)),
      ...made.flatMap(({ working }) => working ?? []),
    ],
  };
}

interface Scene {
  readonly plan: Plan;
  readonly trace: MonitorTrace;
  readonly model: Monitor;
  readonly limits: TraceLimits;
}

interface JudgedAlarm {
  readonly row: Omit<TripFinding, 'phase'>;
  readonly warnings?: readonly Warning[];
  readonly working?: readonly Step[];
}

/** What the display shows includes lead and fixture; what is set does not. */
function modelOf({ of }: MonitorTrace, model: Monitor): Monitor {
  const { series: _, ...shown } = model;
  return of === 'displayed' ? shown : model;
}

function columnsOf({ time, resistance, end }: MonitorTrace, until = end) {
  return { time, resistance, ...(until === undefined ? {} : { end: until }) };
}

function slackOf({ bench }: Plan): number {
  return bench.timing?.limits ?? 0;
}

/** An alarm that came: its time since the limit was surely passed, and that it stood while it had to. */
function answered(scene: Scene, alarm: MonitorAlarm, noted: NotedAlarm): JudgedAlarm {
  const { plan, model } = scene;
  const row = rowOf(alarm);
  const at = `noted at ${seconds(noted.from)}`;
  const sure = sureStretch(scene, alarm);
  if (sure === undefined) {
    return open(row, `Alarm ${at}. ${alarm.reason === 'not-yet-accepted' ? 'The trace begins in alarm' : doubt}.`);
  }
  const isLate = model.alarmDelay !== undefined && decimal(noted.from - sure.from) > model.alarmDelay;
  const late = isLate ? ' The alarm trips late.' : '';
  if (noted.to !== undefined && noted.to < sure.to - slackOf(plan)) {
    const message = `The alarm ${at} ended at ${seconds(noted.to)}, while the resistance was beyond the limit until ${seconds(sure.to)}.${late}`;
    return { row: { ...row, verdict: 'fail', reason: 'early-release', isStated: true, message } };
  }
  const apart = difference('time from passing the limit to the alarm', noted.from, sure.from, 's');
  // An alarm inside the tolerance, before the limit was surely passed, is in time.
  const value = Math.max(0, decimal(apart.value));
  const permitted = model.alarmDelay;
  if (permitted === undefined) {
    const message = `Alarm ${at}, ${seconds(value)} after the limit was passed; the sheet states no longest time.`;
    return { row: { ...row, value, verdict: 'pass', reason: 'inside', isStated: true, message } };
  }
  const { judged, because, warnings, working } = judgeResponse(plan, value, permitted);
  const message = `Alarm ${at}, ${seconds(value)} after the limit was passed, permitted are ${seconds(permitted)}: ${because}.${late}`;
  return {
    row: { ...row, value, limits: { upper: permitted }, ...judged, isStated: true, message },
    warnings,
    working: [apart, ...working],
  };
}

/** What the reason that was noted is compared with; nothing where the stated monitor has none of its own. */
function comparedWith(scene: Scene, alarm: MonitorAlarm, noted: NotedAlarm): ComparedReason | undefined {
  const { reason, baseline } = alarm;
  // What a trace begins with, and what the bench leaves open, may have any reason.
  const sure = reason === 'not-yet-accepted' ? undefined : sureStretch(scene, alarm);
  if (sure === undefined) return undefined;
  const { reason: other } = noted;
  const { trace, limits } = scene;
  const isBeyond = (R: number): boolean => other !== undefined && limits.isSurelyBeyond(R, other, baseline);
  const isBoth = firstStretch(trace, { from: sure.from, to: noted.from }, isBeyond) !== undefined;
  return { expected: reason, besides: isBoth ? ' The resistance was beyond both limits.' : '' };
}

interface ComparedReason {
  readonly expected: AlarmReason;
  readonly besides: string;
}

/** A judged alarm with the reason that was noted, and a warning where the stated monitor has another. */
function withReasons(judged: JudgedAlarm, { from, reason }: NotedAlarm, compared?: ComparedReason): JudgedAlarm {
  const { expected, besides } = compared ?? {};
  const differing = alarmReasonWarnings(`Alarm noted at ${seconds(from)}`, reason, expected, besides);
  const reasons = {
    ...(reason === undefined ? {} : { alarmReason: reason }),
    ...(expected === undefined ? {} : { expectedReason: expected }),
  };
  return { ...judged, row: { ...judged.row, ...reasons }, warnings: [...(judged.warnings ?? []), ...differing] };
}

/** An alarm that did not come, or was there already: judged where it stayed away longer than is permitted. */
function missed(scene: Scene, alarm: MonitorAlarm, isStanding = false): JudgedAlarm {
  const { plan, model } = scene;
  const row = rowOf(alarm);
  if (isStanding) return open(row, 'The alarm before it still stood: nothing is told of this one.');
  const sure = sureStretch(scene, alarm);
  if (sure === undefined) {
    return open(
      row,
      alarm.reason === 'not-yet-accepted' ? 'No alarm noted: the trace begins in alarm.' : `No alarm noted. ${doubt}.`,
    );
  }
  const silent = decimal(sure.to - sure.from);
  const said = `No alarm in ${seconds(silent)} beyond the limit`;
  const permitted = model.alarmDelay;
  const undecided = { verdict: 'not judged', reason: 'nothing-to-compare', isStated: true } as const;
  if (permitted === undefined)
    return { row: { ...row, ...undecided, message: `${said}; the sheet states no longest time.` } };
  const common = { ...row, limits: { upper: permitted } };
  const { judged, because, warnings, working } = judgeResponse(plan, silent, permitted);
  const after = `, permitted are ${seconds(permitted)}`;
  if (judged.verdict !== 'fail')
    return { row: { ...common, ...undecided, message: `${said}${after}: too short to tell.` } };
  const { verdict, reason } = judged;
  const message = `${said}${after}: an alarm after that is ${because}.`;
  return { row: { ...common, verdict, reason, isStated: true, message }, warnings, working };
}

/** An alarm that the model does not have: a fault where the resistance was surely inside for as long as a delay lasts. */
function falseAlarm({ plan, trace, model, limits }: Scene, { from }: NotedAlarm): JudgedAlarm {
  const row = { what: `alarm noted at ${seconds(from)}`, unit: 's', limits: {} } as const;
  const { time, resistance } = trace;
  const count = Math.max(1, time.filter((t) => t <= from).length);
  const before = {
    time: time.slice(0, count),
    resistance: resistance.slice(0, count),
    end: Math.max(from, time[0] as number),
  };
  const { baseline } = monitorStates(model, before, { startsIn: trace.startsIn ?? 'accepted' });
  const back = (model.alarmDelay ?? Number.POSITIVE_INFINITY) + slackOf(plan);
  const isInside = (R: number): boolean => limits.isSurelyInside(R, baseline);
  if (!isThroughout(trace, { from: from - back, to: from + slackOf(plan) }, isInside)) {
    return open(
      row,
      'The resistance was near a limit, or beyond it for a shorter time than the delay: nothing is told of this alarm.',
    );
  }
  const message = 'The resistance was inside every limit: a false alarm.';
  return { row: { ...row, verdict: 'fail', reason: 'false-alarm', isStated: true, message } };
}

/** When the resistance was surely beyond the limit that the alarm names. */
function sureStretch({ trace, limits }: Scene, { reason, since, to, baseline }: MonitorAlarm): Stretch | undefined {
  const within = { from: since, to: to ?? endOf(trace) };
  return firstStretch(trace, within, (R) => limits.isSurelyBeyond(R, reason, baseline));
}

const doubt = 'The limit is passed by less than its tolerance and the bench leave open';

function rowOf({ reason, since, limit, seen }: MonitorAlarm): Pick<TripFinding, 'what' | 'unit' | 'limits'> {
  const by = {
    'above-upper': seen === 'open' ? 'of an open circuit' : 'above the upper limit',
    'below-lower': 'below the lower limit',
    rise: `by rise${limit === null ? '' : ` above ${formatQuantity(Number(limit.toPrecision(4)), 'ohm')}`}`,
    'not-yet-accepted': 'not yet accepted',
  }[reason];
  return { what: `alarm ${by} since ${seconds(since)}`, unit: 's', limits: {} };
}

function open(row: Pick<TripFinding, 'what' | 'unit' | 'limits'>, message: string): JudgedAlarm {
  return { row: { ...row, verdict: 'not judged', reason: 'nothing-to-compare', isStated: false, message } };
}

function exactDisplay({ of }: MonitorTrace, { display }: Monitor): readonly Warning[] {
  if (of === 'set' || display?.tolerance !== undefined) return [];
  const message = 'The sheet states no tolerance of the display: what it showed is taken as exact to half a step.';
  return [{ code: 'tolerance-missing', message }];
}

/** A difference of decimals as a decimal: 4.4 less 2.4 is 2, and on a limit of 2. */
function decimal(difference: number): number {
  return Number(difference.toPrecision(12));
}

function seconds(value: number): string {
  return formatQuantity(Number(value.toPrecision(4)), 's');
}
