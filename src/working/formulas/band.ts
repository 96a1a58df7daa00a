import type { Formula } from '../formula.js';

/** Formulas of the room band/. */
export const limitBelowRelativeFormula = {
  id: 'limit-below-relative',
  symbol: 'x_lower',
  expression: 'N * (1 - r)',
  unit: 'any',
  inputs: { N: 'any', r: '1' },
  source: 'definition',
} as const satisfies Formula;

export const limitBelowAbsoluteFormula = {
  id: 'limit-below-absolute',
  symbol: 'x_lower',
  expression: 'N - a',
  unit: 'any',
  inputs: { N: 'any', a: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const limitBelowSumFormula = {
  id: 'limit-below-sum',
  symbol: 'x_lower',
  expression: 'N * (1 - r) - a',
  unit: 'any',
  inputs: { N: 'any', r: '1', a: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const limitBelowGreaterFormula = {
  id: 'limit-below-greater',
  symbol: 'x_lower',
  expression: 'min(N * (1 - r), N - a)',
  unit: 'any',
  inputs: { N: 'any', r: '1', a: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const limitAboveRelativeFormula = {
  id: 'limit-above-relative',
  symbol: 'x_upper',
  expression: 'N * (1 + r)',
  unit: 'any',
  inputs: { N: 'any', r: '1' },
  source: 'definition',
} as const satisfies Formula;

export const limitAboveAbsoluteFormula = {
  id: 'limit-above-absolute',
  symbol: 'x_upper',
  expression: 'N + a',
  unit: 'any',
  inputs: { N: 'any', a: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const limitAboveSumFormula = {
  id: 'limit-above-sum',
  symbol: 'x_upper',
  expression: 'N * (1 + r) + a',
  unit: 'any',
  inputs: { N: 'any', r: '1', a: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const limitAboveGreaterFormula = {
  id: 'limit-above-greater',
  symbol: 'x_upper',
  expression: 'max(N * (1 + r), N + a)',
  unit: 'any',
  inputs: { N: 'any', r: '1', a: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const limitAtFloorFormula = {
  id: 'limit-at-floor',
  symbol: 'x_lower',
  expression: 'max(x, f)',
  unit: 'any',
  inputs: { x: 'any', f: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const roundedUpFormula = {
  id: 'rounded-up',
  symbol: 'x_r',
  expression: 'ceil(x / q) * q',
  unit: 'any',
  inputs: { x: 'any', q: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const roundedDownFormula = {
  id: 'rounded-down',
  symbol: 'x_r',
  expression: 'floor(x / q) * q',
  unit: 'any',
  inputs: { x: 'any', q: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const roundedToNearestFormula = {
  id: 'rounded-to-nearest',
  symbol: 'x_r',
  expression: 'sign(x) * floor(abs(x) / q + 0.5) * q',
  unit: 'any',
  inputs: { x: 'any', q: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const middleOfLimitsFormula = {
  id: 'middle-of-limits',
  symbol: 'N',
  expression: '(x_l + x_u) / 2',
  unit: 'any',
  inputs: { x_l: 'any', x_u: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const geometricMiddleFormula = {
  id: 'geometric-middle',
  symbol: 'N',
  expression: 'sqrt(x_l * x_u)',
  unit: 'any',
  inputs: { x_l: 'any', x_u: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const nominalFromLowerFormula = {
  id: 'nominal-from-lower',
  symbol: 'N',
  expression: 'x / (1 - r)',
  unit: 'any',
  inputs: { x: 'any', r: '1' },
  source: 'definition',
} as const satisfies Formula;

export const nominalFromLowerAbsoluteFormula = {
  id: 'nominal-from-lower-absolute',
  symbol: 'N',
  expression: 'x + a',
  unit: 'any',
  inputs: { x: 'any', a: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const nominalFromLowerSumFormula = {
  id: 'nominal-from-lower-sum',
  symbol: 'N',
  expression: '(x + a) / (1 - r)',
  unit: 'any',
  inputs: { x: 'any', a: 'any', r: '1' },
  source: 'definition',
} as const satisfies Formula;

export const nominalFromLowerGreaterFormula = {
  id: 'nominal-from-lower-greater',
  symbol: 'N',
  expression: 'max(x / (1 - r), x + a)',
  unit: 'any',
  inputs: { x: 'any', a: 'any', r: '1' },
  source: 'definition',
} as const satisfies Formula;

export const nominalFromUpperFormula = {
  id: 'nominal-from-upper',
  symbol: 'N',
  expression: 'x / (1 + r)',
  unit: 'any',
  inputs: { x: 'any', r: '1' },
  source: 'definition',
} as const satisfies Formula;

export const nominalFromUpperAbsoluteFormula = {
  id: 'nominal-from-upper-absolute',
  symbol: 'N',
  expression: 'x - a',
  unit: 'any',
  inputs: { x: 'any', a: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const nominalFromUpperSumFormula = {
  id: 'nominal-from-upper-sum',
  symbol: 'N',
  expression: '(x - a) / (1 + r)',
  unit: 'any',
  inputs: { x: 'any', a: 'any', r: '1' },
  source: 'definition',
} as const satisfies Formula;

export const nominalFromUpperGreaterFormula = {
  id: 'nominal-from-upper-greater',
  symbol: 'N',
  expression: 'min(x / (1 + r), x - a)',
  unit: 'any',
  inputs: { x: 'any', a: 'any', r: '1' },
  source: 'definition',
} as const satisfies Formula;

export const lowestBeforeRoundingFormula = {
  id: 'lowest-before-rounding',
  symbol: 'x_0',
  expression: 'max(x - q / 2, 0)',
  unit: 'any',
  inputs: { x: 'any', q: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const highestBeforeRoundingFormula = {
  id: 'highest-before-rounding',
  symbol: 'x_1',
  expression: 'x + q / 2',
  unit: 'any',
  inputs: { x: 'any', q: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const lowestOfBothFormula = {
  id: 'lowest-of-both',
  symbol: 'N_0',
  expression: 'max(x, y)',
  unit: 'any',
  inputs: { x: 'any', y: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const highestOfBothFormula = {
  id: 'highest-of-both',
  symbol: 'N_1',
  expression: 'min(x, y)',
  unit: 'any',
  inputs: { x: 'any', y: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const toleranceBelowFormula = {
  id: 'implied-tolerance-below',
  symbol: 'r',
  expression: '(N - x) / N',
  unit: '1',
  inputs: { N: 'any', x: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const toleranceAboveFormula = {
  id: 'implied-tolerance-above',
  symbol: 'r',
  expression: '(x - N) / N',
  unit: '1',
  inputs: { N: 'any', x: 'any' },
  source: 'definition',
} as const satisfies Formula;
