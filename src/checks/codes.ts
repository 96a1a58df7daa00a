/** What an error code means and what to do about it. */
export interface CodeEntry {
  /** What is wrong, in one sentence. */
  readonly cause: string;
  /** What would put it right. */
  readonly remedy: string;
}

/**
 * Every code that an error, a fault or a warning of this library can carry, with cause and remedy.
 * The list is the only place where codes are made: `CalculationErrorCode` is its set of keys.
 */
export const codeList = {
  'not-a-number': {
    cause: 'A value is not a finite number (it is missing, text, NaN or infinite).',
    remedy: 'Give a finite number in SI units.',
  },
  'not-positive': { cause: 'A value must be greater than zero.', remedy: 'Check the sign and the unit of the value.' },
  negative: { cause: 'A value must not be negative.', remedy: 'Check the sign of the value.' },
  'out-of-range': {
    cause: 'A value lies outside the range in which it has a meaning.',
    remedy: 'Give a value inside the range that the message states.',
  },
  'not-a-fraction': {
    cause: 'A relative value or a probability is not between 0 and 1.',
    remedy: 'Give a fraction: 20 % is 0.2.',
  },
  'not-an-integer': { cause: 'A count is not a whole number.', remedy: 'Give a whole number.' },
  'wrong-type': { cause: 'A value has another type than is needed.', remedy: 'Give the type that the message states.' },
  'unknown-choice': {
    cause: 'A word is not one of the allowed words.',
    remedy: 'Use one of the words that the message lists.',
  },
  'wrong-count': {
    cause: 'Too few or too many values were given.',
    remedy: 'Give the number of values that the message states.',
  },
  'not-ascending': {
    cause: 'Values that must rise strictly are unsorted or repeated.',
    remedy: 'Sort the values and remove repetitions.',
  },
  'band-reversed': { cause: 'A lower limit lies above its upper limit.', remedy: 'Exchange or correct the limits.' },
  'band-empty': {
    cause: 'No value lies between the limits (after rounding inward, or after intersection).',
    remedy: 'Use a finer resolution, or check that the limits belong to the same point.',
  },
  'limit-negative': {
    cause: 'The tolerance makes a limit negative in a quantity that cannot be negative.',
    remedy: 'Use a smaller tolerance, or state a physical floor by name.',
  },
  'result-out-of-range': {
    cause: 'The inputs are valid, but the result is too large or too small for a number.',
    remedy: 'Check the units of the inputs: such values do not occur on a bench.',
  },
} as const satisfies Record<string, CodeEntry>;

/** A code of the list: stable, in lower case with hyphens, meant for programs. */
export type CalculationErrorCode = keyof typeof codeList;
