import { fail } from '../../checks/index.js';
import { nextNormal } from './next-normal.js';
import { nextUniform } from './next-uniform.js';
import type { Random } from './random.js';
import { reproducibleExp } from './reproducible-exp.js';
import { reproducibleLog } from './reproducible-log.js';

/**
 * A number with the gamma distribution of a given shape and scale 1.
 *
 * @param shape 0.1 or more
 * @throws CalculationError `out-of-range`
 * @source G. Marsaglia and W. W. Tsang, A simple method for generating gamma variables, ACM Trans. Math. Softw. 26 (2000) 363
 */
export function nextGamma(random: Random, shape: number): number {
  if (!(shape >= 0.1)) fail('out-of-range', 'shape', shape, 'must be 0.1 or more');
  if (shape < 1) {
    const power = reproducibleExp(reproducibleLog(nextUniform(random)) / shape);
    return nextGamma(random, shape + 1) * power;
  }
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const z = nextNormal(random);
    const root = 1 + c * z;
    if (root <= 0) continue;
    const v = root * root * root;
    const u = nextUniform(random);
    const square = z * z;
    if (u < 1 - 0.0331 * square * square) return d * v;
    if (reproducibleLog(u) < 0.5 * square + d * (1 - v + reproducibleLog(v))) return d * v;
  }
}
