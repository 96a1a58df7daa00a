import type { Band } from '../band/index.js';
import type { Warning } from '../checks/index.js';
import {
  type HysteresisFound,
  type MonitorSweep,
  type TripPoint,
  tripPoints,
  type UnchangedFinding,
} from '../monitor/index.js';
import { expandedUncertainty } from '../uncertainty/index.js';
import { formatBand, formatQuantity } from '../units/index.js';
import type { Step } from '../working/index.js';
import { sweepReasonWarnings } from './alarm-reasons.js';
import type { TripFinding, TripFindings } from './findings.js';
import { judgeMeasured } from './judge-measured.js';
import { judgeResponse } from './judge-response.js';
import type { Plan } from './plan.js';
import { monitorAtBench } from './plan-monitor.js';
import type { ChallengeReading, Phase } from './readings.js';

/** Trip points, release points and response times from the sweeps of one state of the unit; absent where none was made. */
export function assessTrips(plan: Plan, readings: readonly ChallengeReading[], phase: Phase): TripFindings | undefined {
  const stated = plan.specification.monitor?.model;
  const box = plan.bench.resistanceBox;
  const planned = plan.monitorThresholds?.challenges ?? [];
  if (stated === undefined || box === undefined) return undefined;
  const model = monitorAtBench(stated, plan.bench);
  const leftOut: Warning[] = [];
  const differing: Warning[] = [];
  const sweeps = planned.flatMap((challenge): MonitorSweep[] => {
    if (challenge.kind !== 'sweep') return [];
    const rows = readings.filter((row) => row.challenge === challenge.number && row.set !== undefined);
    return runsOf(rows, challenge.direction).flatMap((run): MonitorSweep[] => {
      if (run.length < 2) {
        const [only] = run as [ChallengeReading];
        leftOut.push({
          code: 'sweep-step-alone',
          message: `Challenge ${challenge.number}: the step at ${formatQuantity(only.set as number, 'ohm')} stands alone in its direction, and tells no trip point.`,
        });
        return [];
      }
      differing.push(...sweepReasonWarnings(challenge, run));
      const responseTime = run.find((row) => row.responseTime !== undefined)?.responseTime;
      return [
        {
          steps: run.map(({ set, alarm }) => ({ set: set as number, alarm })),
          ...(challenge.baseline === undefined ? {} : { baseline: challenge.baseline }),
          ...(responseTime === undefined ? {} : { responseTime }),
        },
      ];
    });
  });
  if (sweeps.length === 0) return undefined;
  const found = tripPoints(sweeps, {
    monitor: model,
    accuracy: box.accuracy,
    coverageFactor: (degreesOfFreedom) =>
      expandedUncertainty({ standardUncertainty: 1, degreesOfFreedom }).coverageFactor,
  });
  const made = [
    ...found.points.map((point) => pointRow(plan, point)),
    ...found.unchanged.map((sweep) => silenceRow(plan, sweep)),
    ...found.hysteresis.map(hysteresisRow),
    ...(found.response === null ? [] : [responseRow(plan, found.response.longest, model.alarmDelay)]),
  ];
  const judging = made.flatMap(({ warnings }) => warnings);
  return {
    phase,
    sweeps,
    rows: made.map(({ row }) => ({ phase, ...row })),
    hysteresis: found.hysteresis,
    warnings: [...leftOut, ...differing, ...found.warnings, ...distinct(judging)],
    working: [...found.working, ...made.flatMap(({ working }) => working)],
  };
}

/** The rows of a sweep that was made several times: one run for each, begun where the set values turn back. */
function runsOf(rows: readonly ChallengeReading[], direction: 'up' | 'down'): readonly (readonly ChallengeReading[])[] {
  const runs: ChallengeReading[][] = [];
  let before: number | undefined;
  for (const row of rows) {
    const set = row.set as number;
    const goesOn = before !== undefined && (direction === 'up' ? set > before : set < before);
    if (goesOn) (runs.at(-1) as ChallengeReading[]).push(row);
    else runs.push([row]);
    before = set;
  }
  return runs;
}

