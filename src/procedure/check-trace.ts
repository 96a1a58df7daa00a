import { fail, requireAscending, requireChoice, requireFinite, requireNonNegative } from '../checks/index.js';
import { alarmReasons } from '../monitor/index.js';
import type { MonitorTrace } from './readings.js';

/** A trace whose columns belong together and whose alarms lie on it, or an error that names the member. */
export function checkTrace({ phase, of, time, resistance, end, startsIn, alarms }: MonitorTrace): void {
  requireChoice(phase, 'phase', ['as-found', 'as-left']);
  requireChoice(of, 'of', ['set', 'displayed']);
  requireChoice(startsIn ?? 'accepted', 'startsIn', ['accepted', 'alarm']);
  if (time.length === 0) fail('wrong-count', 'time', time, 'must have at least one time');
  if (resistance.length !== time.length) {
    fail('wrong-count', 'resistance', resistance.length, `must have as many values as the time, ${time.length}`);
  }
  time.forEach((t, i) => {
    requireFinite(t, `time[${i}]`);
  });
  requireAscending(time, 'time');
  resistance.forEach((R, i) => {
    if (R !== 'open') requireNonNegative(R, `resistance[${i}]`);
  });
  const [start, last] = [time[0] as number, time.at(-1) as number];
  const stop = requireFinite(end ?? last, 'end');
  if (stop < last) fail('out-of-range', 'end', stop, `must not lie before the last time, ${last}`);
  let before = start;
  alarms.forEach(({ from, to, reason }, i) => {
    const path = `alarms[${i}]`;
    if (reason !== undefined) requireChoice(reason, `${path}.reason`, alarmReasons);
    if (requireFinite(from, `${path}.from`) > stop) fail('out-of-range', `${path}.from`, from, 'must lie on the trace');
    if (from < before) fail('not-ascending', `${path}.from`, from, `must not lie before ${before}`);
    if (to === undefined) {
      if (i < alarms.length - 1)
        fail('missing-member', `${path}.to`, to, 'must be given, because another alarm follows');
      return;
    }
    if (requireFinite(to, `${path}.to`) > stop) fail('out-of-range', `${path}.to`, to, 'must lie on the trace');
    if (to < from) fail('not-ascending', `${path}.to`, to, `must not lie before its beginning, ${from}`);
    before = to;
  });
}
