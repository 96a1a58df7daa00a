import {
  alarmTimeFormula,
  lowerReleaseFormula,
  riseLimitFormula,
  riseReleaseFormula,
  seenFormula,
  upperReleaseFormula,
} from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import { checkMonitor } from './check-monitor.js';
import { finiteResult } from './finite-result.js';
import type { Monitor } from './monitor.js';
import type { MonitorAlarm } from './monitor-states.js';

/**
 * The working of one alarm: what the monitor saw, the limit, when the alarm began and what ends it.
 *
 * @param monitor The monitor that alarmed
 * @param alarm One of the alarms of `monitorStates`
 * @returns The steps; fewer where the circuit was open or the trace began in alarm
 * @throws CalculationError as `checkMonitor`; `result-out-of-range`
 * @source Definition of the monitor, as its maker states it
 * @example
 * ```ts
 * import { explainAlarm, monitorStates } from 'esu-limits/monitor';
 * const monitor = { kind: 'continuity', upper: { resistance: 20, hysteresis: 4 }, alarmDelay: 1 } as const;
 * const { alarms } = monitorStates(monitor, { time: [0, 5], resistance: [2, 30], end: 9 });
 * alarms.flatMap((alarm) => explainAlarm(monitor, alarm)).map(({ symbol, value }) => `${symbol} = ${value}`);
 * // → ["R_seen = 30", "t_alarm = 6", "R_release = 16"]
 * ```
 */
export function explainAlarm(monitor: Monitor, alarm: MonitorAlarm): readonly Step[] {
  return finiteResult(stepsOf(checkMonitor(monitor), alarm), 'steps');
}

function stepsOf({ lower, upper, rise, alarmDelay, series }: Monitor, alarm: MonitorAlarm): readonly Step[] {
  const { reason, resistance, seen, limit, baseline } = alarm;
  const steps: Step[] = [];
  if (typeof resistance === 'number' && typeof seen === 'number') {
    const inputs = { R: resistance, R_s: series?.resistance ?? 0 };
    steps.push(step(seenFormula, 'resistance that the monitor sees', inputs, seen));
  }
  if (reason === 'not-yet-accepted') return steps;
  const base = { b: baseline ?? 0, f: rise?.floor ?? 0, r: rise?.fraction ?? 0 };
  if (reason === 'rise' && limit !== null)
    steps.push(step(riseLimitFormula, 'highest accepted resistance', base, limit));
  steps.push(step(alarmTimeFormula, 'beginning of the alarm', { t: alarm.since, d: alarmDelay ?? 0 }, alarm.from));
  const label = 'resistance at which the alarm ends';
  if (reason === 'rise' && rise !== undefined) {
    const h = rise.hysteresis ?? 0;
    const value = Math.max(base.b, base.f) * (1 + base.r - h);
    steps.push(step(riseReleaseFormula, label, { ...base, h }, value));
  } else if (reason === 'above-upper' && upper !== undefined) {
    const inputs = { T: upper.resistance, h: upper.hysteresis ?? 0 };
    steps.push(step(upperReleaseFormula, label, inputs, inputs.T - inputs.h));
  } else if (lower !== undefined) {
    const inputs = { T: lower.resistance, h: lower.hysteresis ?? 0 };
    steps.push(step(lowerReleaseFormula, label, inputs, inputs.T + inputs.h));
  }
  return steps;
}
