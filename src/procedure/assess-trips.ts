import type { Band } from '../band/index.js';
import type { Warning } from '../checks/index.js';
import { type MonitorSweep, type TripPoint, tripPoints } from '../monitor/index.js';
import { formatBand, formatQuantity } from '../units/index.js';
import type { TripFinding, TripFindings, Verdict } from './findings.js';
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
  const found = tripPoints(sweeps, { monitor: model, accuracy: box.accuracy });
  const { points, response, unchanged, warnings, working } = found;
  const rows: TripFinding[] = [
    ...points.map((point) => pointRow(point, phase)),
    ...unchanged.map(
      ({ finding, limit, baseline, last, outcome }): TripFinding => ({
        phase,
        what: `${finding === 'never-trips' ? 'trip' : 'release'} ${nameOf(limit, baseline)}`,
        unit: 'ohm',
        limits: {},
        verdict: outcome === 'outside' ? 'fail' : 'not judged',
        isStated: outcome !== 'not-stated',
        message: `${finding === 'never-trips' ? 'No alarm' : 'No release'} up to ${formatQuantity(last, 'ohm')}.`,
      }),
    ),
    ...found.hysteresis.map(
      ({ limit, baseline, value, standardUncertainty, stated: maker }): TripFinding => ({
        phase,
        what: `hysteresis ${nameOf(limit, baseline)}${maker === null ? '' : `, stated ${ohms(maker)}`}`,
        unit: 'ohm',
        value,
        expandedUncertainty: found.coverageFactor * standardUncertainty,
        limits: {},
        verdict: 'not judged',
        isStated: false,
        message: `${ohms(value)}; the sheet states no limits.`,
      }),
    ),
    ...(response === null
      ? []
      : [
          {
            phase,
            what: 'response time, longest',
            unit: 's',
            value: response.longest,
            limits: model.alarmDelay === undefined ? {} : { upper: model.alarmDelay },
            verdict: verdictOf(response.outcome),
            isStated: model.alarmDelay !== undefined,
            message:
              model.alarmDelay === undefined
                ? `${formatQuantity(response.longest, 's')}; the sheet states no longest time.`
                : `${formatQuantity(response.longest, 's')}, permitted are ${formatQuantity(model.alarmDelay, 's')}${response.outcome === 'outside' ? ': the alarm trips late' : ''}.`,
          } as const,
        ]),
  ];
  return { phase, sweeps, rows, hysteresis: found.hysteresis, warnings: [...leftOut, ...warnings], working };
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

function pointRow(point: TripPoint, phase: Phase): TripFinding {
  const { event, limit, baseline, value, expandedUncertainty, tolerance, outcome } = point;
  const shown = `${ohms(value)} ± ${ohms(expandedUncertainty)}`;
  const against = {
    inside: `inside ${bandText(tolerance)}`,
    outside: `outside ${bandText(tolerance)}`,
    'no-verdict': `too near to a limit of ${bandText(tolerance)} for its uncertainty: a finer step or a better box decides`,
    'not-stated': 'the sheet states no limits',
  }[outcome];
  return {
    phase,
    what: `${event} ${nameOf(limit, baseline)}`,
    unit: 'ohm',
    value,
    expandedUncertainty,
    limits: tolerance,
    verdict: verdictOf(outcome),
    isStated: outcome !== 'not-stated',
    message: `${shown}: ${against}.`,
  };
}

function verdictOf(outcome: TripPoint['outcome']): Verdict {
  return outcome === 'inside' ? 'pass' : outcome === 'outside' ? 'fail' : 'not judged';
}

function nameOf(limit: 'lower' | 'upper' | 'rise', baseline: number | undefined): string {
  const from = baseline === undefined ? '' : ` from ${formatQuantity(baseline, 'ohm')}`;
  return `${limit === 'rise' ? 'by rise' : `of the ${limit} limit`}${from}`;
}

function bandText(band: Band): string {
  if (band.lower === undefined && band.upper === undefined) return 'no limits';
  return formatBand(band, 'ohm', { digits: 4, rounding: 'nearest' });
}

function ohms(value: number): string {
  return formatQuantity(value, 'ohm', { digits: 4, rounding: 'nearest' });
}
