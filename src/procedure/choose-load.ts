import type { Bench, BenchLoad } from './bench.js';

/** A load of the bench for a wanted load. */
export interface ChosenLoad {
  readonly load: BenchLoad;
  /** Relative difference of its resistance from the wanted load. */
  readonly difference: number;
}

/** Largest relative difference of a stand-in that is accepted unless the bench states another. */
export const defaultMaximumDifference = 0.1;

/** Relative difference that is taken as none where no curve is published, unless the bench states another. */
export const defaultNegligibleDifference = 0.01;

/**
 * The load of the bench that is nearest to the wanted load by ratio; among equally near loads the first whose
 * rating takes the power, else the one that takes most. Undefined when none is near enough.
 */
export function chooseLoad(bench: Bench, wanted: number, power: number): ChosenLoad | undefined {
  const maximumDifference = bench.substitution?.maximumDifference ?? defaultMaximumDifference;
  const near = bench.loads
    .map((load) => ({
      load,
      difference: (load.resistance - wanted) / wanted,
      ratio: Math.abs(Math.log(load.resistance / wanted)),
    }))
    .filter((candidate) => Math.abs(candidate.difference) <= maximumDifference)
    .sort((a, b) => a.ratio - b.ratio);
  const nearest = near[0];
  if (nearest === undefined) return undefined;
  const equallyNear = near.filter((candidate) => candidate.ratio === nearest.ratio);
  const chosen =
    equallyNear.find((candidate) => candidate.load.powerRating >= power) ??
    equallyNear.reduce((best, candidate) => (shortRating(candidate.load) > shortRating(best.load) ? candidate : best));
  return { load: chosen.load, difference: chosen.difference };
}

/** The highest power that a load takes, if only for a short time. */
export function shortRating(load: BenchLoad): number {
  return Math.max(load.powerRating, load.overload?.power ?? 0);
}
