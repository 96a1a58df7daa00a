import { formatQuantity } from '../units/index.js';
import type { ChallengeFinding } from './findings.js';
import type { PlanChallenge } from './plan.js';
import type { ChallengeReading, Phase } from './readings.js';

/** A single challenge of the monitor against what was seen, or without it. */
export function assessChallenge(
  challenge: PlanChallenge,
  phase: Phase,
  seen: ChallengeReading | undefined,
): ChallengeFinding | undefined {
  if (challenge.kind === 'sweep') return undefined;
  const { id, number, set, kind, baseline, limit } = challenge;
  const mustAlarm = kind === 'must-alarm';
  const common = {
    challenge: id,
    number,
    phase,
    limit,
    set,
    ...(baseline === undefined ? {} : { baseline }),
    mustAlarm,
  };
  if (seen === undefined) return { ...common, verdict: 'not judged', message: 'Nothing was written down.' };
  const { alarm, responseTime, note } = seen;
  const where = set === 'open' ? 'open circuit' : set === 0 ? 'short circuit' : formatQuantity(set, 'ohm');
  const rest = {
    alarm,
    ...(responseTime === undefined ? {} : { responseTime }),
    ...(note === undefined ? {} : { note }),
  };
  const late =
    mustAlarm && alarm && challenge.wait !== null && responseTime !== undefined && responseTime > challenge.wait;
  if (late) {
    const message = `${where}: the alarm came after ${formatQuantity(responseTime as number, 's')}, permitted are ${formatQuantity(challenge.wait as number, 's')}.`;
    return { ...common, ...rest, verdict: 'fail', message };
  }
  const pass = alarm === mustAlarm;
  const message = `${where}: ${alarm ? 'alarm' : 'no alarm'}, and it must ${mustAlarm ? '' : 'not '}alarm.`;
  return { ...common, ...rest, verdict: pass ? 'pass' : 'fail', message };
}
