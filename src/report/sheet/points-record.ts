import type { Plan, PlanPoint, PointFinding } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { marginText } from '../numbers/percent-text.js';
import { valueText } from '../numbers/value-text.js';
import { none, stateCell } from './cells.js';
import { pointGroups } from './point-groups.js';
import { warningNotes } from './point-notes.js';
import { type PointNumbers, pointNumbers } from './point-numbers.js';
import { identityCells, identityColumns } from './points-worksheet.js';
import type { Cell, Column, Row, RowNote, Section } from './sheet.js';
import { shownVerdict } from './shown-verdict.js';
import { verdictCell } from './verdict-word.js';

/** The points in the order of work, with readings, margins and verdicts. */
export function pointsRecord(plan: Plan, findings: readonly PointFinding[]): Section {
  const numbers = pointNumbers(plan);
  const withState = findings.some((finding) => finding.phase === 'as-left');
  const withUncertainty = findings.some((finding) => finding.expanded !== undefined);
  const byPoint = new Map<string, PointFinding[]>();
  for (const finding of findings) {
    const list = byPoint.get(finding.point);
    if (list === undefined) byPoint.set(finding.point, [finding]);
    else list.push(finding);
  }
  const list = plan.points.map((point) => ({
    point,
    rows: (byPoint.get(point.id) ?? []).map((finding) => rowOf(finding, point, numbers, withState, withUncertainty)),
  }));
  return {
    id: 'points',
    heading: 'Points',
    blocks: [
      {
        kind: 'table',
        table: {
          id: 'points',
          caption: `Points in the order of work; values are rms${withState ? '' : '; all readings as found'}`,
          columns: columnsOf(numbers, withState, withUncertainty),
          groups: pointGroups(
            list.filter(({ rows }) => rows.length > 0),
            numbers.loadUnit,
          ),
        },
      },
      {
        kind: 'paragraph',
        tone: 'small',
        text: `Margin: 0 % at the expected value, −100 % at the lower limit, +100 % at the upper limit, each side on its own scale.${withUncertainty ? ' U is the expanded uncertainty of the reading at 95 %.' : ''}`,
      },
    ],
  };
}

function columnsOf(numbers: PointNumbers, withState: boolean, withUncertainty: boolean): readonly Column[] {
  const unit = numbers.columnUnit === undefined ? {} : { unit: numbers.columnUnit.symbol };
  return [
    ...identityColumns(numbers),
    { id: 'expected', title: 'Expected', short: 'Expect', ...unit, align: 'right' },
    { id: 'lower', title: 'Lower limit', short: 'Lower', ...unit, align: 'right' },
    { id: 'upper', title: 'Upper limit', short: 'Upper', ...unit, align: 'right' },
    ...(withState ? [{ id: 'state', title: 'State', align: 'left' } as const] : []),
    { id: 'reading', title: 'Reading', short: 'Read', ...unit, align: 'right' },
    ...(withUncertainty ? [{ id: 'uncertainty', title: 'U', ...unit, align: 'right' } as const] : []),
    { id: 'margin', title: 'Margin', align: 'right' },
    { id: 'verdict', title: 'Verdict', align: 'left' },
  ];
}

function rowOf(
  finding: PointFinding,
  point: PlanPoint,
  numbers: PointNumbers,
  withState: boolean,
  withUncertainty: boolean,
): Row {
  const { margin, verdict, reason } = finding;
  const shown = shownVerdict(verdict, reason);
  const marginCell: Cell =
    margin === undefined ? none : { kind: 'margin', text: marginText(margin), margin, verdict: shown };
  return {
    cells: [
      ...identityCells(point, numbers),
      numbers.expected(point),
      numbers.limit(point, 'lower'),
      numbers.limit(point, 'upper'),
      ...(withState ? [stateCell(finding.phase)] : []),
      numbers.reading(finding, point),
      ...(withUncertainty ? [numbers.uncertainty(point, finding.expanded?.expandedUncertainty)] : []),
      marginCell,
      verdictCell(verdict, reason),
    ],
    notes: [...reasonNote(finding), ...warningNotes([...point.warnings, ...finding.warnings]), ...readerNote(finding)],
  };
}

/** The reason in its own words, except where the row says it all. */
function reasonNote({ message, verdict, reason }: PointFinding): readonly RowNote[] {
  if (reason === 'inside') return [];
  return [{ tone: verdict === 'pass' ? 'plain' : 'attention', text: plainText(message) }];
}

/** What was read or written beside the reading. */
function readerNote({ reading }: PointFinding): readonly RowNote[] {
  const notes: string[] = [];
  if (reading?.peakVoltage !== undefined)
    notes.push(`Peak voltage read: ${valueText(reading.peakVoltage, 'voltage')}.`);
  if (reading?.note !== undefined) notes.push(plainText(`Note: “${reading.note}”`));
  return notes.map((text) => ({ tone: 'plain', text }));
}
