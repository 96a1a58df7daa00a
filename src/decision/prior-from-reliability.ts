import { type Band, checkBand } from '../band/index.js';
import { fail, requireFinite, requireNonNegative, requirePositive } from '../checks/index.js';
import { normalUpperQuantile } from '../numeric/index.js';
import type { NormalPrior } from './prior.js';

/** How a reliability was found, and about which value the items lie. */
export interface ReliabilityOptions {
  /**
   * Standard uncertainty of the measurements that found it, in the unit of the band: their spread is then taken off.
   * Left out, the reliability is that of the items themselves.
   */
  readonly observedWith?: number;
  /** Mean of the items, in the unit of the band, inside the limit; only where there is one limit, and needed there. */
  readonly mean?: number;
}

/**
 * Normal prior from a reliability: the part of the items that was found in tolerance.
 *
 * With two limits the items are taken as centred. A reliability that was observed by measurements contains their
 * uncertainty too; simple acceptance is then meant.
 *
 * @param band Tolerance limits
 * @param inToleranceProbability Part of the items in tolerance, greater than 0, less than 1; more than 0.5 with one limit
 * @param options Uncertainty of the observation; mean, for a single limit
 * @returns A normal prior
 * @throws CalculationError `not-a-number`, `not-a-fraction`, `out-of-range`, `not-positive`, `negative`, `no-limits`,
 * `missing-member`, `contradiction` (a mean beside two limits; the uncertainty alone spreads more than was observed)
 * @source Definition
 * @example
 * ```ts
 * import { priorFromReliability } from 'esu-limits/decision';
 * const prior = priorFromReliability({ lower: 240, upper: 360 }, 0.9);
 * prior.mean; // → 300
 * prior.standardDeviation.toFixed(2); // → "36.48"
 * ```
 */
export function priorFromReliability(
  band: Band,
  inToleranceProbability: number,
  { observedWith = 0, mean }: ReliabilityOptions = {},
): NormalPrior {
  const { lower, upper } = checkBand(band);
  requireNonNegative(observedWith, 'observedWith');
  const isTwoSided = lower !== undefined && upper !== undefined;
  const outside = isTwoSided ? (1 - inToleranceProbability) / 2 : 1 - inToleranceProbability;
  const z = normalUpperQuantile(requireOutside(outside, inToleranceProbability));
  if (isTwoSided && mean !== undefined) {
    fail('contradiction', 'mean', mean, 'must be left out: with two limits the items lie about the middle');
  }
  const centre = isTwoSided ? lower + (upper - lower) / 2 : mean;
  const limit = upper ?? lower;
  if (limit === undefined) return fail('no-limits', 'band', band, 'must have a limit');
  if (centre === undefined) return fail('missing-member', 'mean', mean, 'must be given: a single limit has no middle');
  requireFinite(centre, 'mean');
  const inside = requirePositive(upper === undefined ? centre - limit : limit - centre, 'band: its width');
  const observed = inside / z;
  if (!(observed > observedWith)) {
    fail('contradiction', 'observedWith', observedWith, `must be less than ${observed}, the spread that was observed`);
  }
  const standardDeviation = Math.sqrt((observed - observedWith) * (observed + observedWith));
  return { kind: 'normal', mean: centre, standardDeviation };
}

function requireOutside(outside: number, inToleranceProbability: number): number {
  requireFinite(inToleranceProbability, 'inToleranceProbability');
  if (outside > 0 && outside < 0.5) return outside;
  if (inToleranceProbability > 1 || inToleranceProbability < 0) {
    const hint =
      inToleranceProbability > 1
        ? `If ${inToleranceProbability} % is meant, give ${inToleranceProbability / 100}.`
        : undefined;
    fail('not-a-fraction', 'inToleranceProbability', inToleranceProbability, 'must be a fraction from 0 to 1', hint);
  }
  return fail(
    'out-of-range',
    'inToleranceProbability',
    inToleranceProbability,
    'must be greater than 0 and less than 1; with a single limit greater than 0.5',
  );
}
