import { formatQuantity } from '../units/index.js';
import { alarmReasonWarnings, reasonOfChallenge } from './alarm-reasons.js';
import type { ChallengeFinding } from './findings.js';
import { judgeResponse } from './judge-response.js';
import type { Plan, PlanChallenge } from './plan.js';
import type { ChallengeReading, Phase } from './readings.js';

/** A single challenge of the monitor against what was seen, or without it. */
export function assessChallenge(
  plan: Plan,
  challenge: PlanChallenge,
  phase: Phase,
  seen: ChallengeReading | undefined,
): ChallengeFinding | undefined {
  if (challenge.kind === 'sweep') return undefined;
  const { id, number, set, kind, baseline, limit } = challenge;
  const mustAlarm = kind === 'must-alarm';
  const expectedReason = reasonOfChallenge(challenge);
  const common = {
    challenge: id,
    number,
    phase,
    limit,
    set,
    ...(baseline === undefined ? {} : { baseline }),
    mustAlarm,
    ...(expectedReason === undefined ? {} : { expectedReason }),
  };
  if (seen === undefined) return { ...common, verdict: 'not judged', message: 'Nothing was written down.' };
  const { alarm, responseTime, note, alarmReason } = seen;
  const where = set === 'open' ? 'open circuit' : set === 0 ? 'short circuit' : formatQuantity(set, 'ohm');
  const rest = {
    alarm,
    ...(responseTime === undefined ? {} : { responseTime }),
    ...(alarmReason === undefined ? {} : { alarmReason }),
    ...(note === undefined ? {} : { note }),
    ...warningsOf(`Challenge ${number}, ${where}`, alarmReason, expectedReason),
  };
  const isRight = alarm === mustAlarm;
  const did = `${where}: ${alarm ? 'alarm' : 'no alarm'}, and it must ${mustAlarm ? '' : 'not '}alarm`;
  const { wait } = challenge;
  if (!(isRight && alarm) || responseTime === undefined || wait === null) {
    return { ...common, ...rest, verdict: isRight ? 'pass' : 'fail', message: `${did}.` };
  }
  const { judged, because } = judgeResponse(plan, responseTime, wait);
  const message = `${did}; it came after ${formatQuantity(responseTime, 's')}, permitted are ${formatQuantity(wait, 's')}: ${because}.${responseTime > wait ? ' The alarm trips late.' : ''}`;
  return { ...common, ...rest, response: judged, verdict: judged.verdict, message };
}

function warningsOf(...question: Parameters<typeof alarmReasonWarnings>): Pick<ChallengeFinding, 'warnings'> {
  const warnings = alarmReasonWarnings(...question);
  return warnings.length === 0 ? {} : { warnings };
}
