import { CalculationError, describe } from './calculation-error.js';
import type { CalculationErrorCode } from './codes.js';

/** Throws a `CalculationError`; the one place where the core does so. */
export function fail(
  code: CalculationErrorCode,
  path: string,
  received: unknown,
  requirement: string,
  hint?: string,
): never {
  throw new CalculationError({
    code,
    path,
    received: describe(received),
    requirement,
    ...(hint === undefined ? {} : { hint }),
  });
}

/** A finite number, or an error. */
export function requireFinite(value: number, path: string): number {
  if (typeof value !== 'number' || !Number.isFinite(value))
    fail('not-a-number', path, value, 'must be a finite number');
  return value;
}

/** A finite number above zero, or an error. */
export function requirePositive(value: number, path: string): number {
  // Comparisons let every good value through: NaN fails the first, infinity the second. The fault is found elsewhere,
  // so that engines put this small function in its callers.
  return typeof value === 'number' && value > 0 && value < Number.POSITIVE_INFINITY ? value : notPositive(value, path);
}

function notPositive(value: number, path: string): never {
  return fail('not-positive', path, requireFinite(value, path), 'must be greater than 0');
}

/** A finite number of zero or more, or an error. */
export function requireNonNegative(value: number, path: string): number {
  if (typeof value === 'number' && value >= 0 && value < Number.POSITIVE_INFINITY) return value;
  requireFinite(value, path);
  return fail('negative', path, value, 'must be 0 or more');
}

/** A finite number not below a minimum, or an error. */
export function requireAtLeast(value: number, minimum: number, path: string): number {
  requireFinite(value, path);
  if (value < minimum) fail('out-of-range', path, value, `must be ${minimum} or more`);
  return value;
}

/** A fraction from 0 to 1, or an error; a value above 1 gets the hint that percent is not a fraction. */
export function requireFraction(value: number, path: string): number {
  requireFinite(value, path);
  if (value >= 0 && value <= 1) return value;
  return fail(
    'not-a-fraction',
    path,
    value,
    'must be a fraction from 0 to 1',
    value > 1 && value <= 100 ? `If ${value} % is meant, give ${value / 100}.` : undefined,
  );
}

/** A whole number inside a range, or an error. */
export function requireInteger(
  value: number,
  path: string,
  minimum: number,
  maximum = Number.MAX_SAFE_INTEGER,
): number {
  requireFinite(value, path);
  if (!Number.isInteger(value)) fail('not-an-integer', path, value, 'must be a whole number');
  if (value < minimum || value > maximum) {
    fail('out-of-range', path, value, `must be from ${minimum} to ${maximum}`);
  }
  return value;
}

/** One of the allowed words, or an error that lists them. */
export function requireChoice<T extends string>(value: T, path: string, choices: readonly T[]): T {
  if (!choices.includes(value)) fail('unknown-choice', path, value, `must be one of: ${choices.join(', ')}`);
  return value;
}

/** Values that rise strictly, or an error that names the first that does not. */
export function requireAscending(values: ArrayLike<number>, path: string): void {
  for (let i = 1; i < values.length; i++) {
    if (!((values[i] as number) > (values[i - 1] as number))) {
      fail('not-ascending', `${path}[${i}]`, values[i], `must be greater than the value before it, ${values[i - 1]}`);
    }
  }
}

/** A result that a number can hold, or an error: nothing that is not finite leaves a public function. */
export function requireResult(value: number, path: string): number {
  return Number.isFinite(value) ? value : failResult(value, path);
}

/** The smallest number that still has all its digits. */
const smallestFullNumber = 2.2250738585072014e-308;

/** Whether a value is above zero and a number that holds all its digits: it neither overflowed nor faded to 0. */
export function isFullNumber(value: number): boolean {
  return value >= smallestFullNumber && value < Number.POSITIVE_INFINITY;
}

/** A result above zero that a number holds with all its digits, or an error. */
export function requirePositiveResult(value: number, path: string): number {
  return isFullNumber(value) ? value : failResult(value, path);
}

function failResult(value: number, path: string): never {
  return fail(
    'result-out-of-range',
    path,
    value,
    'the result is outside the range of numbers',
    'Check the units of the inputs.',
  );
}
