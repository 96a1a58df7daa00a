import type { MonitorDisplayHint, MonitorFinding, MonitorReading, Plan } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { exactText } from '../numbers/fixed-text.js';
import { type PrintUnit, unitFor } from '../numbers/print-unit.js';
import { isOrdinary, significantDigits } from '../numbers/value-text.js';
import { blank, none, numberCell, stateCell, textCell } from './cells.js';
import { monitorRowsRead } from './monitor-rows.js';
import type { Cell, Column, Section } from './sheet.js';
import { verdictCell } from './verdict-word.js';

/** Resistance readings of the return-electrode monitor, with room for what its display shows. */
export function monitorWorksheet(plan: Plan): readonly Section[] {
  if (plan.monitor.length === 0) return [];
  const unit = unitOf(plan);
  const columns: Column[] = [
    ...columnsOf(unit),
    { id: 'found', title: 'Displayed, as found', short: 'As found', unit: unit.symbol, align: 'right' },
    { id: 'left', title: 'Displayed, as left', short: 'As left', unit: unit.symbol, align: 'right' },
  ];
  const rows = plan.monitor.map((row) => ({
    cells: [
      { kind: 'number', digits: String(row.number) } as const,
      setCell(row.set, unit),
      resistanceCell(row.lower, unit),
      resistanceCell(row.upper, unit),
      blank,
      blank,
    ],
    notes: [],
  }));
  return section(plan, columns, rows);
}

/** Resistance readings of the return-electrode monitor, judged. */
export function monitorRecord(
  plan: Plan,
  findings: readonly MonitorFinding[],
  readings: readonly MonitorReading[],
  hints: readonly MonitorDisplayHint[] = [],
): readonly Section[] {
  if (findings.length === 0) return [];
  const unit = unitOf(plan);
  const columns: Column[] = [
    ...columnsOf(unit),
    { id: 'displayed', title: 'Displayed', unit: unit.symbol, align: 'right' },
    { id: 'state', title: 'State', align: 'left' },
    { id: 'verdict', title: 'Verdict', align: 'left' },
  ];
  const rows = monitorRowsRead(findings, readings).map((finding) => ({
    cells: [
      { kind: 'number', digits: String(finding.number) } as const,
      setCell(finding.set, unit),
      resistanceCell(finding.limits.lower, unit),
      resistanceCell(finding.limits.upper, unit),
      displayedCell(finding.displayed, unit),
      stateCell(finding.phase),
      verdictCell(finding.verdict, finding.reason),
    ],
    notes: finding.reason === 'inside' ? [] : [{ tone: 'plain' as const, text: plainText(finding.message) }],
  }));
  return section(plan, columns, rows, hints);
}

/** A reading of the monitor that belongs to no row, in words. */
export function extraMonitorText({ set, displayed, phase }: MonitorReading): string {
  const ohms = (value: number): string => {
    const unit = unitFor('resistance', [value]);
    return `${significantDigits(value, unit, 6)} ${unit.symbol}`;
  };
  const where = set === 'open' ? 'open circuit' : ohms(set);
  return `Monitor at ${where}: ${displayed === 'over-range' ? 'over range' : ohms(displayed)} (${phase.replace('-', ' ')})`;
}

function columnsOf(unit: PrintUnit): Column[] {
  return [
    { id: 'number', title: 'No.', align: 'right' },
    { id: 'set', title: 'Set', unit: unit.symbol, align: 'right' },
    { id: 'lower', title: 'Lower limit', short: 'Lower', unit: unit.symbol, align: 'right' },
    { id: 'upper', title: 'Upper limit', short: 'Upper', unit: unit.symbol, align: 'right' },
  ];
}

function section(
  plan: Plan,
  columns: readonly Column[],
  rows: readonly { cells: readonly Cell[]; notes: readonly { tone: 'plain'; text: string }[] }[],
  hints: readonly MonitorDisplayHint[] = [],
): readonly Section[] {
  const connection = plan.monitor[0]?.connection;
  const caption = 'Resistance readings of the return-electrode monitor';
  return [
    {
      id: 'monitor',
      heading: 'Return-electrode monitor',
      blocks: [
        ...(connection === undefined
          ? []
          : [{ kind: 'paragraph', text: plainText(`Connection: ${connection}`) } as const]),
        { kind: 'table', table: { id: 'monitor', caption, columns, groups: [{ headings: [], notes: [], rows }] } },
        ...hints
          .filter(({ fault }) => fault !== 'none')
          .map(({ phase, message }) => ({
            kind: 'paragraph' as const,
            text: plainText(`Hint, ${phase.replace('-', ' ')}: ${message}`),
          })),
      ],
    },
  ];
}

function unitOf(plan: Plan): PrintUnit {
  const values = plan.monitor.flatMap((row) => [row.set === 'open' ? undefined : row.set, row.lower, row.upper]);
  return unitFor(
    'resistance',
    values.filter((value) => value !== undefined),
  );
}

function setCell(set: number | 'open', unit: PrintUnit): Cell {
  return set === 'open' ? textCell('open') : resistanceCell(set, unit);
}

function displayedCell(displayed: number | 'over-range' | undefined, unit: PrintUnit): Cell {
  return displayed === 'over-range' ? textCell('over range') : resistanceCell(displayed, unit);
}

/** A resistance with all its digits: limits are printed as they were given. */
function resistanceCell(value: number | undefined, unit: PrintUnit): Cell {
  if (value === undefined) return none;
  const ordinary = value === 0 || isOrdinary(Math.abs(value) * 10 ** unit.shift);
  return numberCell(ordinary ? exactText(value, unit) : significantDigits(value, unit, 10), unit, unit);
}
