import { type Monitor, monitorStates } from 'esu-limits/monitor';
import type { BenchCase } from '../bench-case.js';
import { uniform, versionOf } from '../inputs.js';

const n = 10_000_000;
const interval = 0.01;
const [lower, upper, back] = [5, 135, 10];
const [fraction, backOfRise, floor] = [0.4, 0.1, 10];
const [alarmDelay, releaseDelay] = [0.5, 1];

const monitor: Monitor = {
  kind: 'contact-quality',
  lower: { resistance: lower, hysteresis: back },
  upper: { resistance: upper, hysteresis: back },
  rise: { fraction, hysteresis: backOfRise, baseline: 'lowest', floor },
  alarmDelay,
  releaseDelay,
};

/** Contact that wanders and is noisy, with an open or a short circuit for two seconds in each of a hundred stretches. */
function trace(): Float64Array {
  const noise = uniform(n, 3);
  const stretch = n / 100;
  return noise.map((u, i) => {
    const within = i % stretch;
    if (within > stretch - 200) return i % (2 * stretch) < stretch ? Number.POSITIVE_INFINITY : 0;
    return 60 + 20 * Math.sin(i / 400_000) + 10 * u;
  });
}

/** The loop that one writes for this one monitor, with the limits kept at hand; it checks nothing. */
function statesByHand(resistance: Float64Array): number[] {
  const times: number[] = [];
  let baseline = Number.NaN;
  let top = upper;
  let releaseTop = upper - back;
  let inAlarm = false;
  let since = -1;
  for (let i = 0; i < n; i++) {
    const x = resistance[i]!;
    if (!inAlarm) {
      if (x >= lower && x <= top) {
        since = -1;
        if (!(x >= baseline)) {
          baseline = x;
          const counted = Math.max(baseline, floor);
          top = Math.min(upper, counted * (1 + fraction));
          releaseTop = Math.min(upper - back, counted * (1 + fraction - backOfRise));
        }
        continue;
      }
      if (since < 0) since = i;
      if ((i - since) * interval < alarmDelay) continue;
      times.push(i * interval);
      inAlarm = true;
      since = -1;
    }
    if (x < lower + back || x > releaseTop) since = -1;
    else if (since < 0) since = i;
    if (since >= 0 && (i - since) * interval >= releaseDelay) {
      times.push(i * interval);
      inAlarm = false;
      since = -1;
    }
  }
  return times;
}

function statesByLibrary(resistance: Float64Array): number[] {
  const { alarms } = monitorStates(monitor, { interval, resistance });
  return alarms.flatMap(({ from, to }) => (to === null ? [from] : [from, to]));
}

const total = (times: readonly number[]): number => times.reduce((sum, time) => sum + time, times.length);

export const benchCase: BenchCase = {
  name: 'states of a monitor over a trace in a column, lowest baseline',
  n,
  goal: 2,
  // A time is a whole number of samples here, and a start plus a delay there.
  tolerance: 1e-11,
  contenders: () => {
    const resistance = trace();
    return [
      {
        tool: 'esu-limits',
        version: versionOf('esu-limits'),
        values: () => statesByLibrary(resistance),
        run: () => total(statesByLibrary(resistance)),
      },
      {
        tool: 'loop by hand, unchecked',
        version: '',
        values: () => statesByHand(resistance),
        run: () => total(statesByHand(resistance)),
      },
    ];
  },
};
