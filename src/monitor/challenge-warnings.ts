import type { Warning } from '../checks/index.js';
import { type AlarmChallenge, limitNames, type SweepChallenge } from './challenge.js';
import type { Monitor } from './monitor.js';
import { short, type ThresholdPlan } from './threshold-plan.js';

/** What the challenges of a monitor leave open. */
export function challengeWarnings(
  { kind, lower, upper, rise }: Monitor,
  thresholds: readonly ThresholdPlan[],
  challenges: readonly (AlarmChallenge | SweepChallenge)[],
): Warning[] {
  const warnings: Warning[] = [];
  for (const { limit, baseline, status, reason, needed } of thresholds) {
    if (status === 'verifiable') continue;
    const at = baseline === undefined ? '' : ` from ${short(baseline)} ohm`;
    const rough = status === 'roughly' ? 'can be verified only roughly' : 'cannot be verified';
    const message = `With this box ${limitNames[limit]}${at} ${rough}. ${reason}${needText(needed)}`;
    warnings.push({ code: 'threshold-not-verifiable', message });
  }
  const silent = [lower, upper, rise].filter((limit) => limit !== undefined && limit.tolerance === undefined).length;
  if (silent > 0) {
    const message = 'No tolerance of a threshold is stated: a good monitor may trip a little off it. Ask the maker.';
    warnings.push({ code: 'tolerance-missing', message });
  }
  if (
    rise !== undefined &&
    thresholds.filter(({ limit, status }) => limit === 'rise' && status !== 'not-verifiable').length < 3
  ) {
    const message =
      'Box and limits leave fewer than three baselines for the rise: a fault at other baselines can go unseen.';
    warnings.push({ code: 'few-baselines', message });
  }
  const hasUpper = thresholds.some((plan) => plan.limit === 'upper' && plan.status !== 'not-verifiable');
  if (rise !== undefined && hasUpper && !challenges.some((each) => each.kind === 'sweep' && each.limit === 'upper')) {
    const message = 'A sweep to the upper limit is left out: the rise over its first value could alarm before.';
    warnings.push({ code: 'sweep-left-out', message });
  }
  if (upper === undefined && !challenges.some((each) => each.kind !== 'sweep' && each.set === 'open')) {
    warnings.push({ code: 'open-not-detected', message: 'No stated limit makes an open circuit alarm.' });
  }
  if (kind === 'contact-quality' && lower === undefined) {
    const message = 'No lower limit is stated: a short circuit between the foils or in the lead goes unseen.';
    warnings.push({ code: 'short-not-detected', message });
  }
  return warnings;
}

function needText(needed: ThresholdPlan['needed']): string {
  if (needed === undefined) return '';
  const { step, offBy, reach } = needed;
  const parts = [
    ...(reach === undefined ? [] : [`a value at ${short(reach)} ohm or beyond`]),
    ...(offBy === undefined ? [] : [`values within ${short(offBy)} ohm`]),
    ...(step === undefined ? [] : [`steps of ${short(step)} ohm at most`]),
  ];
  return ` A box would do that has ${parts.join(' and ')}.`;
}
