import { readFileSync } from 'node:fs';

/** Numbers from 0 to 1 that are the same at every run: a 32-bit linear congruential generator. */
export function uniform(count: number, seed = 1): Float64Array {
  let state = seed >>> 0;
  return Float64Array.from({ length: count }, () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return (state + 0.5) / 2 ** 32;
  });
}

/** Values spread evenly over the decades from `low` to `high`. */
export function logUniform(count: number, low: number, high: number, seed = 1): Float64Array {
  return uniform(count, seed).map((u) => low * (high / low) ** u);
}

/** Sum of all values: a run returns it, so that no value can be left out. */
export function sumOf(values: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i] as number;
  return sum;
}

/** Version of an installed package; of this one for its own name. */
export function versionOf(name: string): string {
  const path = name === 'esu-limits' ? 'package.json' : `node_modules/${name}/package.json`;
  return (JSON.parse(readFileSync(path, 'utf8')) as { version: string }).version;
}
