/** Why a monitor alarms. */
export type AlarmReason = (typeof alarmReasons)[number];

/** Every reason, in the words of `monitorStates`. */
export const alarmReasons = ['above-upper', 'below-lower', 'rise', 'not-yet-accepted'] as const;

const texts: Readonly<Record<AlarmReason, string>> = {
  'above-upper': 'above the upper limit',
  'below-lower': 'below the lower limit',
  rise: 'rise over the baseline',
  'not-yet-accepted': 'not yet accepted',
};

/**
 * A reason of an alarm in words.
 *
 * @param reason Reason, as `monitorStates` gives it and as it is noted at the bench
 * @returns Words for a sentence or a table
 * @source Definition of the monitor, as its maker states it
 * @example
 * ```ts
 * import { alarmReasonText } from 'esu-limits/monitor';
 * alarmReasonText('above-upper'); // → "above the upper limit"
 * ```
 */
export function alarmReasonText(reason: AlarmReason): string {
  return texts[reason];
}
