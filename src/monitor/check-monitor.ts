import { bandAround } from '../band/index.js';
import { atPath, fail, requireChoice, requireFraction, requireNonNegative, requirePositive } from '../checks/index.js';
import type { Monitor, MonitorLimit, MonitorRise } from './monitor.js';

/**
 * A monitor that contradicts nothing, or an error that names the member.
 *
 * @param monitor The monitor
 * @param path Where it stands, for the error; `monitor` unless stated
 * @returns The same monitor
 * @throws CalculationError `unknown-choice`, `not-a-number`, `negative`, `not-positive`, `not-a-fraction`, `no-limits`,
 * `band-reversed`, `hysteresis-too-wide`, `missing-member`, `contradiction`, and those of `bandAround`
 * @example
 * ```ts
 * import { checkMonitor } from 'esu-limits/monitor';
 * checkMonitor({ kind: 'continuity', upper: { resistance: 20 } }).kind; // → "continuity"
 * checkMonitor({ kind: 'continuity', lower: { resistance: 20 }, upper: { resistance: 5 } }); // throws band-reversed
 * ```
 */
export function checkMonitor(monitor: Monitor, path = 'monitor'): Monitor {
  atPath(path, () => {
    const { kind, lower, upper, rise, series } = monitor;
    requireChoice(kind, 'kind', ['continuity', 'contact-quality']);
    if (lower === undefined && upper === undefined && rise === undefined) {
      fail('no-limits', '', monitor, 'must have a lower limit, an upper limit or a rise');
    }
    checkLimit(lower, 'lower');
    checkLimit(upper, 'upper');
    checkWindow(lower, upper);
    if (rise !== undefined) {
      if (kind === 'continuity') {
        fail(
          'contradiction',
          'rise',
          rise,
          'must be absent of a continuity monitor: it sees no contact that could rise',
        );
      }
      checkRise(rise);
    }
    if (monitor.alarmDelay !== undefined) requireNonNegative(monitor.alarmDelay, 'alarmDelay');
    if (monitor.releaseDelay !== undefined) requireNonNegative(monitor.releaseDelay, 'releaseDelay');
    if (series !== undefined) {
      requireNonNegative(series.resistance, 'series.resistance');
      if (series.limits !== undefined) requireNonNegative(series.limits, 'series.limits');
    }
    checkDisplay(monitor);
  });
  return monitor;
}

function checkLimit(limit: MonitorLimit | undefined, path: string): void {
  if (limit === undefined) return;
  requirePositive(limit.resistance, `${path}.resistance`);
  const { tolerance, hysteresis } = limit;
  if (tolerance !== undefined) atPath(path, () => bandAround(limit.resistance, tolerance));
  if (hysteresis !== undefined) requireNonNegative(hysteresis, `${path}.hysteresis`);
}

/** What must be left of a window: a value that ends either alarm. */
function checkWindow(lower: MonitorLimit | undefined, upper: MonitorLimit | undefined): void {
  const least = lower?.resistance ?? 0;
  if (upper === undefined) return;
  if (least >= upper.resistance) {
    fail('band-reversed', 'lower.resistance', least, `must lie below the upper limit, ${upper.resistance}`);
  }
  const above = upper.hysteresis ?? 0;
  if (least + (lower?.hysteresis ?? 0) <= upper.resistance - above) return;
  const [side, wide] = above > 0 ? (['upper', above] as const) : (['lower', lower?.hysteresis] as const);
  const rest = `must leave a resistance between ${least} and ${upper.resistance} that ends the alarm`;
  fail('hysteresis-too-wide', `${side}.hysteresis`, wide, rest);
}

function checkRise({ fraction, tolerance, hysteresis, baseline, timeConstant, floor }: MonitorRise): void {
  requireFraction(requirePositive(fraction, 'rise.fraction'), 'rise.fraction');
  if (tolerance !== undefined && requireNonNegative(tolerance, 'rise.tolerance') >= fraction) {
    fail('out-of-range', 'rise.tolerance', tolerance, `must be less than the rise, ${fraction}`);
  }
  if (hysteresis !== undefined && requireNonNegative(hysteresis, 'rise.hysteresis') >= fraction) {
    fail('hysteresis-too-wide', 'rise.hysteresis', hysteresis, `must be less than the rise, ${fraction}`);
  }
  requireChoice(baseline, 'rise.baseline', ['at-start', 'lowest', 'tracked']);
  if (baseline === 'tracked') {
    if (timeConstant === undefined) {
      fail('missing-member', 'rise.timeConstant', timeConstant, 'must be given where the baseline is tracked');
    }
    requirePositive(timeConstant, 'rise.timeConstant');
  } else if (timeConstant !== undefined) {
    fail('contradiction', 'rise.timeConstant', timeConstant, 'must be absent where the baseline is not tracked');
  }
  if (floor !== undefined) requireNonNegative(floor, 'rise.floor');
}

function checkDisplay({ display }: Monitor): void {
  if (display === undefined) return;
  requirePositive(display.resolution, 'display.resolution');
  requirePositive(display.maximum, 'display.maximum');
  if (display.open !== 'over-range') requireNonNegative(display.open, 'display.open');
  const { tolerance, maximum } = display;
  if (tolerance !== undefined) atPath('display', () => bandAround(maximum, tolerance));
}
