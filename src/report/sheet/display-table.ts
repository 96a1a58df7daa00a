import type { Plan, PointFinding } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { signedPercent } from '../numbers/percent-text.js';
import { type PrintUnit, unitFor } from '../numbers/print-unit.js';
import { significantDigits } from '../numbers/value-text.js';
import { none, numberCell, stateCell, textCell } from './cells.js';
import type { Cell, Section } from './sheet.js';
import { verdictCell } from './verdict-word.js';
import { workingId } from './working.js';

/** The generator's own display against the instrument, where it was read. */
export function displayRecord(plan: Plan, findings: readonly PointFinding[]): readonly Section[] {
  const points = new Map(plan.points.map((point) => [point.id, point]));
  const rows = findings.flatMap((finding) => {
    const { display } = finding;
    if (display === undefined) return [];
    const unit = unitFor(display.quantity, [display.measured, display.displayed]);
    const point = points.get(finding.point);
    return [
      {
        cells: [
          { kind: 'number', digits: String(finding.number), working: workingId(finding.number) } as const,
          textCell(point?.outputName ?? finding.point),
          textCell(point?.settingText ?? ''),
          stateCell(finding.phase),
          valueCell(display.displayed, unit),
          valueCell(display.measured, unit),
          display.relative === undefined
            ? none
            : ({ kind: 'number', digits: signedPercent(display.relative) } as const),
          display.limits === undefined
            ? ({
                kind: 'verdict',
                verdict: display.verdict,
                word: 'not judged',
                reason: 'no tolerance stated',
              } as const)
            : verdictCell(display.verdict),
        ],
        notes:
          display.verdict === 'pass' || display.limits === undefined
            ? []
            : [{ tone: 'plain' as const, text: plainText(display.message) }],
      },
    ];
  });
  if (rows.length === 0) return [];
  const caption = 'What the generator displayed against what the instrument showed';
  return [
    {
      id: 'display',
      heading: 'Display of the generator',
      blocks: [
        {
          kind: 'table',
          table: {
            id: 'display',
            caption,
            columns: [
              { id: 'number', title: 'No.', align: 'right' },
              { id: 'output', title: 'Output', align: 'left' },
              { id: 'setting', title: 'Setting', align: 'right' },
              { id: 'state', title: 'State', align: 'left' },
              { id: 'displayed', title: 'Displayed', align: 'right' },
              { id: 'measured', title: 'Instrument', align: 'right' },
              { id: 'difference', title: 'Difference', align: 'right' },
              { id: 'verdict', title: 'Verdict', align: 'left' },
            ],
            groups: [{ headings: [], notes: [], rows }],
          },
        },
      ],
    },
  ];
}

function valueCell(value: number, unit: PrintUnit): Cell {
  return numberCell(significantDigits(value, unit, 4), unit, undefined);
}
