import type {
  ChallengeFinding,
  LeakageRow,
  MonitorFinding,
  MonitorReading,
  PlanLeakage,
  PlanPoint,
  PointFinding,
  Reading,
  RuleFinding,
  TripFinding,
  VerificationRecord,
} from '../procedure/index.js';
import { type CsvCell, type CsvOptions, csvText } from './csv/csv-text.js';
import {
  acceptanceNumber,
  asciiUnit,
  csvUnits,
  limitNumber,
  numberIn,
  plainUnit,
  roundedIn,
} from './csv/point-values.js';
import { type PrintUnit, unitFor } from './numbers/print-unit.js';
import { challengesMadeAgain, challengesRead, tripsRead } from './sheet/challenge-tables.js';
import { measuredFromText } from './sheet/measured-from-text.js';
import { monitorRowsRead } from './sheet/monitor-rows.js';
import { pointFinder } from './sheet/point-finder.js';

/** One row of the table: members are named as the columns are. */
type CsvRow = Readonly<Partial<Record<ColumnName, CsvCell>>>;

const columnNames = [
  'kind',
  'number',
  'point',
  'output',
  'connection',
  'measured from',
  'setting',
  'wanted load [ohm]',
  'load on the bench',
  'load [ohm]',
  'set [ohm]',
  'rule',
  'clause',
  'phase',
  'quantity',
  'unit',
  'expected',
  'lower limit',
  'upper limit',
  'reading',
  'margin [%]',
  'expanded uncertainty',
  'accept from',
  'accept to',
  'probability of conforming [%]',
  'verdict',
  'verdict without guard band',
  'reason',
  'message',
  'warnings',
  'power [W]',
  'display',
  'display unit',
  'display difference [%]',
  'display verdict',
  'peak voltage [V]',
  'response time [s]',
  'alarm reason',
  'expected alarm reason',
  'after interruption',
  'mode unchanged',
  'note',
  'read by',
  'read on',
] as const;

type ColumnName = (typeof columnNames)[number];

/**
 * A record as CSV, a row for each reading and for each point without one. The column `kind` tells readings of points,
 * readings after an interruption of the supply, resistances, challenges, trip points and traces of the monitor, HF leakage, rules of the standard and readings that the
 * plan does not have apart. `expected`, limits and `reading` are in the unit of the row.
 *
 * Numbers are numbers; text that a spreadsheet would run as a formula gets an apostrophe.
 *
 * @param record A record of `makeRecord`
 * @param options Byte-order mark
 * @returns CSV with a header, lines ended by CRLF
 */
export function recordCsv(record: VerificationRecord, options: CsvOptions = {}): string {
  const { plan, readings, findings } = record;
  const units = csvUnits(plan);
  const find = pointFinder(plan);
  const interrupted = readings.readings.filter((reading) => reading.afterInterruption === true && find(reading.point));
  const again = challengesMadeAgain(readings);
  const rows: CsvRow[] = [
    ...findings.points.map((finding) => pointRow(finding, find(finding.point), units(finding.quantity))),
    ...challengesRead(findings.monitorChallenges, again).map((finding) => challengeRow(finding)),
    ...tripsRead(findings.monitorTrips, again.size > 0).flatMap(({ rows }) => rows.map((row) => tripRow(row))),
    ...findings.monitorTraces.flatMap(({ number, rows }) =>
      rows.map((row) => ({ ...tripRow(row), kind: 'monitor trace', number })),
    ),
    ...findings.leakage.map((finding) => leakageRow(finding, plan.leakage)),
    ...interrupted.map((reading) => readingRow('after interruption', reading, find(reading.point))),
    ...findings.rules.map((finding) => ruleRow(finding)),
    ...monitorRowsRead(findings.monitor, readings.monitor ?? []).map((finding) => monitorRow(finding)),
    ...findings.extra.map((reading) => readingRow('extra', reading, undefined)),
    ...findings.extraMonitor.map((reading) => extraMonitorRow(reading)),
  ];
  const read: CsvRow = { 'read by': readings.by, 'read on': readings.date };
  return csvText(
    columnNames,
    rows.map((row) => columnNames.map((name) => ({ ...row, ...read })[name])),
    options,
  );
}

