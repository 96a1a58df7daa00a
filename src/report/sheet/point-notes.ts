import type { Warning } from '../../checks/index.js';
import type { PlanPoint, PointMeasurement } from '../../procedure/index.js';
import { roundUncertainty } from '../../uncertainty/index.js';
import { plainText } from '../escape/plain-text.js';
import { limitDigits } from '../numbers/limit-digits.js';
import { unitFor } from '../numbers/print-unit.js';
import { valueText } from '../numbers/value-text.js';
import type { RowNote } from './sheet.js';

/** Warnings that only say how a number came about. */
const quiet: readonly string[] = ['power-assumed-unchanged', 'nominal-from-limits', 'reading-converted'];

/** Warnings that the heading of the load says already. */
const inHeading: readonly string[] = ['load-substituted'];

/** What a technician needs to know of a point beside its numbers: range, peak, activation. */
export function pointNotes(point: PlanPoint): readonly RowNote[] {
  const notes: string[] = [];
  if (point.range !== undefined) notes.push(`Range ${valueText(point.range.maximum, point.reads)}.`);
  if (point.expected?.peakVoltage !== undefined) {
    notes.push(`Peak about ${valueText(point.expected.peakVoltage, 'voltage', 3)}.`);
  }
  if (point.measurement !== undefined && point.nominal !== undefined) {
    notes.push(`U ${uncertaintyText(point.measurement, point.nominal, point.reads)}.`);
  }
  const accepted = acceptanceText(point);
  if (accepted !== undefined) notes.push(accepted);
  if (point.effect?.applied === true) notes.push(point.effect.statement);
  const { longest, pause } = point.activation;
  if (longest !== undefined) notes.push(`Activate up to ${valueText(longest, 'time')}.`);
  if (pause !== undefined) notes.push(`Pause ${valueText(pause, 'time')} or longer.`);
  return notes.map((text) => ({ tone: 'plain', text }));
}

/** Warnings of a point or a finding as remarks of its row. */
export function warningNotes(warnings: readonly Warning[]): readonly RowNote[] {
  return warnings
    .filter(({ code }) => !inHeading.includes(code))
    .map(({ code, message }) => ({ tone: quiet.includes(code) ? 'plain' : 'attention', text: plainText(message) }));
}

/** What is accepted, where the rule of the plan accepts something else than the limits themselves. */
function acceptanceText({ measurement, limits, reads, range }: PlanPoint): string | undefined {
  const acceptance = measurement?.acceptance;
  if (acceptance === undefined) return undefined;
  if (acceptance === null) return 'Accept: no reading.';
  if (acceptance.lower === limits.lower && acceptance.upper === limits.upper) return undefined;
  const values = [acceptance.lower, acceptance.upper].filter((value) => value !== undefined);
  const unit = unitFor(reads, values);
  const text = (value: number, side: 'lower' | 'upper'): string =>
    `${limitDigits(value, side, unit, range?.resolution)} ${unit.symbol}`;
  const from = acceptance.lower === undefined ? '' : ` from ${text(acceptance.lower, 'lower')}`;
  const to = acceptance.upper === undefined ? '' : ` to ${text(acceptance.upper, 'upper')}`;
  return `Accept${from}${to}.`;
}

/** Expanded uncertainty of a reading at the nominal, with its probability: `14 mA (95 %)`. */
function uncertaintyText({ expanded }: PointMeasurement, nominal: number, reads: PlanPoint['reads']): string {
  const { expandedUncertainty, coverageProbability } = expanded;
  const shown = expandedUncertainty > 0 ? roundUncertainty(nominal, expandedUncertainty).uncertainty : 0;
  return `${valueText(shown, reads)} (${Number((coverageProbability * 100).toPrecision(4))} %)`;
}
