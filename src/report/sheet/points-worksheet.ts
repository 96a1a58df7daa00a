import type { Plan, PlanPoint } from '../../procedure/index.js';
import { blank, textCell } from './cells.js';
import { pointGroups } from './point-groups.js';
import { pointNotes, warningNotes } from './point-notes.js';
import { type PointNumbers, pointNumbers } from './point-numbers.js';
import type { Cell, Column, Row, Section } from './sheet.js';
import { workingId } from './working.js';

/** The points in the order of work, with room for readings. */
export function pointsWorksheet(plan: Plan): Section {
  const numbers = pointNumbers(plan);
  const list = plan.points.map((point) => ({ point, rows: [rowOf(point, numbers)] }));
  return {
    id: 'points',
    heading: 'Points',
    newPage: true,
    blocks: [
      {
        kind: 'table',
        table: {
          id: 'points',
          caption: 'Points in the order of work; values are rms',
          columns: columnsOf(numbers),
          groups: pointGroups(list, numbers.loadUnit),
        },
      },
      {
        kind: 'paragraph',
        tone: 'small',
        text: 'Limits are in the quantity that the instrument reads. A reading equal to a limit is inside. Where a row says "Accept", only a reading inside those limits passes. "Display" is what the generator itself shows.',
      },
    ],
  };
}

function columnsOf(numbers: PointNumbers): readonly Column[] {
  const unit = numbers.columnUnit === undefined ? {} : { unit: numbers.columnUnit.symbol };
  return [
    ...identityColumns(numbers),
    { id: 'power', title: 'Expected power', short: 'Power', unit: numbers.powerUnit.symbol, align: 'right' },
    { id: 'expected', title: 'Expected', short: 'Expect', ...unit, align: 'right' },
    { id: 'lower', title: 'Lower limit', short: 'Lower', ...unit, align: 'right' },
    { id: 'upper', title: 'Upper limit', short: 'Upper', ...unit, align: 'right' },
    { id: 'found', title: 'As found', ...unit, align: 'right' },
    { id: 'display', title: 'Display', align: 'right' },
    { id: 'left', title: 'As left', ...unit, align: 'right' },
  ];
}

/** Columns that name a point: on the worksheet and on the record. */
export function identityColumns(numbers: PointNumbers): readonly Column[] {
  return [
    { id: 'number', title: 'No.', align: 'right' },
    { id: 'output', title: 'Output', align: 'left' },
    { id: 'setting', title: 'Setting', align: 'right' },
    { id: 'load', title: 'Load', unit: numbers.loadUnit.symbol, align: 'right', inHeading: true },
  ];
}

/** Cells of the columns that name a point. */
export function identityCells(point: PlanPoint, numbers: PointNumbers): readonly Cell[] {
  return [
    { kind: 'number', digits: String(point.number), working: workingId(point.number) },
    textCell(point.outputName),
    textCell(point.settingText),
    numbers.load(point),
  ];
}

function rowOf(point: PlanPoint, numbers: PointNumbers): Row {
  const room: Cell = point.feasible ? blank : { kind: 'text', text: '—' };
  return {
    cells: [
      ...identityCells(point, numbers),
      numbers.power(point),
      numbers.expected(point),
      numbers.limit(point, 'lower'),
      numbers.limit(point, 'upper'),
      room,
      room,
      room,
    ],
    notes: [...feasibilityNotes(point), ...pointNotes(point), ...warningNotes(point.warnings)],
  };
}

/** A point that must not be activated says so, also where no warning of the plan does. */
export function feasibilityNotes(point: PlanPoint): Row['notes'] {
  if (point.feasible || point.warnings.some((warning) => warning.message.startsWith('Do not activate'))) return [];
  const failed = point.feasibility.filter((check) => !check.ok).map((check) => check.message);
  const because = failed.length === 0 ? '' : ` ${failed.join('; ')}.`;
  return [{ tone: 'attention', text: `Do not activate as planned.${because}` }];
}
