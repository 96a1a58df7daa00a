import type { Plan, PlanPoint, PointFinding } from '../../procedure/index.js';
import { decisionRuleText, probabilityText } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { none, textCell } from './cells.js';
import { type PointNumbers, pointNumbers } from './point-numbers.js';
import { identityCells, identityColumns } from './points-worksheet.js';
import type { Cell, Column, Row, Section } from './sheet.js';

/** How good the measurement is at each point, and what the rule accepts; on a record with the probability of conforming. */
export function measurementSection(plan: Plan, findings?: readonly PointFinding[]): readonly Section[] {
  const points = plan.points.filter((point) => point.measurement !== undefined);
  if (points.length === 0) return [];
  const numbers = pointNumbers(plan);
  const rows = points.flatMap((point): Row[] => {
    const own = (findings ?? []).filter((finding) => finding.point === point.id && finding.conformance !== undefined);
    if (findings === undefined || own.length === 0) return [rowOf(point, numbers, findings && none)];
    return own.map((finding) => rowOf(point, numbers, probabilityCell(finding)));
  });
  const rule = decisionRuleText(plan.options.decisionRule);
  return [
    {
      id: 'measurement',
      heading: 'Uncertainty and acceptance',
      blocks: [
        { kind: 'paragraph', text: plainText(`Decision rule: ${rule}.`) },
        {
          kind: 'table',
          table: {
            id: 'measurement',
            caption:
              'Expanded uncertainty U at the expected value, test uncertainty ratio, and the limits of acceptance',
            columns: columnsOf(numbers, findings !== undefined),
            groups: [{ headings: [], notes: [], rows }],
          },
        },
        { kind: 'paragraph', tone: 'small', text: explanation(findings !== undefined) },
      ],
    },
  ];
}

function explanation(isRecord: boolean): string {
  const base =
    'U is at 95 %. The test uncertainty ratio is the span of the limits over 2 U. The budget of each point stands with its working.';
  return isRecord
    ? `${base} The probability that a quantity conforms is taken from its reading and the uncertainty alone.`
    : base;
}

function columnsOf(numbers: PointNumbers, isRecord: boolean): readonly Column[] {
  const unit = numbers.columnUnit === undefined ? {} : { unit: numbers.columnUnit.symbol };
  return [
    ...identityColumns(numbers).map((column) => ({ ...column, inHeading: false })),
    { id: 'uncertainty', title: 'U', ...unit, align: 'right' },
    { id: 'relative', title: 'U, relative', short: 'U, %', align: 'right' },
    { id: 'ratio', title: 'Ratio', align: 'right' },
    { id: 'accept-from', title: 'Accept from', short: 'From', ...unit, align: 'right' },
    { id: 'accept-to', title: 'Accept to', short: 'To', ...unit, align: 'right' },
    ...(isRecord
      ? [{ id: 'probability', title: 'Probability that it conforms', short: 'Conforms', align: 'right' } as const]
      : []),
  ];
}

function rowOf(point: PlanPoint, numbers: PointNumbers, probability: Cell | undefined): Row {
  const { measurement, nominal } = point;
  const expanded = measurement?.expanded.expandedUncertainty;
  const ratio = measurement?.testUncertaintyRatio;
  const relative = expanded === undefined || !nominal ? undefined : expanded / nominal;
  return {
    cells: [
      ...identityCells(point, numbers),
      numbers.uncertainty(point, expanded),
      relative === undefined ? none : textCell(`${Number((relative * 100).toPrecision(2))} %`),
      ratio === undefined ? none : { kind: 'number', digits: ratio.toPrecision(2) },
      numbers.acceptance(point, 'lower'),
      numbers.acceptance(point, 'upper'),
      ...(probability === undefined ? [] : [probability]),
    ],
    notes: [],
  };
}

function probabilityCell({ conformance }: PointFinding): Cell {
  return conformance === undefined ? none : textCell(probabilityText(conformance));
}
