import type { Band } from '../../band/index.js';
import { decisionRuleText, type Plan, probabilityText, type TripFinding } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { unitFor } from '../numbers/print-unit.js';
import { significantDigits } from '../numbers/value-text.js';
import { isAnyReason, reasonCell, reasonColumn } from './alarm-reason-cell.js';
import { none, stateCell, textCell } from './cells.js';
import type { Block, Cell, Column, Row } from './sheet.js';
import { verdictCell } from './verdict-word.js';

/** What was found, against its limits and, where a guard band moves them, what is accepted. */
export function tripTable(id: string, caption: string, rows: readonly TripFinding[]): Block {
  const isGuarded = rows.some(({ acceptance, limits }) => acceptance !== undefined && !isSame(acceptance, limits));
  const isRated = rows.some(({ conformance }) => conformance !== undefined);
  const hasReasons = isAnyReason(rows);
  // A time has no lower limit.
  const hasLower = rows.some(({ limits }) => limits.lower !== undefined);
  const columns: Column[] = [
    { id: 'what', title: 'What', align: 'left' },
    { id: 'value', title: 'Found', align: 'right' },
    { id: 'uncertainty', title: 'U', align: 'right' },
    ...(hasLower ? [lowerColumn] : []),
    { id: 'upper', title: 'Upper limit', short: 'Upper', align: 'right' },
    ...(isGuarded && hasLower ? [acceptFromColumn] : []),
    ...(isGuarded ? [acceptToColumn] : []),
    ...(isRated ? [{ id: 'probability', title: 'Conforms', align: 'right' } as const] : []),
    ...(hasReasons ? [reasonColumn] : []),
    { id: 'state', title: 'State', align: 'left' },
    { id: 'verdict', title: 'Verdict', align: 'left' },
  ];
  const made = rows.map((row) => tripRow(row, { isGuarded, isRated, hasReasons, hasLower }));
  return { kind: 'table', table: { id, caption, columns, groups: [{ headings: [], notes: [], rows: made }] } };
}

const lowerColumn: Column = { id: 'lower', title: 'Lower limit', short: 'Lower', align: 'right' };
const acceptFromColumn: Column = { id: 'accept-from', title: 'Accept from', short: 'From', align: 'right' };
const acceptToColumn: Column = { id: 'accept-to', title: 'Accept to', short: 'To', align: 'right' };

function isSame(acceptance: Band | null, { lower, upper }: Band): boolean {
  return acceptance !== null && acceptance.lower === lower && acceptance.upper === upper;
}

/** Columns that only some tables have. */
interface Extras {
  readonly isGuarded: boolean;
  readonly isRated: boolean;
  readonly hasReasons: boolean;
  readonly hasLower: boolean;
}

function tripRow(finding: TripFinding, { isGuarded, isRated, hasReasons, hasLower }: Extras): Row {
  const { what, unit, value, expanded, limits, acceptance, conformance, phase, verdict, reason } = finding;
  // One unit for the row, so that U stands beside its value in the same.
  const greatest = Math.max(0, ...[value, limits.lower, limits.upper].filter((number) => number !== undefined));
  const printed = unitFor(unit === 's' ? 'time' : 'resistance', [greatest]);
  const text = (number: number | undefined, digits = 4): Cell =>
    number === undefined ? none : textCell(`${significantDigits(number, printed, digits)} ${printed.symbol}`);
  const accepted = (side: 'lower' | 'upper'): Cell =>
    acceptance === null ? textCell('none') : text(acceptance?.[side], 6);
  return {
    cells: [
      textCell(what),
      text(value),
      text(expanded?.expandedUncertainty, 2),
      ...(hasLower ? [text(limits.lower)] : []),
      text(limits.upper),
      ...(isGuarded && hasLower ? [accepted('lower')] : []),
      ...(isGuarded ? [accepted('upper')] : []),
      ...(isRated ? [conformance === undefined ? none : textCell(probabilityText(conformance))] : []),
      ...(hasReasons ? [reasonCell(finding)] : []),
      stateCell(phase),
      finding.isStated ? verdictCell(verdict, reason) : none,
    ],
    notes:
      reason === 'inside' || !finding.isStated
        ? []
        : [{ tone: verdict === 'fail' ? 'attention' : 'plain', text: plainText(finding.message) }],
  };
}

/** The rule by which trip points and times are judged, in a sentence. */
export function ruleText({ options }: Plan): Block {
  const text = `Decision rule for trip points and times: ${decisionRuleText(options.decisionRule)}. U is at 95 %.`;
  return { kind: 'paragraph', text: plainText(text) };
}
