import type { Warning } from '../checks/index.js';
import { type AlarmReason, alarmReasonText } from '../monitor/index.js';
import { formatQuantity } from '../units/index.js';
import type { PlanChallenge } from './plan.js';
import type { ChallengeReading } from './readings.js';

const reasonOfLimit = { lower: 'below-lower', upper: 'above-upper', rise: 'rise', any: undefined } as const;

/** Why a good monitor alarms at a challenge; undefined where it must not. */
export function reasonOfChallenge({ kind, limit }: PlanChallenge): AlarmReason | undefined {
  return kind === 'must-not-alarm' ? undefined : reasonOfLimit[limit];
}

/** A warning where another reason was noted than the stated monitor has; `besides` goes before what to do. */
export function alarmReasonWarnings(
  where: string,
  noted: AlarmReason | undefined,
  expected: AlarmReason | undefined,
  besides = '',
): readonly Warning[] {
  if (noted === undefined || expected === undefined || noted === expected) return [];
  const said = `${where}: the reason that the monitor gave is "${alarmReasonText(noted)}", that of the stated monitor is "${alarmReasonText(expected)}".`;
  const message = `${said}${besides} It changes no verdict: find out which of its limits the monitor applied.`;
  return [{ code: 'alarm-reason-differs', message }];
}

/** The same of the steps of a sweep, one for each reason that differs. */
export function sweepReasonWarnings(challenge: PlanChallenge, run: readonly ChallengeReading[]): readonly Warning[] {
  const expected = reasonOfChallenge(challenge);
  // What a sweep begins with may have stood since the monitor was started anew.
  const stood = run[0]?.alarm === true ? 'not-yet-accepted' : undefined;
  const noted = new Set(run.map(({ alarmReason }) => alarmReason).filter((reason) => reason !== stood));
  return [...noted].flatMap((reason) => {
    const steps = run.filter(({ alarmReason }) => alarmReason === reason);
    const at = steps.map(({ set }) => formatQuantity(set as number, 'ohm')).join(', ');
    return alarmReasonWarnings(`Challenge ${challenge.number}, at ${at}`, reason, expected);
  });
}
