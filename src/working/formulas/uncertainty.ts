import type { Formula } from '../formula.js';

/** Formulas of the room uncertainty/. */
export const covarianceSpreadFormula = {
  id: 'covariance-spread',
  symbol: 'w',
  expression: '2 * V_11^2 + V_11 * V_22 + V_12^2 + 2 * V_22^2',
  unit: 'any',
  inputs: { V_11: 'any', V_12: 'any', V_22: 'any' },
  source: 'willink-hall-2002',
} as const satisfies Formula;

export const jointDegreesSumFormula = {
  id: 'joint-degrees-sum',
  symbol: 'S',
  expression: 'S_0 + w / nu',
  unit: 'any',
  inputs: { S_0: 'any', w: 'any', nu: '1' },
  source: 'willink-hall-2002',
} as const satisfies Formula;

export const jointDegreesFormula = {
  id: 'joint-degrees',
  symbol: 'nu_eff',
  expression: 'W / S',
  unit: '1',
  inputs: { W: 'any', S: 'any' },
  source: 'willink-hall-2002',
} as const satisfies Formula;

export const ellipseFactorFormula = {
  id: 'ellipse-factor',
  symbol: 'k',
  expression: 'sqrt(nu * expm1(-2 * log(1 - p) / (nu - 1)))',
  unit: '1',
  inputs: { p: '1', nu: '1' },
  source: 'hotelling-1931',
} as const satisfies Formula;

export const ellipseFactorNormalFormula = {
  id: 'ellipse-factor-normal',
  symbol: 'k',
  expression: 'sqrt(-2 * log(1 - p))',
  unit: '1',
  inputs: { p: '1' },
  source: 'jcgm-102',
  clause: '6.5',
} as const satisfies Formula;

export const ellipseMajorFormula = {
  id: 'ellipse-major',
  symbol: 'a',
  expression: 'k * sqrt((V_11 + V_22) / 2 + sqrt(((V_11 - V_22) / 2)^2 + V_12^2))',
  unit: 'any',
  inputs: { k: '1', V_11: 'any', V_12: 'any', V_22: 'any' },
  source: 'jcgm-102',
  clause: '6.5',
} as const satisfies Formula;

export const ellipseMinorFormula = {
  id: 'ellipse-minor',
  symbol: 'b',
  expression: 'k^2 * sqrt(max(V_11 * V_22 - V_12^2, 0)) / a',
  unit: 'any',
  inputs: { k: '1', a: 'any', V_11: 'any', V_12: 'any', V_22: 'any' },
  source: 'jcgm-102',
  clause: '6.5',
} as const satisfies Formula;

export const ellipseAngleFormula = {
  id: 'ellipse-angle',
  symbol: 'theta',
  expression: 'atan2(2 * V_12, V_11 - V_22) / 2',
  unit: 'rad',
  inputs: { V_11: 'any', V_12: 'any', V_22: 'any' },
  source: 'jcgm-102',
  clause: '6.5',
} as const satisfies Formula;
