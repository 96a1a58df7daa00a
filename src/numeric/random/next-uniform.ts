import { nextWord } from './next-word.js';
import type { Random } from './random.js';

/**
 * A uniform number between 0 and 1, neither of which it ever is: an odd multiple of 2⁻⁵³, symmetric about ½.
 */
export function nextUniform(random: Random): number {
  const high = nextWord(random.state) >>> 6;
  const low = nextWord(random.state) >>> 6;
  return (high * 0x4000000 + low + 0.5) * 2.220446049250313e-16;
}
