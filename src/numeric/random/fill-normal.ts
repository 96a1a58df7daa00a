import { outsideCore } from './next-normal.js';
import type { Random } from './random.js';
import { ziggurat } from './ziggurat.js';

/**
 * Fills an array with normal numbers of a given mean and standard deviation; standardised, the same numbers as
 * `nextNormal` would give.
 *
 * The generator's step is written out here, twice, with its state in local variables: this loop is most of the cost of a
 * Monte Carlo calculation.
 */
export function fillNormal(random: Random, target: Float64Array, mean = 0, standardDeviation = 1): void {
  const { scales, cores } = ziggurat();
  const { state } = random;
  let a = state[0] as number;
  let b = state[1] as number;
  let c = state[2] as number;
  let d = state[3] as number;
  for (let i = 0; i < target.length; ) {
    let sum = (a + d) | 0;
    const word = (((sum << 7) | (sum >>> 25)) + a) | 0;
    let shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    sum = (a + d) | 0;
    const low = (((sum << 7) | (sum >>> 25)) + a) | 0;
    shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    const layer = word & 255;
    const value = ((word >> 8) * 0x20000000 + (low >>> 3) + 0.5) * (scales[layer] as number);
    if (Math.abs(value) < (cores[layer] as number)) {
      target[i++] = mean + standardDeviation * value;
      continue;
    }
    state[0] = a;
    state[1] = b;
    state[2] = c;
    state[3] = d;
    const settled = outsideCore(random, layer, value);
    if (settled !== undefined) target[i++] = mean + standardDeviation * settled;
    a = state[0] as number;
    b = state[1] as number;
    c = state[2] as number;
    d = state[3] as number;
  }
  state[0] = a;
  state[1] = b;
  state[2] = c;
  state[3] = d;
}
