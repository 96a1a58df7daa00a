import { fail, requireAscending, requireNonNegative } from '../../checks/index.js';
import { kronrodStretch, type Stretch } from './kronrod-stretch.js';
import { mapRange } from './map-range.js';

/** How closely `integrate` works, and where it is to cut. */
export interface IntegrateOptions {
  /** Largest error relative to the integral; default 1e-10. */
  readonly relative?: number;
  /** Largest absolute error; either of the two suffices; default 0. */
  readonly absolute?: number;
  /** Largest number of evaluations of the integrand; default 20 000. */
  readonly maximumEvaluations?: number;
  /** Places inside the range where the integrand bends or steps, ascending. */
  readonly breakpoints?: readonly number[];
}

/** An integral and what is known of its error. */
export interface Integral {
  readonly value: number;
  /** Estimate of the absolute error, usually far too large. */
  readonly error: number;
  /** Number of evaluations of the integrand. */
  readonly evaluations: number;
}

/**
 * Integral of a function over a finite or infinite range, by Gauss–Kronrod rules on stretches of which the worst is
 * halved until the sum of the errors is small enough.
 *
 * The outermost stretches of an infinite range are mapped to finite ones, about the last breakpoint or about 0, in which
 * one is a natural step. A peak that is narrow beside its stretch can be missed, as by any rule that samples: name its
 * place, and better its flanks, by breakpoints.
 *
 * @param f The integrand: finite everywhere inside the range
 * @param from Lower limit, or −infinity
 * @param to Upper limit, or infinity; the limits may be exchanged, which changes the sign
 * @throws CalculationError `not-converged`, `function-not-finite`, `not-a-number`, `not-ascending`, `out-of-range`
 * @source R. Piessens and others, QUADPACK (1983): the strategy; the rule computed anew
 */
export function integrate(
  f: (x: number) => number,
  from: number,
  to: number,
  options: IntegrateOptions = {},
): Integral {
  if (Number.isNaN(from)) fail('not-a-number', 'from', from, 'must be a number or infinite');
  if (Number.isNaN(to)) fail('not-a-number', 'to', to, 'must be a number or infinite');
  if (from === to) return { value: 0, error: 0, evaluations: 0 };
  if (from > to) {
    const reversed = integrate(f, to, from, options);
    return { ...reversed, value: -reversed.value };
  }
  const { relative = 1e-10, absolute = 0, maximumEvaluations = 20_000, breakpoints = [] } = options;
  requireNonNegative(relative, 'relative');
  requireNonNegative(absolute, 'absolute');
  const cuts = [from, ...breakpoints, to];
  requireAscending(cuts, 'breakpoints');
  const stretches: Stretch[] = [];
  for (let i = 1; i < cuts.length; i++) {
    const map = mapRange(cuts[i - 1] as number, cuts[i] as number);
    stretches.push(kronrodStretch(f, map, map.start, map.end));
  }
  let evaluations = 21 * stretches.length;
  for (;;) {
    const value = total(stretches, 'value');
    const error = total(stretches, 'error');
    if (error <= Math.max(absolute, relative * Math.abs(value))) return { value, error, evaluations };
    if (evaluations + 42 > maximumEvaluations) {
      fail(
        'not-converged',
        'integral',
        value,
        `the estimated error ${error} is above what was asked for after ${evaluations} evaluations`,
      );
    }
    const worst = stretches.reduce((a, b) => (b.error > a.error ? b : a));
    const middle = (worst.from + worst.to) / 2;
    stretches.splice(
      stretches.indexOf(worst),
      1,
      kronrodStretch(f, worst.map, worst.from, middle),
      kronrodStretch(f, worst.map, middle, worst.to),
    );
    evaluations += 42;
  }
}

function total(stretches: readonly Stretch[], member: 'value' | 'error'): number {
  let sum = 0;
  for (const stretch of stretches) sum += stretch[member];
  return sum;
}
