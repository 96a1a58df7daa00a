import { fail } from '../../checks/index.js';

/** Derivatives of a function of one variable at 0, with an estimate of the error of the first. */
export interface Derivatives {
  readonly first: number;
  readonly second: number;
  readonly third: number;
  readonly firstError: number;
}

/**
 * Derivatives at 0 of an ordinary function by central differences, extrapolated to a step of zero (Ridders).
 * The variable is in standard uncertainties, so that the first step, 0.5, is of the size that matters.
 */
export function differentiate(g: (t: number) => number): Derivatives {
  const middle = g(0);
  const start = 0.5;
  const first = extrapolate(start, (h) => (g(h) - g(-h)) / (2 * h));
  const second = extrapolate(start, (h) => (g(h) - 2 * middle + g(-h)) / (h * h));
  const third = extrapolate(start, (h) => (g(2 * h) - 2 * g(h) + 2 * g(-h) - g(-2 * h)) / (2 * h * h * h));
  return { first: first.value, second: second.value, third: third.value, firstError: first.error };
}

const ratio = 1.4;
const rows = 12;

function extrapolate(start: number, difference: (h: number) => number): { value: number; error: number } {
  let h = start;
  let at = difference(h);
  // Near the edge of its domain the function may not exist at the first step.
  for (let i = 0; i < 40 && !Number.isFinite(at); i++) {
    h /= 2;
    at = difference(h);
  }
  if (!Number.isFinite(at)) fail('function-not-finite', 'model', at, 'must be finite around the values of the inputs');
  let before = [at];
  let best = { value: at, error: Number.POSITIVE_INFINITY };
  for (let i = 1; i < rows; i++) {
    h /= ratio;
    const row = [difference(h)];
    let factor = ratio * ratio;
    for (let j = 1; j <= i; j++) {
      const left = row[j - 1] as number;
      const above = before[j - 1] as number;
      const value = left + (left - above) / (factor - 1);
      row.push(value);
      factor *= ratio * ratio;
      const error = Math.max(Math.abs(value - left), Math.abs(value - above));
      if (error <= best.error) best = { value, error };
    }
    // The corner stops improving when rounding takes over.
    if (Math.abs((row[i] as number) - (before[i - 1] as number)) >= 2 * best.error) break;
    before = row;
  }
  return best;
}
