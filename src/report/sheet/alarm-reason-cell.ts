import { type AlarmReason, alarmReasonText } from '../../monitor/index.js';
import type { AlarmReasons } from '../../procedure/index.js';
import { none } from './cells.js';
import type { Cell, Column } from './sheet.js';

/** The reason that the monitor gave for an alarm: a column of tables in which one was noted. */
export const reasonColumn: Column = { id: 'alarm-reason', title: 'Reason it gave', short: 'Reason', align: 'left' };

const shortTexts: Readonly<Record<AlarmReason, string>> = {
  'above-upper': 'too high',
  'below-lower': 'too low',
  rise: 'rise',
  'not-yet-accepted': 'not yet',
};

export function isAnyReason(rows: readonly AlarmReasons[]): boolean {
  return rows.some(({ alarmReason }) => alarmReason !== undefined);
}

export function reasonCell({ alarmReason }: AlarmReasons): Cell {
  if (alarmReason === undefined) return none;
  return { kind: 'text', text: alarmReasonText(alarmReason), short: shortTexts[alarmReason] };
}
