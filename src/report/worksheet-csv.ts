import type { Plan, PlanChallenge, PlanLeakage, PlanMonitorRow, PlanPoint } from '../procedure/index.js';
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
import { measuredFromText } from './sheet/measured-from-text.js';

/** A column: what stands in it in the row of a point and in the row of a resistance of the monitor. */
interface WorksheetColumn {
  readonly title: string;
  readonly point?: (point: PlanPoint) => CsvCell;
  readonly monitor?: (row: PlanMonitorRow) => CsvCell;
  readonly challenge?: (row: ChallengeRow) => CsvCell;
  readonly leakage?: (planned: PlanLeakage) => CsvCell;
}

/**
 * The worksheet of a plan as CSV, to be filled in: a row for each point, each leakage, each resistance and each challenge of the monitor, with empty
 * columns for what is read. `readReadingsCsv` of `esu-limits/schema` reads it back; rows without a reading are left out.
 *
 * A bare number in the column `reading` has the unit of its header, where there is one; in rows of the monitor and in
 * the other columns a number is written with its unit. Text that a spreadsheet would run as a formula gets an apostrophe.
 *
 * @param plan A plan of `planVerification`
 * @param options Byte-order mark
 * @returns CSV with a header, lines ended by CRLF
 */
export function worksheetCsv(plan: Plan, options: CsvOptions = {}): string {
  const columns = columnsOf(plan);
  const rows = [
    ...plan.points.map((point) => columns.map((column) => column.point?.(point))),
    ...plan.leakage.map((planned) => columns.map((column) => column.leakage?.(planned))),
    ...plan.monitor.map((row) => columns.map((column) => column.monitor?.(row))),
    ...challengeRows(plan).map((row) => columns.map((column) => column.challenge?.(row))),
  ];
  return csvText(
    columns.map((column) => column.title),
    rows,
    options,
  );
}

function columnsOf(plan: Plan): readonly WorksheetColumn[] {
  const units = csvUnits(plan);
  const [watts, volts, ohms] = [plainUnit('power'), plainUnit('voltage'), plainUnit('resistance')];
  const quantities = [...new Set([...plan.points, ...plan.leakage].map(({ reads }) => reads))];
  const [only] = quantities;
  const readingUnit = only !== undefined && quantities.length === 1 ? ` [${asciiUnit(units(only))}]` : '';
  return [
    {
      title: 'number',
      point: (point) => point.number,
      monitor: (row) => row.number,
      leakage: (planned) => planned.number,
      challenge: ({ challenge }) => challenge.number,
    },
    {
      title: 'point',
      point: (point) => point.id,
      monitor: () => 'monitor',
      leakage: (planned) => planned.id,
      challenge: ({ challenge }) => challenge.id,
    },
    { title: 'output', point: (point) => point.outputName, leakage: (planned) => planned.outputName },
    {
      title: 'connection',
      point: (point) => point.connection,
      monitor: (row) => row.connection,
      leakage: (planned) => planned.connection,
    },
    { title: 'measured from', leakage: measuredFromText },
    { title: 'leads', point: (point) => point.lead },
    { title: 'setting', point: (point) => point.settingText, leakage: (planned) => planned.settingText },
    {
      title: 'wanted load [ohm]',
      point: (point) => point.wantedLoad,
      leakage: (planned) => planned.limit.measuringResistance,
    },
    { title: 'load on the bench', point: (point) => point.load?.id, leakage: (planned) => planned.resistor?.id },
    {
      title: 'load [ohm]',
      point: (point) => point.load?.resistance,
      leakage: (planned) => planned.resistor?.resistance,
    },
    { title: 'expected power [W]', point: (point) => roundedIn(point.expected?.power, watts) },
    { title: 'expected peak voltage [V]', point: (point) => roundedIn(point.expected?.peakVoltage, volts) },
    { title: 'longest activation [s]', point: (point) => point.activation.longest },
    { title: 'pause [s]', point: (point) => point.activation.pause },
    { title: 'feasible', point: (point) => (point.feasible ? 'yes' : 'no') },
    {
      title: 'warnings',
      point: (point) => remarks(plan, point),
      leakage: ({ warnings }) => warnings.map((warning) => warning.message).join(' '),
    },
    {
      title: 'quantity',
      point: (point) => point.reads,
      monitor: () => 'resistance',
      leakage: (planned) => planned.reads,
    },
    {
      title: 'unit',
      point: (point) => asciiUnit(units(point.reads)),
      monitor: () => asciiUnit(ohms),
      leakage: (planned) => asciiUnit(units(planned.reads)),
    },
    { title: 'expected', point: (point) => roundedIn(point.nominal, units(point.reads)) },
    {
      title: 'lower limit',
      point: (point) => limitNumber(point, 'lower', units(point.reads)),
      monitor: (row) => numberIn(row.lower, ohms),
    },
    {
      title: 'upper limit',
      point: (point) => limitNumber(point, 'upper', units(point.reads)),
      monitor: (row) => numberIn(row.upper, ohms),
      leakage: (planned) => numberIn(planned.highestReading, units(planned.reads)),
    },
    {
      title: 'expanded uncertainty',
      point: (point) => roundedIn(point.measurement?.expanded.expandedUncertainty, units(point.reads)),
    },
    { title: 'test uncertainty ratio', point: (point) => ratioOf(point) },
    { title: 'accept from', point: (point) => acceptanceNumber(point, 'lower', units(point.reads)) },
    {
      title: 'accept to',
      point: (point) => acceptanceNumber(point, 'upper', units(point.reads)),
      leakage: (planned) => numberIn(planned.highestAccepted, units(planned.reads)),
    },
    { title: 'set [ohm]', monitor: (row) => row.set, challenge: ({ set }) => set },
    {
      title: 'what to do',
      challenge: ({ challenge }) => challenge.instruction,
      leakage: (planned) => planned.instruction,
    },
    { title: `reading${readingUnit}` },
    { title: 'display' },
    { title: 'peak voltage' },
    { title: 'response time' },
    { title: 'alarm reason' },
    {
      title: 'phase',
      point: () => 'as-found',
      monitor: () => 'as-found',
      leakage: () => 'as-found',
      challenge: () => 'as-found',
    },
    { title: 'after interruption' },
    { title: 'mode unchanged' },
    { title: 'note' },
  ];
}

/** A challenge, or one step of a sweep. */
interface ChallengeRow {
  readonly challenge: PlanChallenge;
  readonly set: number | 'open';
}

function challengeRows(plan: Plan): readonly ChallengeRow[] {
  return (plan.monitorThresholds?.challenges ?? []).flatMap((challenge): ChallengeRow[] =>
    challenge.kind === 'sweep'
      ? challenge.values.map((set) => ({ challenge, set }))
      : [{ challenge, set: challenge.set }],
  );
}

function ratioOf({ measurement }: PlanPoint): number | undefined {
  const ratio = measurement?.testUncertaintyRatio;
  return ratio === undefined ? undefined : Number(ratio.toPrecision(4));
}

/** Warnings of a point, and what the rules of the standard ask for at this point alone. */
function remarks(plan: Plan, point: PlanPoint): string {
  const asked = plan.rules.filter((rule) => rule.points.length === 1 && rule.points[0] === point.id);
  return [...point.warnings.map((warning) => warning.message), ...asked.map((rule) => rule.instruction)].join(' ');
}
