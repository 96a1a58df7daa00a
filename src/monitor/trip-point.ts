import type { Band } from '../band/index.js';
import type { DegreesOfFreedom } from '../uncertainty/index.js';
import { tripFormula, tripMeanFormula } from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import { type BoxAccuracy, offBy } from './box.js';
import type { Coverage } from './coverage.js';
import type { Monitor } from './monitor.js';
import { type Outcome, outcomeOf, withoutVerdict } from './outcome.js';
import type { SweepEvent } from './sweep-events.js';
import { tripTolerance } from './trip-tolerance.js';
import { degreesOf, tripUncertainty } from './trip-uncertainty.js';

/** A trip or release point over all sweeps that found it; ohms as the monitor sees them. */
export interface TripPoint {
  readonly event: 'trip' | 'release';
  readonly limit: 'lower' | 'upper' | 'rise';
  /** Of a rise: the baseline that was set, in ohms. */
  readonly baseline?: number;
  /** Mean over the sweeps. */
  readonly value: number;
  /** The value of each sweep: the middle of the step in which it lies. */
  readonly values: readonly number[];
  /** Standard deviation of the values; `null` of a single sweep. */
  readonly repeatability: number | null;
  readonly standardUncertainty: number;
  /** Effective degrees of freedom: the repeatability has those of its sweeps, all else has infinitely many. */
  readonly degreesOfFreedom: DegreesOfFreedom;
  readonly coverageFactor: number;
  readonly expandedUncertainty: number;
  /** Where the maker states that it trips; `null` where nothing is stated, as of a release. */
  readonly nominal: number | null;
  /** Permitted trip points; a side that the maker does not state is absent, as are both of a release. */
  readonly tolerance: Band;
  readonly outcome: Outcome;
  /** Stretches about the limits of the tolerance in which a value gives no verdict. */
  readonly withoutVerdict: readonly Band[];
}

/** A point with what its hysteresis needs: step and mean blur of their own, not what trip and release share. */
export interface DetailedPoint {
  readonly point: TripPoint;
  readonly ownVariance: number;
  readonly ownDegrees: DegreesOfFreedom;
}

/** A point from all sweeps that found it. */
export function pointOf(
  group: readonly SweepEvent[],
  monitor: Monitor,
  accuracy: BoxAccuracy,
  coverage: Coverage,
  working: Step[],
): DetailedPoint {
  const { event, limit, baseline } = group[0] as SweepEvent;
  const what = `${limit} ${event}${baseline === undefined ? '' : ` from ${baseline} ohm`}`;
  const R_s = monitor.series?.resistance ?? 0;
  const values = group.map(({ before, at }) => {
    const value = (before + at) / 2 + R_s;
    working.push(step(tripFormula, `${what}, middle of its step`, { R_1: before, R_2: at, R_s }, value));
    return value;
  });
  const n = values.length;
  const sum = values.reduce((total, value) => total + value, 0);
  const value = sum / n;
  const squares = values.reduce((total, each) => total + (each - value) ** 2, 0);
  const repeatability = n > 1 ? Math.sqrt(squares / (n - 1)) : null;
  if (n > 1) working.push(step(tripMeanFormula, `${what}, mean over the sweeps`, { S: sum, n }, value));
  const stepWidth = Math.max(...group.map(({ before, at }) => Math.abs(at - before)));
  const ofMean = (repeatability ?? 0) / Math.sqrt(n);
  const { nominal, tolerance, baselineLimits } = tripTolerance({ event, limit, baseline }, monitor, accuracy, working);
  const uncertainty = tripUncertainty(
    {
      stepWidth,
      boxLimits: offBy(accuracy, value - R_s),
      seriesLimits: monitor.series?.limits ?? 0,
      ofMean,
      baselineLimits,
    },
    n,
    coverage,
    what,
  );
  const { working: steps, ...blur } = uncertainty;
  working.push(...steps);
  const { expandedUncertainty } = blur;
  const point: TripPoint = {
    event,
    limit,
    ...(baseline === undefined ? {} : { baseline }),
    value,
    values,
    repeatability,
    ...blur,
    nominal,
    tolerance,
    outcome: outcomeOf(tolerance, value, expandedUncertainty),
    withoutVerdict: withoutVerdict(tolerance, expandedUncertainty),
  };
  const ownVariance = (stepWidth * stepWidth) / 12 + ofMean * ofMean;
  return { point, ownVariance, ownDegrees: degreesOf(n, Math.sqrt(ownVariance), ofMean) };
}
