import { atPath, fail, requireChoice, requireNonNegative, requirePositive } from '../checks/index.js';
import { alarmReasons } from '../monitor/index.js';
import { assessChallenge } from './assess-challenge.js';
import { assessTrips } from './assess-trips.js';
import type { ChallengeFinding, TripFindings } from './findings.js';
import type { Plan } from './plan.js';
import type { ChallengeReading, Phase } from './readings.js';

/** Challenges and sweeps of the monitor in each state of the unit, and what has no place in the plan. */
export function challengeFindings(
  plan: Plan,
  readings: readonly ChallengeReading[],
  phases: readonly Phase[],
): {
  readonly rows: readonly ChallengeFinding[];
  readonly trips: readonly TripFindings[];
  readonly extra: readonly ChallengeReading[];
} {
  readings.forEach((reading, i) => {
    atPath(`monitorChallenges[${i}]`, () => checkChallengeReading(reading));
  });
  const planned = plan.monitorThresholds?.challenges ?? [];
  const of = (phase: Phase): readonly ChallengeReading[] => readings.filter((reading) => reading.phase === phase);
  const rows = phases.flatMap((phase) =>
    planned.flatMap((challenge): ChallengeFinding[] => {
      const own = of(phase).filter(({ challenge: number }) => number === challenge.number);
      const seen =
        own.length > 0 || phase === 'as-found'
          ? own
          : of('as-found').filter(({ challenge: number }) => number === challenge.number);
      const found =
        seen.length === 0
          ? [assessChallenge(plan, challenge, phase, undefined)]
          : seen.map((entry) => assessChallenge(plan, challenge, phase, entry));
      return found.filter((finding) => finding !== undefined);
    }),
  );
  const trips = phases.flatMap((phase) => {
    const own = assessTrips(plan, of(phase), phase);
    const here = own ?? (phase === 'as-left' ? assessTrips(plan, of('as-found'), phase) : undefined);
    return here === undefined ? [] : [here];
  });
  // A step of a sweep has no place without the resistance that was set.
  const extra = readings.filter(({ challenge, set }) => {
    const own = planned.find(({ number }) => number === challenge);
    return own === undefined || (own.kind === 'sweep' && set === undefined);
  });
  return { rows, trips, extra };
}

function checkChallengeReading({ challenge, set, alarm, responseTime, alarmReason, phase }: ChallengeReading): void {
  requireChoice(phase, 'phase', ['as-found', 'as-left']);
  requirePositive(challenge, 'challenge');
  if (set !== undefined) requireNonNegative(set, 'set');
  if (responseTime !== undefined) requireNonNegative(responseTime, 'responseTime');
  if (alarmReason === undefined) return;
  requireChoice(alarmReason, 'alarmReason', alarmReasons);
  if (!alarm) fail('contradiction', 'alarmReason', alarmReason, 'must be absent where there was no alarm');
}
