import type { Band } from '../band/index.js';
import { fail, requireNonNegative, requirePositive, type Warning } from '../checks/index.js';
import type { Step } from '../working/index.js';
import { type BoxAccuracy, checkAccuracy, offBy } from './box.js';
import { checkMonitor } from './check-monitor.js';
import type { Coverage } from './coverage.js';
import { finiteResult } from './finite-result.js';
import type { Monitor } from './monitor.js';
import { type Outcome, outcomeOf } from './outcome.js';
import { type MonitorSweep, type SweepEvent, sweepEvents, type UnchangedSweep } from './sweep-events.js';
import { type HysteresisFound, hysteresisOf } from './trip-hysteresis.js';
import { pointOf, type TripPoint } from './trip-point.js';
import { tripTolerance } from './trip-tolerance.js';

/** What the sweeps are compared with, and how well the bench knows its values. */
export interface TripBench {
  readonly monitor: Monitor;
  /** Accuracy of the box. */
  readonly accuracy: BoxAccuracy;
  /** Coverage factor of the expanded uncertainties, or what gives it for degrees of freedom; 2 unless stated. */
  readonly coverageFactor?: Coverage;
  /** How far a response time may be off, to either side, in seconds; 0 unless stated. */
  readonly timeLimits?: number;
}

/** Response times over all sweeps that have one, in seconds. */
export interface ResponseTimes {
  readonly shortest: number;
  readonly longest: number;
  readonly mean: number;
  readonly count: number;
  /** The longest against the maker's alarm delay. */
  readonly outcome: Outcome;
}

/** A sweep in which nothing changed, with what it says of the trip point. */
export interface UnchangedFinding extends UnchangedSweep {
  /** The last value as the monitor sees it, in ohms, with its standard uncertainty. */
  readonly seen: number;
  readonly standardUncertainty: number;
  /** Where the maker states that it trips; `null` of a release. */
  readonly nominal: number | null;
  /** Permitted trip points; a side that the maker does not state is absent, as are both of a release. */
  readonly tolerance: Band;
  /** `outside` where the last value lay surely beyond the tolerance, so that the monitor should have tripped. */
  readonly outcome: Outcome;
}

/** What the sweeps over a monitor give. */
export interface TripPoints {
  readonly points: readonly TripPoint[];
  readonly hysteresis: readonly HysteresisFound[];
  /** `null` where no sweep has a response time. */
  readonly response: ResponseTimes | null;
  readonly unchanged: readonly UnchangedFinding[];
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/**
 * Trip and release points of a monitor from sweeps up and down, with their uncertainty.
 *
 * Going up, the upper limit (or the rise, of a sweep with a baseline) trips and the lower one releases; going down it is
 * the other way round. The point lies anywhere in its step, and box and fixture anywhere in their limits. A sweep that
 * never trips is a finding, and tells that the trip point lies beyond its last value.
 *
 * @param sweeps Sweeps in any order, several of a kind for the repeatability
 * @param bench The monitor, accuracy of the box, coverage factor
 * @returns Points, hysteresis, response times, what did not trip, steps
 * @throws CalculationError as `checkMonitor`; `wrong-count`, `sweep-turns`, `negative`, `not-a-number`, `not-positive`,
 * `wrong-type`, `missing-member`, `not-a-fraction`, `result-out-of-range`
 * @source JCGM 100:2008, 4.3.7 (rectangular limits) and 5.1.2
 * @example
 * ```ts
 * import { tripPoints } from 'esu-limits/monitor';
 * const monitor = { kind: 'contact-quality', upper: { resistance: 135, tolerance: { absolute: 5 } } } as const;
 * const steps = [{ set: 130, alarm: false }, { set: 132, alarm: false }, { set: 134, alarm: true }];
 * const { points } = tripPoints([{ steps }], { monitor, accuracy: { relative: 0.005 } });
 * points; // → [{ event: "trip", limit: "upper", value: 133, outcome: "inside", … }]
 * ```
 */
export function tripPoints(sweeps: readonly MonitorSweep[], bench: TripBench): TripPoints {
  const { monitor, accuracy, coverageFactor = 2, timeLimits = 0 } = bench;
  checkMonitor(monitor);
  checkAccuracy(accuracy, 'accuracy');
  if (typeof coverageFactor === 'number') requirePositive(coverageFactor, 'coverageFactor');
  requireNonNegative(timeLimits, 'timeLimits');
  const { events, unchanged, warnings } = sweepEvents(sweeps);
  if (monitor.rise === undefined) {
    const index = sweeps.findIndex(({ baseline }) => baseline !== undefined);
    if (index >= 0) {
      const { baseline } = sweeps[index] as MonitorSweep;
      fail(
        'contradiction',
        `sweeps[${index}].baseline`,
        baseline,
        'must be absent of a monitor without a rule of a rise',
      );
    }
  }
  const groups = new Map<string, SweepEvent[]>();
  for (const event of events) {
    const key = `${event.limit} ${event.event} ${event.baseline}`;
    groups.set(key, [...(groups.get(key) ?? []), event]);
  }
  const working: Step[] = [];
  const detailed = [...groups.values()].map((group) => pointOf(group, monitor, accuracy, coverageFactor, working));
  return finiteResult({
    points: detailed.map(({ point }) => point),
    hysteresis: hysteresisOf(detailed, monitor, accuracy, coverageFactor, working),
    response: responseOf(events, monitor, timeLimits),
    unchanged: unchanged.map((sweep) => ({ ...sweep, ...silenceOf(sweep, monitor, accuracy) })),
    warnings,
    working,
  });
}

function responseOf(events: readonly SweepEvent[], { alarmDelay }: Monitor, timeLimits: number): ResponseTimes | null {
  const times = events.flatMap(({ responseTime }) => (responseTime === undefined ? [] : [responseTime]));
  if (times.length === 0) return null;
  const longest = Math.max(...times);
  const limits = alarmDelay === undefined ? {} : { upper: alarmDelay };
  return {
    shortest: Math.min(...times),
    longest,
    mean: times.reduce((total, time) => total + time, 0) / times.length,
    count: times.length,
    outcome: outcomeOf(limits, longest, timeLimits),
  };
}

/** What silence up to the last value says: only that the trip point lies beyond it. */
function silenceOf(
  { finding, limit, baseline, last }: UnchangedSweep,
  monitor: Monitor,
  accuracy: BoxAccuracy,
): Omit<UnchangedFinding, keyof UnchangedSweep> {
  const event = finding === 'never-trips' ? 'trip' : 'release';
  const { nominal, tolerance, baselineLimits } = tripTolerance({ event, limit, baseline }, monitor, accuracy, []);
  const seen = last + (monitor.series?.resistance ?? 0);
  const limits = [offBy(accuracy, last), monitor.series?.limits ?? 0, baselineLimits];
  const standardUncertainty = Math.hypot(...limits) / Math.sqrt(3);
  const off = limits.reduce((sum, part) => sum + part, 0);
  const end = limit === 'lower' ? tolerance.lower : tolerance.upper;
  const isBeyond = end !== undefined && (limit === 'lower' ? seen + off < end : seen - off > end);
  const outcome = end === undefined ? 'not-stated' : isBeyond ? 'outside' : 'no-verdict';
  return { seen, standardUncertainty, nominal, tolerance, outcome };
}
