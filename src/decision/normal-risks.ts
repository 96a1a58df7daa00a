import { normalSurvival } from '../numeric/index.js';
import { jointProbability } from './joint-probability.js';
import { normalSplit } from './normal-split.js';
import type { NormalPrior } from './prior.js';
import type { PriorShape } from './prior-shape.js';
import type { Range } from './range.js';

/** Both risks of a normal prior and an uncertainty above 0, by the bivariate normal distribution. */
export function normalRisks(
  { from, to }: Range,
  readings: Range,
  { mean, standardDeviation }: NormalPrior,
  shape: PriorShape,
  u: number,
): { readonly consumerRisk: number; readonly producerRisk: number } {
  const infinity = Number.POSITIVE_INFINITY;
  const ratio = u / standardDeviation;
  const spread = Math.hypot(standardDeviation, u);
  const root = Math.hypot(1, ratio);
  /** 1 − ρ and √((1 − ρ)/(1 + ρ)), without cancellation. */
  const defect = (ratio / root) * (ratio / (1 + root));
  const end = ratio / (1 + root);

  /** Probability of a quantity above a limit and a reading below one; for side −1, the other way round. */
  const split = (limit: number, reading: number, side: 1 | -1, beside = 0): number => {
    if (side * limit === infinity || side * reading === -infinity) return 0;
    const h = (side * (limit - mean)) / standardDeviation;
    const k = (side * (reading - mean)) / spread;
    if (h === -infinity) return normalSurvival(-k);
    if (k === infinity) return normalSurvival(h);
    // Where ρ is near 1 the difference of h and k would have lost its digits.
    const near = side * ((limit - reading) / standardDeviation + ((reading - mean) / standardDeviation) * defect);
    return normalSplit(h, ratio < 1 ? near : h - k, end, beside);
  };

  /** The part of a split that a second limit leaves, or the integral itself where the difference would lose digits. */
  const left = (
    whole: number,
    [limit, reading, side]: readonly [number, number, 1 | -1],
    quantity: Range,
    rest: Range,
  ): number => {
    const other = whole === 0 ? 0 : split(limit, reading, side, whole);
    return other > whole / 8 ? jointProbability(shape, quantity, rest, u) : whole - other;
  };

  const below = { from: -infinity, to: from };
  const above = { from: to, to: infinity };
  const inside = { from, to };
  return {
    consumerRisk:
      left(split(to, readings.to, 1), [to, readings.from, 1], above, readings) +
      left(split(from, readings.from, -1), [from, readings.to, -1], below, readings),
    producerRisk:
      left(split(to, readings.to, -1), [from, readings.to, -1], inside, { from: readings.to, to: infinity }) +
      left(split(from, readings.from, 1), [to, readings.from, 1], inside, { from: -infinity, to: readings.from }),
  };
}
