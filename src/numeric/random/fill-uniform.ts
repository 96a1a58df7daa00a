import { nextUniform } from './next-uniform.js';
import type { Random } from './random.js';

/** Fills an array with uniform numbers between 0 and 1; the same numbers as `nextUniform` would give. */
export function fillUniform(random: Random, target: Float64Array): void {
  for (let i = 0; i < target.length; i++) target[i] = nextUniform(random);
}