function pointRow(finding: PointFinding, point: PlanPoint | undefined, unit: PrintUnit): CsvRow {
  const { reading, display } = finding;
  const warnings = [...(point?.warnings ?? []), ...finding.warnings].map((warning) => warning.message);
  const shown = display === undefined ? undefined : plainUnit(display.quantity);
  return {
    ...place(point),
    ...(reading === undefined ? {} : observed(reading)),
    kind: 'point',
    number: finding.number,
    point: finding.point,
    phase: finding.phase,
    quantity: finding.quantity,
    unit: asciiUnit(unit),
    expected: roundedIn(finding.nominal, unit),
    'lower limit': point === undefined ? numberIn(finding.limits.lower, unit) : limitNumber(point, 'lower', unit),
    'upper limit': point === undefined ? numberIn(finding.limits.upper, unit) : limitNumber(point, 'upper', unit),
    reading: numberIn(finding.value, unit),
    'margin [%]': percent(finding.margin),
    'expanded uncertainty': roundedIn(finding.expanded?.expandedUncertainty, unit),
    'accept from': point && acceptanceNumber(point, 'lower', unit),
    'accept to': point && acceptanceNumber(point, 'upper', unit),
    'probability of conforming [%]': percent(finding.conformance?.conforming),
    verdict: finding.verdict,
    'verdict without guard band': finding.simpleVerdict,
    reason: finding.reason,
    message: finding.message,
    warnings: warnings.join(' '),
    'power [W]': roundedIn(finding.power, plainUnit('power')),
    display: shown === undefined ? undefined : numberIn(display?.displayed, shown),
    'display unit': shown === undefined ? undefined : asciiUnit(shown),
    'display difference [%]': percent(display?.relative),
    'display verdict': display?.verdict,
  };
}

function challengeRow(finding: ChallengeFinding): CsvRow {
  const { challenge, number, set, phase, alarm, responseTime, response, verdict, message, note, warnings } = finding;
  return {
    kind: 'monitor challenge',
    number,
    point: challenge,
    'set [ohm]': set,
    phase,
    reading: alarm === undefined ? undefined : alarm ? 'alarm' : 'no alarm',
    'response time [s]': responseTime,
    'margin [%]': percent(response?.margin),
    'accept to': response?.acceptance?.upper,
    'probability of conforming [%]': percent(response?.conformance?.conforming),
    verdict,
    'verdict without guard band': response?.simpleVerdict,
    reason: response?.reason,
    message,
    warnings: warnings?.map((warning) => warning.message).join(' '),
    'alarm reason': finding.alarmReason,
    'expected alarm reason': finding.expectedReason,
    note,
  };
}

function tripRow(finding: TripFinding): CsvRow {
  const { what, unit, value, expanded, limits, acceptance, margin, conformance, phase, message } = finding;
  return {
    kind: 'monitor trip',
    point: what,
    phase,
    quantity: unit === 's' ? 'time' : 'resistance',
    unit,
    'lower limit': limits.lower,
    'upper limit': limits.upper,
    reading: digits(value, 12),
    'margin [%]': percent(margin),
    'expanded uncertainty': digits(expanded?.expandedUncertainty, 6),
    'accept from': acceptance?.lower,
    'accept to': acceptance?.upper,
    'probability of conforming [%]': percent(conformance?.conforming),
    verdict: finding.verdict,
    'verdict without guard band': finding.simpleVerdict,
    reason: finding.reason,
    message,
    'alarm reason': finding.alarmReason,
    'expected alarm reason': finding.expectedReason,
  };
}

