import type { LeakageRow, Plan, PlanLeakage } from '../../procedure/index.js';
import { roundUncertainty } from '../../uncertainty/index.js';
import { plainText } from '../escape/plain-text.js';
import { fixedText } from '../numbers/fixed-text.js';
import { marginText } from '../numbers/percent-text.js';
import { unitFor } from '../numbers/print-unit.js';
import { valueText } from '../numbers/value-text.js';
import { blank, none, stateCell, textCell } from './cells.js';
import { liftNotes } from './lift-notes.js';
import { measuredFromText } from './measured-from-text.js';
import { warningNotes } from './point-notes.js';
import type { Cell, Column, Group, Row, RowNote, Section } from './sheet.js';
import { shownVerdict } from './shown-verdict.js';
import { verdictCell } from './verdict-word.js';

/** Measurements of HF leakage, with room for what is read. */
export function leakageWorksheet(plan: Plan): readonly Section[] {
  if (plan.leakage.length === 0) return [];
  const columns: Column[] = [
    ...identity,
    { id: 'highest', title: 'Highest reading', short: 'Highest', align: 'right' },
    { id: 'found', title: 'As found', align: 'right' },
    { id: 'left', title: 'As left', align: 'right' },
  ];
  const rows = plan.leakage.map((planned) => {
    const room = planned.range === undefined ? textCell('—') : blank;
    const row: Row = {
      cells: [...identityCells(planned), readingCell(planned.highestReading, planned), room, room],
      notes: [...whatToDo(planned), ...warningNotes(planned.warnings)],
    };
    return { planned, row };
  });
  return [section(columns, rows)];
}

/** Measurements of HF leakage, judged. */
export function leakageRecord(plan: Plan, findings: readonly LeakageRow[]): readonly Section[] {
  if (findings.length === 0) return [];
  const columns: Column[] = [
    ...identity,
    { id: 'limit', title: 'Limit', align: 'right' },
    { id: 'state', title: 'State', align: 'left' },
    { id: 'leakage', title: 'Leakage', align: 'right' },
    { id: 'uncertainty', title: 'U', align: 'right' },
    { id: 'margin', title: 'Of limit', align: 'right' },
    { id: 'verdict', title: 'Verdict', align: 'left' },
  ];
  const rows = findings.flatMap((finding): PlannedRow[] => {
    const planned = plan.leakage.find(({ id }) => id === finding.point);
    return planned === undefined ? [] : [{ planned, row: recordRow(finding, planned) }];
  });
  return [section(columns, rows)];
}

/** A row, and what was planned of it. */
interface PlannedRow {
  readonly planned: PlanLeakage;
  readonly row: Row;
}

/** Rows under their test, with the remarks that they share above them. */
function groupsOf(rows: readonly PlannedRow[]): readonly Group[] {
  const tests = new Map<string, Row[]>();
  for (const { planned, row } of rows) {
    const name = planned.test ?? planned.id;
    tests.set(name, [...(tests.get(name) ?? []), row]);
  }
  return [...tests].map(([name, of]) => {
    const planned = rows.find(({ planned: { test, id } }) => (test ?? id) === name)?.planned;
    return liftNotes(planned === undefined ? [] : [{ level: 2, text: headingOf(planned) }], of);
  });
}

/** Output, setting and measuring resistor of a test. */
function headingOf({ outputName, settingText, resistor, limit }: PlanLeakage): string {
  const ohms = valueText(resistor?.resistance ?? limit.measuringResistance, 'resistance', 6);
  const name = resistor === undefined ? 'none on the bench for' : `${resistor.id}:`;
  return plainText(`${outputName}, ${settingText}; measuring resistor ${name} ${ohms}`);
}

const identity: readonly Column[] = [
  { id: 'number', title: 'No.', align: 'right' },
  { id: 'from', title: 'Measured from', short: 'From', align: 'left' },
];

function identityCells(planned: PlanLeakage): readonly Cell[] {
  const from = measuredFromText(planned);
  return [
    { kind: 'number', digits: String(planned.number), working: `working-leakage-${planned.number}` },
    from === undefined ? none : textCell(from),
  ];
}

