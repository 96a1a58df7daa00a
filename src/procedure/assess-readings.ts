import { atPath, requireChoice, requireNonNegative, requireResult, type Warning } from '../checks/index.js';
import { convertQuantity } from '../circuit/index.js';
import { libraryVersion } from '../version.js';
import { assessLeakageRow, unreadLeakage } from './assess-leakage-row.js';
import { assessMonitorRow } from './assess-monitor.js';
import { assessPoint, unreadPoint } from './assess-point.js';
import { assessRule, type StateOfUnit } from './assess-rules.js';
import { challengeFindings } from './challenge-findings.js';
import type { Findings, LeakageRow, MonitorFinding, PointFinding, Summary } from './findings.js';
import { idealValue } from './ideal-value.js';
import { monitorDisplayHint } from './monitor-display.js';
import { withWaveform } from './output-waveform.js';
import type { Plan, PlanPoint } from './plan.js';
import type { ChallengeReading, MonitorReading, Phase, Reading, Readings } from './readings.js';
import type { Output } from './specification.js';
import { summarise } from './summarise.js';
import { traceFindings, tracesOfState } from './trace-findings.js';

/**
 * Compares readings with a plan: a verdict, a margin and a reason for each point, rule and monitor row.
 *
 * Nothing is lost: a point without a reading has a row, a reading without a point is listed as extra, several
 * readings of one point are all judged, and a reading that cannot be right is named and judges nothing.
 *
 * @param plan A plan of `planVerification`
 * @param readings What was read, as found and as left
 * @returns The findings, plain JSON
 * @throws CalculationError `not-a-number`, `negative`, `unknown-choice`, with the path of the reading
 * @source IEC 60601-2-2 for the rules of the plan
 */
export function assessReadings(plan: Plan, readings: Readings): Findings {
  for (const [i, reading] of readings.readings.entries()) atPath(`readings[${i}]`, () => checkReading(reading));
  const outputs = new Map(plan.specification.outputs.map((output) => [output.id, withWaveform(output)]));
  const outputOf = (id: string): Output => outputs.get(id) as Output;

  const pointOf = pointFinder(plan);
  const leakageOf = new Map(plan.leakage.map((planned) => [planned.id, planned]));
  const ofLeakage = new Map<string, Reading[]>();
  const extra: Reading[] = [];
  const ordinary = new Map<string, Reading[]>();
  const interrupted = new Map<string, Reading[]>();
  for (const reading of readings.readings) {
    const point = pointOf(reading.point);
    const planned = leakageOf.get(reading.point);
    if (planned !== undefined) push(ofLeakage, planned.id, reading);
    else if (point === undefined) extra.push(reading);
    else push(reading.afterInterruption === true ? interrupted : ordinary, point.id, reading);
  }

  const phases = phasesOf(readings);
  const points = plan.points.flatMap((point): PointFinding[] => {
    const here = ordinary.get(point.id) ?? [];
    const assessed = (['as-found', 'as-left'] as const).flatMap((phase) =>
      here
        .filter((reading) => reading.phase === phase)
        .map((reading) => assessPoint(plan, point, outputOf(point.output), reading)),
    );
    return assessed.length > 0 ? assessed : [unreadPoint(point, phases[0] as Phase)];
  });

  const leakage = plan.leakage.flatMap((planned): LeakageRow[] => {
    const here = ofLeakage.get(planned.id) ?? [];
    const assessed = (['as-found', 'as-left'] as const).flatMap((phase) =>
      here.filter((reading) => reading.phase === phase).map((reading) => assessLeakageRow(plan, planned, reading)),
    );
    return assessed.length > 0 ? assessed : [unreadLeakage(planned, phases[0] as Phase)];
  });

  const monitor = monitorFindings(plan, readings.monitor ?? [], phases);
  const challenges = challengeFindings(plan, readings.monitorChallenges ?? [], phases);
  const traces = traceFindings(plan, readings.monitorTraces ?? []);
  const states = phases.map((phase) => stateOf(plan, phase, points, interrupted));
  const rules = states.flatMap((state) =>
    plan.rules.map((rule) => assessRule(plan, rule, outputOf(rule.output), state)),
  );
  const unverified = (plan.monitorThresholds?.thresholds ?? []).filter(({ status }) => status === 'not-verifiable');
  const warnings = [...findingWarnings(plan, extra, monitor.extra, challenges.extra, interrupted), ...traces.warnings];
  const summary = (phase: Phase): Summary =>
    summarise(
      rowsOfState(points, phase),
      rowsOfState(leakage, phase),
      rules.filter((rule) => rule.phase === phase),
      monitor.rows.filter((row) => row.phase === phase),
      challenges.rows.filter((row) => row.phase === phase),
      [...challenges.trips.filter((trip) => trip.phase === phase), ...tracesOfState(traces.found, phase)].flatMap(
        ({ rows }) => rows,
      ),
      unverified.length,
    );
  return {
    schema: 'esu-limits/findings',
    version: 1,
    library: { name: 'esu-limits', version: libraryVersion },
    points,
    rules,
    monitor: monitor.rows,
    monitorDisplay: phases.flatMap((phase) => monitorDisplayHint(plan, readings.monitor ?? [], phase) ?? []),
    monitorChallenges: challenges.rows,
    monitorTrips: challenges.trips,
    monitorTraces: traces.found,
    leakage,
    extra,
    extraMonitor: monitor.extra,
    extraChallenges: challenges.extra,
    ...(phases.includes('as-found') ? { asFound: summary('as-found') } : {}),
    final: summary(phases.at(-1) as Phase),
    warnings,
  };
}