function leakageRow(finding: LeakageRow, planned: readonly PlanLeakage[]): CsvRow {
  const { point, number, phase, reading, value, limits, margin, expanded, conformance } = finding;
  const of = planned.find(({ id }) => id === point);
  const unit = unitFor('current', [limits.upper ?? 0]);
  return {
    ...(reading === undefined ? {} : observed(reading)),
    kind: 'leakage',
    number,
    point,
    output: of?.outputName,
    connection: of?.connection,
    'measured from': of && measuredFromText(of),
    setting: of?.settingText,
    'wanted load [ohm]': of?.limit.measuringResistance,
    'load on the bench': of?.resistor?.id,
    'load [ohm]': of?.resistor?.resistance,
    phase,
    quantity: 'current',
    unit: asciiUnit(unit),
    'upper limit': roundedIn(limits.upper, unit),
    reading: roundedIn(value, unit),
    'margin [%]': percent(margin),
    'expanded uncertainty': roundedIn(expanded?.expandedUncertainty, unit),
    'accept to': roundedIn(of?.acceptance?.upper, unit),
    'probability of conforming [%]': percent(conformance?.conforming),
    verdict: finding.verdict,
    'verdict without guard band': finding.simpleVerdict,
    reason: finding.reason,
    message: finding.message,
    warnings: [...(of?.warnings ?? []), ...finding.warnings].map((warning) => warning.message).join(' '),
  };
}

/** A reading that no limit is held against. */
function readingRow(kind: string, reading: Reading, point: PlanPoint | undefined): CsvRow {
  const unit = plainUnit(reading.quantity);
  const shown = reading.display === undefined ? undefined : plainUnit(reading.display.quantity);
  return {
    ...place(point),
    ...observed(reading),
    kind,
    point: point?.id ?? reading.point,
    phase: reading.phase,
    quantity: reading.quantity,
    unit: asciiUnit(unit),
    reading: numberIn(reading.value, unit),
    display: shown === undefined ? undefined : numberIn(reading.display?.value, shown),
    'display unit': shown === undefined ? undefined : asciiUnit(shown),
  };
}

function place(point: PlanPoint | undefined): CsvRow {
  return {
    number: point?.number,
    output: point?.outputName,
    connection: point?.connection,
    setting: point?.settingText,
    'wanted load [ohm]': point?.wantedLoad,
    'load on the bench': point?.load?.id,
    'load [ohm]': point?.load?.resistance,
  };
}

function observed(reading: Reading): CsvRow {
  return {
    'peak voltage [V]': reading.peakVoltage,
    'after interruption': flag(reading.afterInterruption),
    'mode unchanged': flag(reading.modeUnchanged),
    note: reading.note,
  };
}

function ruleRow({ rule, outputName, clause, phase, verdict, message, points }: RuleFinding): CsvRow {
  return { kind: 'rule', point: points.join(' '), output: outputName, rule, clause, phase, verdict, message };
}

function monitorRow(finding: MonitorFinding): CsvRow {
  const { number, set, limits, phase, displayed, acceptance, margin, expanded, conformance, message } = finding;
  const ohms = plainUnit('resistance');
  return {
    kind: 'monitor',
    number,
    'set [ohm]': set,
    phase,
    quantity: 'resistance',
    unit: asciiUnit(ohms),
    'lower limit': numberIn(limits.lower, ohms),
    'upper limit': numberIn(limits.upper, ohms),
    reading: displayed,
    'margin [%]': percent(margin),
    'expanded uncertainty': roundedIn(expanded?.expandedUncertainty, ohms),
    'accept from': numberIn(acceptance?.lower, ohms),
    'accept to': numberIn(acceptance?.upper, ohms),
    'probability of conforming [%]': percent(conformance?.conforming),
    verdict: finding.verdict,
    'verdict without guard band': finding.simpleVerdict,
    reason: finding.reason,
    message,
  };
}

function extraMonitorRow({ set, displayed, phase }: MonitorReading): CsvRow {
  return { kind: 'extra monitor', 'set [ohm]': set, phase, quantity: 'resistance', unit: 'ohm', reading: displayed };
}

function percent(fraction: number | undefined): number | undefined {
  return fraction === undefined ? undefined : Number((fraction * 100).toPrecision(12));
}

function digits(value: number | undefined, count: number): number | undefined {
  return value === undefined ? undefined : Number(value.toPrecision(count));
}

function flag(value: boolean | undefined): string | undefined {
  return value === undefined ? undefined : value ? 'yes' : 'no';
}
