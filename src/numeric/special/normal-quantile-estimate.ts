/** √(−2 ln q) less the quantile, in powers of (r − 4)/(r + 4), for tails below ¼; made by coefficients.py. */
export const normalTailSeries = [
  0.5988070873201827, -0.7472110459303052, 0.34273105407076765, -0.25913253302705047, 0.1678217050942509,
  -0.15491718704455004, 0.13222036446617869, -0.07319738323354483, 0.0012676587055096868,
] as const;

/** Normal quantile of an upper tail of at most ¼, to about 4e-6: where the exact methods start. */
export function normalQuantileEstimate(upperTail: number): number {
  const r = Math.sqrt(-2 * Math.log(upperTail));
  const s = (r - 4) / (r + 4);
  let shift = 0;
  for (let k = normalTailSeries.length - 1; k >= 0; k--) shift = shift * s + (normalTailSeries[k] as number);
  return r - shift;
}