/** The states of the unit that the readings speak of; as found when there are no readings at all. */
function phasesOf(readings: Readings): readonly Phase[] {
  const { monitor = [], monitorChallenges = [], monitorTraces = [] } = readings;
  const all = [...readings.readings, ...monitor, ...monitorChallenges, ...monitorTraces];
  const phases = (['as-found', 'as-left'] as const).filter((phase) => all.some((reading) => reading.phase === phase));
  return phases.length > 0 ? phases : ['as-found'];
}

/**
 * Rows that make up a state. As found: the as-found rows, and a row without reading for a point read only as left.
 * As left: the as-left rows of each point where there are any, else its as-found rows.
 */
function rowsOfState<R extends PointFinding | LeakageRow>(points: readonly R[], phase: Phase): readonly R[] {
  const byPoint = new Map<string, R[]>();
  for (const row of points) push(byPoint, row.point, row);
  return [...byPoint.values()].flatMap((rows): readonly R[] => {
    const own = rows.filter((row) => row.phase === phase);
    if (own.length > 0) return own;
    return phase === 'as-left' ? rows : rows.slice(0, 1).map(withoutReading);
  });
}

function withoutReading<R extends PointFinding | LeakageRow>(row: R): R {
  return { ...row, phase: 'as-found', verdict: 'not judged', reason: 'no-reading', message: 'No reading.' };
}

function stateOf(
  plan: Plan,
  phase: Phase,
  points: readonly PointFinding[],
  interrupted: ReadonlyMap<string, readonly Reading[]>,
): StateOfUnit {
  const rows = new Map<string, PointFinding[]>();
  for (const row of rowsOfState(points, phase)) {
    const usable = row.power !== undefined && row.reason !== 'not-plausible' && row.reason !== 'no-reading';
    if (usable) push(rows, row.point, row);
  }
  const afterInterruption = new Map<string, { reading: Reading; power: number }[]>();
  for (const point of plan.points) {
    const load = point.load?.resistance;
    if (load === undefined) continue;
    const all = interrupted.get(point.id) ?? [];
    const own = all.filter((reading) => reading.phase === phase);
    for (const reading of own.length > 0 || phase === 'as-found' ? own : all) {
      const ideal = idealValue(point, reading.quantity, reading.value);
      const power = convertQuantity(ideal, { from: reading.quantity, to: 'power', load });
      push(afterInterruption, point.id, { reading, power });
    }
  }
  return { phase, rows, afterInterruption };
}

