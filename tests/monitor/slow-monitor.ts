import type { AlarmReason, Monitor } from '../../src/monitor/index.js';

/*
 * The rule of a monitor, written again from its description: slow, obvious, and without a line of the library.
 * Time goes in ticks; at every tick everything is decided anew from what has been since. Times of traces and delays are
 * whole numbers of ticks.
 */

interface SlowAlarm {
  readonly reason: AlarmReason;
  readonly since: number;
  readonly from: number;
  to: number | null;
}

/** A value within 1e-12 of a limit counts as on it. */
function isBeyond(value: number, limit: number, side: 1 | -1): boolean {
  return side * (value - limit) > 1e-12 * limit;
}

/** Resistance of each tick, from tick 0 to the last one, which is the end. */
export function slowMonitor(monitor: Monitor, ohmsAtTick: readonly number[], startsInAlarm = false) {
  const series = monitor.series?.resistance ?? 0;
  const alarms: SlowAlarm[] = [];
  let baseline: number | undefined;
  let alarm: SlowAlarm | undefined;
  let outsideSince: { tick: number; reason: AlarmReason } | undefined;
  let clearSince: number | undefined;

  const reasonAt = (seen: number, isRelease: boolean): AlarmReason | undefined => {
    const { lower, upper, rise } = monitor;
    const back = (hysteresis: number | undefined) => (isRelease ? (hysteresis ?? 0) : 0);
    if (upper && isBeyond(seen, upper.resistance - back(upper.hysteresis), 1)) return 'above-upper';
    if (lower && isBeyond(seen, lower.resistance + back(lower.hysteresis), -1)) return 'below-lower';
    if (rise && baseline !== undefined) {
      const counted = Math.max(baseline, rise.floor ?? 0);
      if (isBeyond(seen, counted * (1 + rise.fraction - back(rise.hysteresis)), 1)) return 'rise';
    }
    return undefined;
  };

  if (startsInAlarm) {
    alarm = { reason: 'not-yet-accepted', since: 0, from: 0, to: null };
    alarms.push(alarm);
  }
  ohmsAtTick.forEach((ohms, tick) => {
    const seen = ohms + series;
    // More than one thing can happen at a tick, with delays of 0: go on until nothing more does.
    for (;;) {
      if (alarm) {
        if (reasonAt(seen, true) !== undefined) {
          // What lasted up to this tick has lasted for its whole time.
          if (clearSince !== undefined && tick - clearSince >= (monitor.releaseDelay ?? 0) && tick > clearSince) {
            alarm.to = tick;
            alarm = undefined;
            clearSince = undefined;
            continue;
          }
          clearSince = undefined;
          return;
        }
        clearSince ??= tick;
        if (tick - clearSince < (monitor.releaseDelay ?? 0)) return;
        alarm.to = tick;
        alarm = undefined;
        clearSince = undefined;
        continue;
      }
      const reason = reasonAt(seen, false);
      const lasted = outsideSince === undefined ? -1 : tick - outsideSince.tick;
      if (outsideSince !== undefined && lasted > 0 && lasted >= (monitor.alarmDelay ?? 0)) {
        alarm = { reason: outsideSince.reason, since: outsideSince.tick, from: tick, to: null };
        alarms.push(alarm);
        outsideSince = undefined;
        continue;
      }
      if (reason === undefined) {
        outsideSince = undefined;
        // One tick of an accepted resistance.
        if (seen < Number.POSITIVE_INFINITY) baseline = nextBaseline(monitor, baseline, seen);
        return;
      }
      outsideSince ??= { tick, reason };
      if ((monitor.alarmDelay ?? 0) > 0) return;
      alarm = { reason, since: tick, from: tick, to: null };
      alarms.push(alarm);
      outsideSince = undefined;
    }
  });
  return { alarms, pendingSince: outsideSince?.tick ?? null };
}

function nextBaseline({ rise }: Monitor, baseline: number | undefined, seen: number): number | undefined {
  if (rise === undefined) return undefined;
  if (baseline === undefined) return seen;
  if (rise.baseline === 'lowest') return Math.min(baseline, seen);
  if (rise.baseline === 'tracked')
    return baseline + (seen - baseline) * (1 - Math.exp(-1 / (rise.timeConstant as number)));
  return baseline;
}
