import { fail, requireFinite, requireResult } from '../checks/index.js';
import { type Band, bandOf } from './band.js';
import { checkTolerance } from './check-tolerance.js';
import type { Sides, Tolerance } from './tolerance.js';
import { limitBy, sideRule } from './tolerance-side.js';

/**
 * The band of a tolerance around a nominal.
 * A side that the tolerance does not state is unlimited; a lower limit below the tolerance's floor is raised to it.
 *
 * @param nominal Nominal value, in any unit; 0 or more where the tolerance has a relative part
 * @param tolerance Relative part (a fraction of the nominal, 0–1), absolute part (in the unit of the nominal), or both
 * @returns Band, in the unit of the nominal
 * @throws CalculationError `not-a-number`, `negative`, `not-a-fraction`, `wrong-count` (no part, or a side in one part
 * only), `unknown-choice` (two parts and no rule), `out-of-range` (nominal below the floor), `result-out-of-range`
 * @source Definition of the tolerance
 * @accuracy Relative: within 2 units in the last place of each limit
 * @example
 * ```ts
 * import { bandAround } from 'esu-limits';
 * bandAround(120, { relative: 0.2 }); // → { "lower": 96, "upper": 144 }
 * bandAround(200, { relative: { below: 0.125, above: 0.25 } }); // → { "lower": 175, "upper": 250 }
 * bandAround(10, { relative: 0.25, absolute: 5, combine: 'greater' }); // → { "lower": 5, "upper": 15 }
 * bandAround(3, { absolute: 5, floor: 0 }); // → { "lower": 0, "upper": 8 }
 * bandAround(1200, { relative: { above: 0 } }); // → { "upper": 1200 }
 * ```
 */
export function bandAround(nominal: number, tolerance: Tolerance): Band {
  const { relative, absolute, floor } = tolerance;
  // By far the most common tolerance, a fraction alike on both sides, passes all checks below: one limit may be a call
  // of millions.
  if (absolute === undefined && floor === undefined && relative !== undefined && isPlain(nominal, relative)) {
    return { lower: nominal * (1 - relative), upper: nominal * (1 + relative) };
  }
  return bandBySides(nominal, tolerance);
}

function bandBySides(nominal: number, tolerance: Tolerance): Band {
  const { relative, floor } = tolerance;
  requireFinite(nominal, 'nominal');
  checkTolerance(tolerance);
  if (nominal < 0 && relative !== undefined) {
    fail('negative', 'nominal', nominal, 'must be 0 or more where the tolerance is a fraction of it');
  }
  if (floor !== undefined && nominal < floor) fail('out-of-range', 'nominal', nominal, `must not lie below ${floor}`);
  const below = sideRule(tolerance, 'below');
  const above = sideRule(tolerance, 'above');
  let lower = below && requireResult(limitBy(below, nominal), 'lower');
  if (lower !== undefined && floor !== undefined && lower < floor) lower = floor;
  return bandOf(lower, above && requireResult(limitBy(above, nominal), 'upper'));
}

function isPlain(nominal: number, relative: number | Sides): relative is number {
  return typeof relative === 'number' && relative >= 0 && relative <= 1 && nominal >= 0 && nominal < 1e300;
}
