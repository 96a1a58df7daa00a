import { fail, requireFraction, requireNonNegative, requirePositive, requireResult } from '../checks/index.js';
import type { DegreesOfFreedom } from '../uncertainty/index.js';
import { type Tails, tailsOf } from './tails.js';

/** The uncertainty of a measured value, as a budget or a certificate states it. */
export interface MeasurementUncertainty {
  /** Standard uncertainty, in the unit of the band, 0 or more. */
  readonly standardUncertainty?: number;
  /** Standard uncertainty as a fraction of the value, at most 1, in place of `standardUncertainty`: it then follows the value. */
  readonly relativeStandardUncertainty?: number;
  /** Expanded uncertainty, in the unit of the band; with `coverageFactor` it takes the place of the standard one. */
  readonly expandedUncertainty?: number;
  /** Coverage factor k of the expanded uncertainty U = k·u; there is no default. */
  readonly coverageFactor?: number;
  /** Degrees of freedom of the standard uncertainty; `infinite` (default) is the normal distribution. */
  readonly degreesOfFreedom?: DegreesOfFreedom;
}

/** An uncertainty that is checked and complete. */
export interface Spread {
  /** Standard uncertainty, in the unit of the band or as a fraction of the value. */
  readonly u: number;
  readonly isRelative: boolean;
  /** Expanded uncertainty, in the same terms; `undefined` where neither it nor a coverage factor is stated. */
  readonly expanded: number | undefined;
  readonly tails: Tails;
  readonly degreesOfFreedom: DegreesOfFreedom;
}

/** Takes standard and expanded uncertainty from whichever were stated. */
export function spreadOf(measurement: MeasurementUncertainty): Spread {
  const { standardUncertainty, relativeStandardUncertainty, expandedUncertainty, coverageFactor } = measurement;
  const { degreesOfFreedom = 'infinite' } = measurement;
  const tails = tailsOf(degreesOfFreedom);
  if (expandedUncertainty !== undefined) requireNonNegative(expandedUncertainty, 'expandedUncertainty');
  if (coverageFactor !== undefined) requirePositive(coverageFactor, 'coverageFactor');
  const rest = { tails, degreesOfFreedom };
  if (relativeStandardUncertainty !== undefined) {
    requireFraction(relativeStandardUncertainty, 'relativeStandardUncertainty');
    if (standardUncertainty !== undefined || expandedUncertainty !== undefined) {
      fail('contradiction', 'relativeStandardUncertainty', relativeStandardUncertainty, 'must stand alone or with k');
    }
    const expanded = expandedBy(coverageFactor, relativeStandardUncertainty);
    return { u: relativeStandardUncertainty, isRelative: true, expanded, ...rest };
  }
  if (standardUncertainty === undefined) {
    if (expandedUncertainty === undefined || coverageFactor === undefined) {
      const needed = 'must be given, or the expanded uncertainty with its coverage factor';
      return fail('missing-member', 'standardUncertainty', standardUncertainty, needed);
    }
    const u = requireResult(expandedUncertainty / coverageFactor, 'standardUncertainty');
    return { u, isRelative: false, expanded: expandedUncertainty, ...rest };
  }
  requireNonNegative(standardUncertainty, 'standardUncertainty');
  if (expandedUncertainty !== undefined && coverageFactor !== undefined) {
    fail('wrong-count', 'coverageFactor', coverageFactor, 'must be left out: U and u are given, and k is their ratio');
  }
  if (expandedUncertainty !== undefined && (expandedUncertainty === 0) !== (standardUncertainty === 0)) {
    fail(
      'contradiction',
      'expandedUncertainty',
      expandedUncertainty,
      'must be 0 where the standard one is, and only there',
    );
  }
  const expanded = expandedUncertainty ?? expandedBy(coverageFactor, standardUncertainty);
  return { u: standardUncertainty, isRelative: false, expanded, ...rest };
}

function expandedBy(coverageFactor: number | undefined, u: number): number | undefined {
  return coverageFactor === undefined ? undefined : requireResult(coverageFactor * u, 'expandedUncertainty');
}

/** The expanded uncertainty, which this rule needs. */
export function requireExpanded({ expanded }: Spread): number {
  return (
    expanded ??
    fail(
      'missing-member',
      'coverageFactor',
      expanded,
      'must be given, or the expanded uncertainty: this rule uses U = k·u',
    )
  );
}

/** The standard uncertainty in the unit of the band, which this rule needs. */
export function requireAbsolute({ u, isRelative }: Spread): number {
  if (!isRelative) return u;
  return fail(
    'missing-member',
    'standardUncertainty',
    undefined,
    'must be given in the unit of the band: this takes it as the same for every value',
    'Give the uncertainty of a reading at the tolerance limit.',
  );
}
