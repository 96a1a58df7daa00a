import { requireProbability } from '../require-probability.js';
import { erf } from '../special/erf.js';
import { erfcx } from '../special/erfcx.js';
import { expMinusHalfSquare } from '../special/exp-minus-half-square.js';
import { normalQuantileEstimate } from '../special/normal-quantile-estimate.js';

/** z/c in powers of c², c = ½ − q, for tails above ¼; made by coefficients.py. */
export const normalMiddleSeries = [
  2.506628243544595, 2.6249700667019904, 5.766171053771848, 16.083955598936367, 35.050786938231035, 298.22311466728013,
] as const;

/**
 * The value that a standard normal variable exceeds with a given probability.
 *
 * A polynomial gives six digits; one step of third order on the tail itself, relative to the density, gives the rest.
 *
 * @param upperTail Probability above the value, greater than 0 and less than 1, down to 5e-324
 * @throws CalculationError `not-a-number`, `not-a-fraction`, `out-of-range`
 * @source NIST DLMF 7.17(iii) for the inverse series that the step sums
 * @accuracy Relative error below 7e-16 down to 1e-300, measured against 40 digits
 */
export function normalUpperQuantile(upperTail: number): number {
  requireProbability(upperTail, 'upperTail');
  if (upperTail > 0.5) return -normalUpperQuantile(1 - upperTail);
  return upperTail < 0.25 ? inTail(upperTail) : inMiddle(0.5 - upperTail);
}

function inTail(upperTail: number): number {
  const z = normalQuantileEstimate(upperTail);
  const mills = Math.sqrt(Math.PI / 2) * erfcx(z * Math.SQRT1_2);
  return stepped(z, mills - (upperTail * Math.sqrt(2 * Math.PI)) / expMinusHalfSquare(z));
}

/** The quantile from c = ½ − q, whose digits count near the middle. */
function inMiddle(c: number): number {
  const square = c * c;
  let slope = 0;
  for (let k = normalMiddleSeries.length - 1; k >= 0; k--) slope = slope * square + (normalMiddleSeries[k] as number);
  const z = c * slope;
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return stepped(z, (c - 0.5 * erf(z * Math.SQRT1_2)) / density);
}

/** z after the inverse series in the defect of the probability, divided by the density. */
function stepped(z: number, defect: number): number {
  return z + defect * (1 + defect * (z / 2 + (defect * (2 * z * z + 1)) / 6));
}