function monitorFindings(
  plan: Plan,
  readings: readonly MonitorReading[],
  phases: readonly Phase[],
): { readonly rows: readonly MonitorFinding[]; readonly extra: readonly MonitorReading[] } {
  readings.forEach((reading, i) => {
    if (reading.set !== 'open') requireNonNegative(reading.set, `monitor[${i}].set`);
    if (reading.displayed !== 'over-range') requireNonNegative(reading.displayed, `monitor[${i}].displayed`);
  });
  const rows = phases.flatMap((phase) =>
    plan.monitor.flatMap((row): MonitorFinding[] => {
      const of = (wanted: Phase): readonly MonitorReading[] =>
        readings.filter((reading) => reading.set === row.set && reading.phase === wanted);
      const own = of(phase);
      const here = own.length > 0 || phase === 'as-found' ? own : of('as-found');
      if (here.length === 0) return [assessMonitorRow(plan, row, phase, undefined)];
      return here.map((reading) => assessMonitorRow(plan, row, phase, reading));
    }),
  );
  const extra = readings.filter((reading) => !plan.monitor.some((row) => row.set === reading.set));
  return { rows, extra };
}

function findingWarnings(
  plan: Plan,
  extra: readonly Reading[],
  extraMonitor: readonly MonitorReading[],
  extraChallenges: readonly ChallengeReading[],
  interrupted: ReadonlyMap<string, readonly Reading[]>,
): readonly Warning[] {
  const warnings: Warning[] = [];
  for (const reading of extra) {
    // A leakage of an isolated output says nothing while it does not say of which electrode.
    const of = plan.leakage.filter(({ test }) => `leakage/${test}` === reading.point).map(({ id }) => id);
    const hint = of.length === 0 ? '' : ` It is one of these, and must say which: ${of.join(', ')}.`;
    warnings.push({
      code: 'reading-extra',
      message: `A reading names point ${reading.point}, which the plan does not have.${hint}`,
    });
  }
  for (const reading of extraMonitor) {
    const set = reading.set === 'open' ? 'an open circuit' : `${reading.set} ohm`;
    warnings.push({
      code: 'reading-extra',
      message: `A monitor reading is for ${set}, which the plan does not ask for.`,
    });
  }
  for (const { challenge } of extraChallenges) {
    warnings.push({
      code: 'reading-extra',
      message: `What was written down for challenge ${challenge} of the monitor has no place: the plan has no such challenge, or a sweep lacks the resistance.`,
    });
  }
  for (const id of interrupted.keys()) {
    const asked = plan.rules.some((rule) => rule.rule === 'supply-interruption' && rule.points.includes(id));
    if (!asked) {
      warnings.push({
        code: 'reading-extra',
        message: `A reading after an interruption of the supply was given at ${id}, where no rule asks for it.`,
      });
    }
  }
  return warnings;
}

/** Finds a point by its identifier, or by its number in the plan. */
function pointFinder(plan: Plan): (reference: string) => PlanPoint | undefined {
  const byId = new Map(plan.points.map((point) => [point.id, point]));
  const byNumber = new Map(plan.points.map((point) => [String(point.number), point]));
  return (reference) => byId.get(reference) ?? byNumber.get(reference);
}

function checkReading(reading: Reading): void {
  requireChoice(reading.phase, 'phase', ['as-found', 'as-left']);
  requireChoice(reading.quantity, 'quantity', ['power', 'current', 'voltage']);
  requireNonNegative(reading.value, 'value');
  if (reading.uncertainty !== undefined) {
    requireNonNegative(reading.uncertainty.standardUncertainty, 'uncertainty.standardUncertainty');
  }
  if (reading.display !== undefined) requireNonNegative(reading.display.value, 'display.value');
  if (reading.peakVoltage !== undefined) requireNonNegative(reading.peakVoltage, 'peakVoltage');
  requireResult(reading.value ** 2, 'value');
}

function push<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list === undefined) map.set(key, [value]);
  else list.push(value);
}
