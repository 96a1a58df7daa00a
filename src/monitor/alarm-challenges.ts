import type { Band } from '../band/index.js';
import { type AlarmChallenge, limitNames } from './challenge.js';
import type { Monitor } from './monitor.js';
import { type Setup, short, type ThresholdPlan } from './threshold-plan.js';

/** A baseline that follows has to be left in one step. */
function atOnce({ rise }: Monitor, limit: ThresholdPlan['limit']): string {
  return limit === 'rise' && rise?.baseline === 'tracked' ? ' Go there in one step: the baseline follows.' : '';
}

/** The values on both sides of a threshold. */
export function pairOf(
  { limit, baseline, mustNotAlarm, mustAlarm }: ThresholdPlan,
  monitor: Monitor,
): AlarmChallenge[] {
  const common = { limit, wait: monitor.alarmDelay ?? null, ...(baseline === undefined ? {} : { baseline }) };
  const from = baseline === undefined ? '' : ` from ${short(baseline)} ohm`;
  return [
    ...(mustNotAlarm === null
      ? []
      : [
          {
            ...common,
            kind: 'must-not-alarm' as const,
            set: mustNotAlarm,
            reason: `Surely inside ${limitNames[limit]}${from}, whatever box and fixture are off by.${atOnce(monitor, limit)}`,
          },
        ]),
    ...(mustAlarm === null
      ? []
      : [
          {
            ...common,
            kind: 'must-alarm' as const,
            set: mustAlarm,
            reason: `Surely beyond ${limitNames[limit]}${from} and its tolerance, whatever box and fixture are off by.${atOnce(monitor, limit)}`,
          },
        ]),
  ];
}

/** What a short circuit must do; nothing where that is within what the bench blurs. */
export function shortChallenges(
  { kind, alarmDelay, series }: Monitor,
  setup: Setup,
  low: Band | undefined,
  high: Band | undefined,
): AlarmChallenge[] {
  const most = setup.series + (series?.limits ?? 0);
  const common = { set: 0, wait: alarmDelay ?? null };
  if (low !== undefined) {
    if (!(most < (low.lower ?? 0))) return [];
    const reason = 'A short circuit, such as one between the foils or in the lead, lies below the lower limit.';
    return [{ ...common, kind: 'must-alarm', limit: 'lower', reason }];
  }
  if (high?.lower !== undefined && most > high.lower) return [];
  const reason =
    kind === 'continuity'
      ? 'A good connection: the monitor must accept it.'
      : 'No lower limit is stated: the monitor accepts a short circuit.';
  return [{ ...common, kind: 'must-not-alarm', limit: 'any', reason }];
}

/** What an open circuit must do; nothing where no limit says. */
export function openChallenges({ upper, rise, alarmDelay }: Monitor, baseline: number | undefined): AlarmChallenge[] {
  const common = { kind: 'must-alarm', set: 'open', wait: alarmDelay ?? null } as const;
  const reason = 'An open circuit: no neutral electrode, or a broken lead.';
  if (upper !== undefined) return [{ ...common, limit: 'upper', reason }];
  if (rise === undefined || baseline === undefined) return [];
  return [{ ...common, limit: 'rise', baseline, reason }];
}
