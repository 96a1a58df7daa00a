import { nextWord } from './next-word.js';

/** The polynomial that stands for 2⁶⁴ steps, lowest power first. */
const polynomial = [0x8764000b, 0xf542d2d3, 0x6fa035c3, 0x77f2db5b] as const;

/**
 * Moves a state on by 2⁶⁴ draws: the start of the next stream.
 *
 * @source D. Blackman and S. Vigna, ACM Trans. Math. Softw. 47 (2021): the polynomial of xoshiro128
 */
export function jump(state: Int32Array): void {
  const sum = new Int32Array(4);
  for (const word of polynomial) {
    for (let bit = 0; bit < 32; bit++) {
      if ((word >>> bit) & 1) for (let i = 0; i < 4; i++) sum[i] = (sum[i] as number) ^ (state[i] as number);
      nextWord(state);
    }
  }
  state.set(sum);
}
