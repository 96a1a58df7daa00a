import { nearName } from '../../checks/index.js';
import { type AlarmReason, alarmReasons } from '../../monitor/index.js';
import type { RowCells } from './row-cells.js';

const otherWords: Readonly<Record<string, AlarmReason>> = {
  high: 'above-upper',
  'too-high': 'above-upper',
  low: 'below-lower',
  'too-low': 'below-lower',
  'rise-over-baseline': 'rise',
  'rise-over-the-baseline': 'rise',
};

/** The reason of an alarm in the column `alarm reason`; undefined where there is none, or it is not understood. */
export function readAlarmReason<N extends string>(cells: RowCells<N | 'alarm reason'>): AlarmReason | undefined {
  const text = cells
    .text('alarm reason')
    .toLowerCase()
    .replace(/[\s_]+/g, '-');
  if (text === '') return undefined;
  const reason = alarmReasons.find((known) => known === text);
  if (reason !== undefined) return reason;
  const near = Object.hasOwn(otherWords, text) ? otherWords[text] : nearName(text, alarmReasons);
  const hint = near === undefined ? undefined : `Did you mean "${near}"?`;
  return cells.fault('alarm reason', 'unknown-choice', `must be one of: ${alarmReasons.join(', ')}`, hint);
}
