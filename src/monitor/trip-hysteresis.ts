import type { DegreesOfFreedom } from '../uncertainty/index.js';
import { hysteresisFormula, hysteresisUncertaintyFormula, tripExpandedFormula } from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import type { BoxAccuracy } from './box.js';
import { type Coverage, factorAt } from './coverage.js';
import type { Monitor } from './monitor.js';
import type { DetailedPoint } from './trip-point.js';

/** Trip less release of one limit, in ohms. */
export interface HysteresisFound {
  readonly limit: 'lower' | 'upper' | 'rise';
  readonly baseline?: number;
  readonly value: number;
  readonly standardUncertainty: number;
  /** The lower of those of both points. */
  readonly degreesOfFreedom: DegreesOfFreedom;
  readonly expandedUncertainty: number;
  /** What the maker states, in ohms; `null` where it is not stated. */
  readonly stated: number | null;
}

/** The hysteresis of each limit that has both points. */
export function hysteresisOf(
  points: readonly DetailedPoint[],
  { lower, upper, rise, series }: Monitor,
  { relative = 0 }: BoxAccuracy,
  coverage: Coverage,
  working: Step[],
): HysteresisFound[] {
  return points.flatMap(({ point: trip, ownVariance, ownDegrees }) => {
    if (trip.event === 'release') return [];
    const { limit, baseline } = trip;
    const back = points.find(
      ({ point }) => point.event === 'release' && point.limit === limit && point.baseline === baseline,
    );
    if (back === undefined) return [];
    const release = back.point;
    const value = limit === 'lower' ? release.value - trip.value : trip.value - release.value;
    // Fixed errors of box and fixture are in both points and fall out; the part of the value is left of the difference.
    const u_b = (relative * Math.abs(value)) / Math.sqrt(3);
    const [u_1, u_2] = [Math.sqrt(ownVariance), Math.sqrt(back.ownVariance)];
    const standardUncertainty = Math.sqrt(u_1 * u_1 + u_2 * u_2 + u_b * u_b);
    const [R_1, R_2] = limit === 'lower' ? [release.value, trip.value] : [trip.value, release.value];
    working.push(
      step(hysteresisFormula, `hysteresis of ${limit}`, { R_1, R_2 }, value),
      step(
        hysteresisUncertaintyFormula,
        `hysteresis of ${limit}: standard uncertainty`,
        { u_1, u_2, u_b },
        standardUncertainty,
      ),
    );
    const degreesOfFreedom = fewer(ownDegrees, back.ownDegrees);
    const k = factorAt(coverage, degreesOfFreedom);
    const expandedUncertainty = k * standardUncertainty;
    working.push(
      step(
        tripExpandedFormula,
        `hysteresis of ${limit}: expanded uncertainty`,
        { k, u: standardUncertainty },
        expandedUncertainty,
        { unit: 'ohm' },
      ),
    );
    const ofRise =
      rise?.hysteresis === undefined
        ? null
        : rise.hysteresis * Math.max((baseline ?? 0) + (series?.resistance ?? 0), rise.floor ?? 0);
    const stated = limit === 'rise' ? ofRise : ((limit === 'lower' ? lower : upper)?.hysteresis ?? null);
    const blur = { standardUncertainty, degreesOfFreedom, expandedUncertainty };
    return [{ limit, ...(baseline === undefined ? {} : { baseline }), value, ...blur, stated }];
  });
}

function fewer(a: DegreesOfFreedom, b: DegreesOfFreedom): DegreesOfFreedom {
  return a === 'infinite' || (b !== 'infinite' && b < a) ? b : a;
}