function recordRow(finding: LeakageRow, planned: PlanLeakage): Row {
  const { value, margin, expanded, verdict, reason, message, warnings, reading } = finding;
  const shown = shownVerdict(verdict, reason);
  const notes: RowNote[] = [];
  if (reason !== 'inside') notes.push({ tone: verdict === 'pass' ? 'plain' : 'attention', text: plainText(message) });
  const contact = finding.overContactGuidance;
  if (verdict === 'pass' && contact !== undefined && contact > 1) {
    const times = Number(contact.toPrecision(2));
    notes.push({ tone: 'plain', text: `A pass, and still ${times} times the guidance for contact: do not touch.` });
  }
  if (reading?.note !== undefined) notes.push({ tone: 'plain', text: plainText(`Note: “${reading.note}”`) });
  return {
    cells: [
      ...identityCells(planned),
      textCell(valueText(planned.limit.current, 'current')),
      stateCell(finding.phase),
      value === undefined ? none : textCell(valueText(value, 'current')),
      uncertaintyCell(value, expanded?.expandedUncertainty),
      margin === undefined ? none : { kind: 'margin', text: marginText(margin), margin, verdict: shown },
      verdictCell(verdict, reason),
    ],
    notes: [
      { tone: 'plain', text: plainText(`${planned.connection}; measured at the ${planned.measuredAt}.`) },
      ...notes,
      ...warningNotes([...planned.warnings, ...warnings]),
    ],
  };
}

function uncertaintyCell(value: number | undefined, expanded: number | undefined): Cell {
  if (value === undefined || expanded === undefined) return none;
  if (!(expanded > 0)) return textCell('0 A');
  const { uncertainty, decimals } = roundUncertainty(value, expanded);
  const unit = unitFor('current', [uncertainty]);
  return textCell(`${fixedText(uncertainty, unit, Math.max(0, decimals - unit.shift))} ${unit.symbol}`);
}

function readingCell(value: number | undefined, { reads }: PlanLeakage): Cell {
  return value === undefined ? none : textCell(valueText(value, reads, 6));
}

/** Connection, arrangement, limit with its source, range and what is accepted. */
function whatToDo(planned: PlanLeakage): readonly RowNote[] {
  const { connection, instruction, measuredAt, limit, range, reads, highestReading, highestAccepted } = planned;
  const { statedIn, clause, edition, standing } = limit.basis;
  const of = [clause, edition === undefined ? undefined : `editions ${edition}`, standing].filter((part) => part);
  const basis = `${statedIn}${of.length === 0 ? '' : ` (${of.join(', ')})`}`;
  const at = `${valueText(limit.current, 'current')} rms in ${valueText(limit.measuringResistance, 'resistance')}`;
  const texts = [
    `Connection: ${connection}. Measured at the ${measuredAt}.`,
    instruction,
    `Limit ${at}, ${basis}.`,
    ...(range === undefined ? [] : [`Range ${valueText(range.maximum, reads)}.`]),
    ...(planned.atLimit === undefined ? [] : [`U ${valueText(planned.atLimit, 'current', 2)} at the limit.`]),
    ...(planned.acceptance === null ? ['Accept: no reading.'] : []),
    ...(highestAccepted === undefined || highestAccepted === highestReading
      ? []
      : [`Accept to ${valueText(highestAccepted, reads, 6)}.`]),
  ];
  return texts.map((text) => ({ tone: 'plain', text: plainText(text) }));
}

function section(columns: readonly Column[], rows: readonly PlannedRow[]): Section {
  const caption = 'Leakage through the measuring resistor to earth; values are rms';
  return {
    id: 'leakage',
    heading: 'HF leakage',
    blocks: [
      { kind: 'table', table: { id: 'leakage', caption, columns, groups: groupsOf(rows) } },
      {
        kind: 'list',
        tone: 'caution',
        items: [
          'A leakage that passes is still hazardous to touch. Touch nothing while the output is active.',
          'Lay the leads clear of metal and of each other: a lead on a trolley leaks as a fault does.',
        ],
      },
    ],
  };
}
