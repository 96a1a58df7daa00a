import { fail, requireFinite } from '../../checks/index.js';

/** How closely `findRoot` works. */
export interface FindRootOptions {
  /** Largest error of the root relative to it; default 4.5e-16, which is rounding. */
  readonly relative?: number;
  /** Largest absolute error of the root; either of the two suffices; default 1e-300. */
  readonly absolute?: number;
  /** Largest number of steps; default 200, where halving alone would end after about 60 for most ranges. */
  readonly maximumSteps?: number;
}

/**
 * Zero of a continuous function between two values at which its signs differ, by inverse quadratic interpolation where
 * it is safe and halving where it is not (Chandrupatla's method).
 *
 * @param f The function
 * @param low One end of the range
 * @param high The other end
 * @throws CalculationError `no-sign-change`, `function-not-finite`, `not-converged`, `not-a-number`
 * @source T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145
 */
export function findRoot(f: (x: number) => number, low: number, high: number, options: FindRootOptions = {}): number {
  const { relative = 2 * Number.EPSILON, absolute = 1e-300, maximumSteps = 200 } = options;
  const at = (x: number): number => {
    const value = f(x);
    if (Number.isNaN(value)) fail('function-not-finite', 'f', value, `must be a number at x = ${x}`);
    return value;
  };
  // a is the newest end, b the other, c the one that a replaced.
  let a = requireFinite(high, 'high');
  let b = requireFinite(low, 'low');
  let fa = at(a);
  let fb = at(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) {
    fail('no-sign-change', 'f', fb, `must have opposite signs at ${low} and ${high}; it is ${fb} and ${fa}`);
  }
  let c = b;
  let fc = fb;
  let fraction = 0.5;
  for (let step = 0; step < maximumSteps; step++) {
    const x = a + fraction * (b - a);
    const fx = at(x);
    if (fx > 0 === fa > 0) {
      c = a;
      fc = fa;
    } else {
      c = b;
      b = a;
      fc = fb;
      fb = fa;
    }
    a = x;
    fa = fx;
    const best = Math.abs(fa) < Math.abs(fb) ? a : b;
    if (fa === 0) return a;
    const width = Math.abs(b - a);
    const tolerance = Math.max(absolute, relative * Math.abs(best)) / 2;
    if (width <= 2 * tolerance) return best;
    fraction = nextFraction(a, b, c, fa, fb, fc);
    const least = tolerance / width;
    fraction = Math.min(1 - least, Math.max(least, fraction));
  }
  return fail('not-converged', 'root', a, `the root was not found within ${maximumSteps} steps`);
}

/** Place of the next value between a and b: by interpolation where the three values are well placed, else the middle. */
function nextFraction(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  if (!(phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi)) return 0.5;
  const fraction = (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
  return Number.isFinite(fraction) ? fraction : 0.5;
}
