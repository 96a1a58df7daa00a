import { fail, requireFinite } from '../../checks/index.js';

/** How closely `minimise` works. */
export interface MinimiseOptions {
  /** Error of the place relative to its size; default 1.5e-8: closer than that the function itself shows no difference. */
  readonly relative?: number;
  /** Absolute error of the place, added to the relative one; default 1e-12 of the width of the range. */
  readonly absolute?: number;
  /** Largest number of steps; default 500. */
  readonly maximumSteps?: number;
}

/** Where a function is least, and how small it is there. */
export interface Minimum {
  readonly place: number;
  readonly value: number;
}

/** The smaller part of the golden section. */
const golden = (3 - Math.sqrt(5)) / 2;

/**
 * Smallest value of a function with one minimum between two ends: parabolas through the three best values where they
 * help, golden section where they do not (Brent's method).
 *
 * @throws CalculationError `function-not-finite`, `not-converged`, `not-a-number`
 * @source R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 5
 */
export function minimise(f: (x: number) => number, from: number, to: number, options: MinimiseOptions = {}): Minimum {
  let low = Math.min(requireFinite(from, 'from'), requireFinite(to, 'to'));
  let high = Math.max(from, to);
  const { relative = 1.5e-8, absolute = 1e-12 * (high - low), maximumSteps = 500 } = options;
  const at = (x: number): number => {
    const value = f(x);
    if (Number.isNaN(value)) fail('function-not-finite', 'f', value, `must be a number at x = ${x}`);
    return value;
  };
  let best = low + golden * (high - low);
  let second = best;
  let third = best;
  let valueBest = at(best);
  let valueSecond = valueBest;
  let valueThird = valueBest;
  let move = 0;
  let moveBefore = 0;
  for (let step = 0; step < maximumSteps; step++) {
    const middle = (low + high) / 2;
    const tolerance = relative * Math.abs(best) + absolute;
    if (Math.abs(best - middle) <= 2 * tolerance - (high - low) / 2) return { place: best, value: valueBest };
    const r = (best - second) * (valueBest - valueThird);
    const q = (best - third) * (valueBest - valueSecond);
    const numerator = (best - third) * q - (best - second) * r;
    const denominator = 2 * (q - r);
    const parabola = denominator === 0 ? Number.NaN : -numerator / denominator;
    const inside = best + parabola > low + 2 * tolerance && best + parabola < high - 2 * tolerance;
    if (inside && Math.abs(parabola) < Math.abs(moveBefore) / 2 && Math.abs(moveBefore) > tolerance) {
      moveBefore = move;
      move = parabola;
    } else {
      moveBefore = best < middle ? high - best : low - best;
      move = golden * moveBefore;
    }
    const x = best + (Math.abs(move) >= tolerance ? move : Math.sign(move) * tolerance);
    const value = at(x);
    if (value <= valueBest) {
      if (x < best) high = best;
      else low = best;
      [third, second, best] = [second, best, x];
      [valueThird, valueSecond, valueBest] = [valueSecond, valueBest, value];
    } else {
      if (x < best) low = x;
      else high = x;
      if (value <= valueSecond || second === best) {
        [third, second] = [second, x];
        [valueThird, valueSecond] = [valueSecond, value];
      } else if (value <= valueThird || third === best || third === second) {
        third = x;
        valueThird = value;
      }
    }
  }
  return fail('not-converged', 'minimum', best, `the minimum was not found within ${maximumSteps} steps`);
}
