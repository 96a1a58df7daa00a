import { logGammaNearTwo } from './log-gamma.js';

/** Gamma function for 0 < x ≤ 30: from Γ near 2 by the recurrence, so that no large logarithm costs digits. */
export function gamma(x: number): number {
  let factor = 1;
  let shifted = x;
  for (; shifted > 2.5; factor *= shifted) shifted -= 1;
  for (; shifted < 1.5; shifted += 1) factor /= shifted;
  return factor * Math.exp(logGammaNearTwo(shifted - 2));
}
