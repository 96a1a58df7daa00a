import { type Band, bandAround } from '../band/index.js';
import type { Warning } from '../checks/index.js';
import { openChallenges, pairOf, shortChallenges } from './alarm-challenges.js';
import type { ResistanceBox } from './box.js';
import { checkBox } from './box-values.js';
import type { MonitorChallenge, ReadingChallenge } from './challenge.js';
import { challengeWarnings } from './challenge-warnings.js';
import { checkMonitor } from './check-monitor.js';
import { finiteResult } from './finite-result.js';
import type { Monitor, MonitorLimit } from './monitor.js';
import { type ReadingLimits, readingRows } from './reading-rows.js';
import { risePlans } from './rise-plans.js';
import { sweepsOf } from './sweep-challenges.js';
import { planThreshold, type Setup, setAbove, setBelow, type ThresholdPlan } from './threshold-plan.js';

/** What to set, and what it can prove. */
export interface MonitorChallenges {
  /** One for each limit; of a rise one for each baseline. */
  readonly thresholds: readonly ThresholdPlan[];
  /** In an order of work: short, limits, open, rises, sweeps, readings. */
  readonly challenges: readonly MonitorChallenge[];
  /** Limits of the readings, with their working. */
  readonly readings: readonly ReadingLimits[];
  readonly warnings: readonly Warning[];
  /** What to mind at the bench, in sentences. */
  readonly cautions: readonly string[];
}

/**
 * Which resistances to set on a box to verify a monitor: what must and what must not alarm, sweeps up and down, baselines
 * for a rise, short and open circuit, readings of the display; and what this box cannot decide.
 *
 * A value is chosen only where the monitor surely sees it beyond the limit and its tolerance, however far box, lead and
 * fixture are off inside their limits. Between the two values nothing is decided: an alarm there is no fault.
 * The box must not change the resistance at the frequency of the monitor, and must take its current.
 *
 * @param monitor The monitor, with the maker's tolerances
 * @param box Substitution box or decade, with its accuracy
 * @returns Thresholds with what is proven, challenges, warnings
 * @throws CalculationError as `checkMonitor`; `wrong-count` (a box without values), `not-ascending`, `negative`,
 * `not-positive`, `band-reversed`, `missing-member`, `not-a-fraction`, `result-out-of-range`
 * @source Arithmetic of limits
 * @example
 * ```ts
 * import { challengesFor } from 'esu-limits/monitor';
 * const upper = { resistance: 135, tolerance: { absolute: 5 } };
 * const box = { step: 1, maximum: 999, accuracy: { relative: 0.01 } };
 * const { thresholds } = challengesFor({ kind: 'contact-quality', upper }, box);
 * thresholds.map(({ limit, mustNotAlarm, mustAlarm, status }) => [limit, mustNotAlarm, mustAlarm, status]);
 * // → [["upper", 128, 142, "verifiable"]]
 * ```
 */
export function challengesFor(monitor: Monitor, box: ResistanceBox): MonitorChallenges {
  const { lower, upper, rise, series, display } = checkMonitor(monitor);
  const { relative = 0, absolute = 0 } = checkBox(box).accuracy;
  const setup: Setup = {
    box,
    series: series?.resistance ?? 0,
    fixed: absolute + (series?.limits ?? 0),
    part: relative,
  };
  const [low, high] = [tripBand(lower), tripBand(upper)];
  const room: Band = {
    ...(low?.upper === undefined ? {} : { lower: setAbove(setup, low.upper) }),
    ...(high?.lower === undefined ? {} : { upper: setBelow(setup, high.lower) }),
  };
  const planOf = (limit: 'lower' | 'upper', stated: MonitorLimit | undefined, trip: Band | undefined) =>
    stated === undefined || trip === undefined
      ? []
      : [planThreshold(setup, { limit, trip, ...(stated.tolerance ? { tolerance: trip } : {}), room })];
  const rises = rise === undefined ? [] : risePlans(setup, rise, room);
  const thresholds = [...planOf('lower', lower, low), ...planOf('upper', upper, high), ...rises];
  const middle = rises[rises.length >> 1]?.baseline;
  const alarms = [
    ...shortChallenges(monitor, setup, low, high),
    ...thresholds.filter(({ limit }) => limit !== 'rise').flatMap((plan) => pairOf(plan, monitor)),
    ...openChallenges(monitor, middle),
    ...rises.flatMap((plan) => pairOf(plan, monitor)),
  ];
  const sweeps = thresholds.flatMap((plan) => sweepsOf(plan, monitor, setup));
  const sets = [...new Set(alarms.flatMap(({ set, kind }) => (set === 'open' || kind === 'must-alarm' ? [] : [set])))];
  const rows = sets.sort((a, b) => a - b).map((set) => ({ set }));
  const readings =
    display?.tolerance === undefined
      ? []
      : readingRows({
          rows,
          tolerance: display.tolerance,
          resolution: display.resolution,
          ...(series === undefined ? {} : { series }),
        });
  const shown = display === undefined ? [] : rows.map(({ set }, i) => readingAt(set, readings[i]?.limits));
  return finiteResult({
    thresholds,
    challenges: [...alarms, ...sweeps, ...shown],
    readings,
    warnings: challengeWarnings(monitor, thresholds, [...alarms, ...sweeps]),
    cautions,
  });
}

const cautions: readonly string[] = [
  'Connect and set resistances with the output off: an activation would send the HF current through box and leads.',
  'Activate only where the procedure of the maker calls for it, and touch neither box nor leads meanwhile.',
  'A box stands for the contact; it says nothing of an electrode on a patient.',
];

/** Trip points that the maker permits; the limit alone where no tolerance is stated. */
function tripBand(limit: MonitorLimit | undefined): Band | undefined {
  if (limit === undefined) return undefined;
  const { resistance, tolerance } = limit;
  return tolerance === undefined ? { lower: resistance, upper: resistance } : bandAround(resistance, tolerance);
}

function readingAt(set: number, limits: Band | undefined): ReadingChallenge {
  const reason = 'Read the display while the resistance is set.';
  return { kind: 'reading', set, ...(limits === undefined ? {} : { limits }), reason };
}
