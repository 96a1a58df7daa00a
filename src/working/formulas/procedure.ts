import type { Formula } from '../formula.js';

/** Formulas of the room procedure/. */
export const powerOfSettingFormula = {
  id: 'power-of-setting',
  symbol: 'P',
  expression: 's',
  unit: 'W',
  inputs: { s: 'W' },
  source: 'definition',
} as const satisfies Formula;

export const statedPowerFormula = {
  id: 'stated-power',
  symbol: 'P',
  expression: 'P_stated',
  unit: 'W',
  inputs: { P_stated: 'W' },
  source: 'maker-sheet',
} as const satisfies Formula;

export const scaledPowerFormula = {
  id: 'power-scaled-with-setting',
  symbol: 'P',
  expression: 'P_c * s / s_c',
  unit: 'W',
  inputs: { P_c: 'W', s: 'any', s_c: 'any' },
  source: 'maker-sheet',
} as const satisfies Formula;

export const carriedPowerFormula = {
  id: 'power-carried-to-load',
  symbol: 'P',
  expression: 'P_a * P_cb / P_ca',
  unit: 'W',
  inputs: { P_a: 'W', P_ca: 'W', P_cb: 'W' },
  source: 'definition',
} as const satisfies Formula;

export const middleOfBandFormula = {
  id: 'middle-of-band',
  symbol: 'x_n',
  expression: '(x_l + x_u) / 2',
  unit: 'any',
  inputs: { x_l: 'any', x_u: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const differenceFormula = {
  id: 'difference',
  symbol: 'd',
  expression: 'x - y',
  unit: 'any',
  inputs: { x: 'any', y: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const relativeDifferenceFormula = {
  id: 'relative-difference',
  symbol: 'd_rel',
  expression: '(x - y) / y',
  unit: '1',
  inputs: { x: 'any', y: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const marginBelowFormula = {
  id: 'margin-below-nominal',
  symbol: 'm',
  expression: '(x - x_n) / (x_n - x_l)',
  unit: '1',
  inputs: { x: 'any', x_n: 'any', x_l: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const marginAboveFormula = {
  id: 'margin-above-nominal',
  symbol: 'm',
  expression: '(x - x_n) / (x_u - x_n)',
  unit: '1',
  inputs: { x: 'any', x_n: 'any', x_u: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const sourceCurrentRatioFormula = {
  id: 'source-current-ratio',
  symbol: 'g',
  expression: '(Z / R)^((s - 1) / 2) * cos(phi)^((abs(s) - 1) / 2)',
  unit: '1',
  inputs: { Z: 'ohm', R: 'ohm', s: '1', phi: 'rad' },
  source: 'definition',
} as const satisfies Formula;

export const readingRatioCurrentFormula = {
  id: 'reading-ratio-current',
  symbol: 'f_I',
  expression: 'g * k',
  unit: '1',
  inputs: { g: '1', k: '1' },
  source: 'definition',
} as const satisfies Formula;

export const readingRatioVoltageFormula = {
  id: 'reading-ratio-voltage',
  symbol: 'f_V',
  expression: 'g * k * Z / R',
  unit: '1',
  inputs: { g: '1', k: '1', Z: 'ohm', R: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const readingRatioPowerFormula = {
  id: 'reading-ratio-power',
  symbol: 'f_P',
  expression: '(g * k)^2 * X / R',
  unit: '1',
  inputs: { g: '1', k: '1', X: 'ohm', R: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const correctedValueFormula = {
  id: 'corrected-for-strays',
  symbol: 'x',
  expression: 'f * x_i',
  unit: 'any',
  inputs: { f: '1', x_i: 'any' },
  source: 'definition',
} as const satisfies Formula;