/** A row of the record with what its judging says. */
interface JudgedRow {
  readonly row: Omit<TripFinding, 'phase'>;
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

function pointRow(plan: Plan, point: TripPoint): JudgedRow {
  const { event, limit, baseline, value, tolerance, nominal } = point;
  const expanded = expandedUncertainty(point);
  const shown = `${ohms(value)} ± ${ohms(expanded.expandedUncertainty)}`;
  const row = { what: `${event} ${nameOf(limit, baseline)}`, unit: 'ohm', value, limits: tolerance } as const;
  if (nominal === null || !isLimited(tolerance))
    return told({ ...row, expanded }, `${shown}; the sheet states no limits.`);
  const { judged, because, ...rest } = judgeMeasured(plan, {
    limits: tolerance,
    nominal,
    value,
    unit: 'ohm',
    expanded,
  });
  const message = `${shown} against ${bandText(tolerance)}: ${because}.`;
  return { row: { ...row, ...judged, isStated: true, message }, ...rest };
}

/** Silence up to a value says that the trip point lies beyond: judged where no point beyond could be accepted. */
function silenceRow(plan: Plan, sweep: UnchangedFinding): JudgedRow {
  const { finding, limit, baseline, last, seen, standardUncertainty, nominal, tolerance } = sweep;
  const isTrip = finding === 'never-trips';
  const row = { what: `${isTrip ? 'trip' : 'release'} ${nameOf(limit, baseline)}`, unit: 'ohm' } as const;
  const said = `No ${isTrip ? 'alarm' : 'release'} up to ${ohms(last)}`;
  if (nominal === null || !isLimited(tolerance)) return told({ ...row, limits: tolerance }, `${said}.`);
  const common = { ...row, limits: tolerance, isStated: true } as const;
  const expanded = expandedUncertainty({ standardUncertainty });
  const { judged, because, ...rest } = judgeMeasured(plan, {
    limits: tolerance,
    nominal,
    value: seen,
    unit: 'ohm',
    expanded,
  });
  const isPast = limit === 'lower' ? seen < nominal : seen > nominal;
  if (isPast && judged.verdict === 'fail') {
    const { verdict, reason } = judged;
    const message = `${said}, against ${bandText(tolerance)}: a trip point beyond it is ${because}.`;
    return { row: { ...common, verdict, reason, message }, ...rest };
  }
  const open = { verdict: 'not judged', reason: 'nothing-to-compare' } as const;
  const message = `${said}: the sweep ends before it could tell.`;
  return { row: { ...common, ...open, message }, warnings: rest.warnings, working: [] };
}

function hysteresisRow({ limit, baseline, value, stated, ...blur }: HysteresisFound): JudgedRow {
  const what = `hysteresis ${nameOf(limit, baseline)}${stated === null ? '' : `, stated ${ohms(stated)}`}`;
  const expanded = expandedUncertainty(blur);
  return told({ what, unit: 'ohm', value, expanded, limits: {} }, `${ohms(value)}; the sheet states no limits.`);
}

function responseRow(plan: Plan, longest: number, permitted: number | undefined): JudgedRow {
  const row = { what: 'response time, longest', unit: 's', value: longest } as const;
  const shown = formatQuantity(longest, 's');
  if (permitted === undefined) return told({ ...row, limits: {} }, `${shown}; the sheet states no longest time.`);
  const { judged, because, ...rest } = judgeResponse(plan, longest, permitted);
  const late = longest > permitted ? ' The alarm trips late.' : '';
  const message = `${shown}, permitted are ${formatQuantity(permitted, 's')}: ${because}.${late}`;
  return { row: { ...row, limits: { upper: permitted }, ...judged, isStated: true, message }, ...rest };
}

/** A row for which the sheet states no limits. */
function told(row: Pick<TripFinding, 'what' | 'unit' | 'value' | 'expanded' | 'limits'>, message: string): JudgedRow {
  const open = { verdict: 'not judged', reason: 'no-limits', isStated: false } as const;
  return { row: { ...row, ...open, message }, warnings: [], working: [] };
}

function distinct(warnings: readonly Warning[]): readonly Warning[] {
  return warnings.filter(({ message }, i) => warnings.findIndex((entry) => entry.message === message) === i);
}

function isLimited({ lower, upper }: Band): boolean {
  return lower !== undefined || upper !== undefined;
}

function nameOf(limit: 'lower' | 'upper' | 'rise', baseline: number | undefined): string {
  const from = baseline === undefined ? '' : ` from ${formatQuantity(baseline, 'ohm')}`;
  return `${limit === 'rise' ? 'by rise' : `of the ${limit} limit`}${from}`;
}

function bandText(band: Band): string {
  return formatBand(band, 'ohm', { digits: 4, rounding: 'nearest' });
}

function ohms(value: number): string {
  return formatQuantity(Number(value.toPrecision(4)), 'ohm');
}
