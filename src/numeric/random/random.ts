import { requireInteger } from '../../checks/index.js';
import { jump } from './jump.js';
import { splitMix64 } from './split-mix-64.js';

/** A stream of random numbers: its seed, and the state that the drawing functions move on. */
export interface Random {
  /** The generator's published name. */
  readonly generator: 'xoshiro128++';
  /** The seed it was made from. */
  readonly seed: number;
  /** Number of the stream: streams of one seed are 2⁶⁴ draws apart. */
  readonly stream: number;
  /** Four words; never all 0. */
  readonly state: Int32Array;
}

/**
 * A stream of random numbers that depends on nothing but its seed: the same bits on every engine and in every version.
 *
 * The generator is xoshiro128++ with a period of 2¹²⁸ − 1, its state filled by SplitMix64 from the seed. Everything drawn
 * from it uses whole-number operations, + − × ÷ and square roots only, which IEEE 754 fixes to the last bit.
 *
 * @param seed Whole number from 0 to 2⁵³ − 1
 * @param stream Whole number from 0 to 9999; default 0
 * @throws CalculationError `not-a-number`, `not-an-integer`, `out-of-range`
 * @source D. Blackman and S. Vigna, Scrambled linear pseudorandom number generators, ACM Trans. Math. Softw. 47 (2021)
 */
export function createRandom(seed: number, stream = 0): Random {
  requireInteger(seed, 'seed', 0);
  requireInteger(stream, 'stream', 0, 9999);
  const [first, second] = splitMix64(seed, 2) as [bigint, bigint];
  const words = [first, first >> 32n, second, second >> 32n];
  const state = Int32Array.from(words, (word) => Number(BigInt.asIntN(32, word)));
  for (let i = 0; i < stream; i++) jump(state);
  return { generator: 'xoshiro128++', seed, stream, state };
}
