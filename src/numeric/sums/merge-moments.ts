import type { Moments } from './moments.js';

/**
 * Moments of two series taken together, from the moments of each: a long series needs no memory.
 *
 * @source T. F. Chan, G. H. Golub and R. J. LeVeque, American Statistician 37 (1983) 242
 */
export function mergeMoments(a: Moments, b: Moments): Moments {
  if (a.count === 0) return b;
  if (b.count === 0) return a;
  const count = a.count + b.count;
  const difference = b.mean - a.mean;
  return {
    count,
    mean: a.mean + difference * (b.count / count),
    squares: a.squares + b.squares + difference * difference * a.count * (b.count / count),
  };
}
