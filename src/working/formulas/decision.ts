import type { Formula } from '../formula.js';

/** Formulas of the room decision/. */
export const guardBandFormula = {
  id: 'guard-band',
  symbol: 'w',
  expression: 'r * U',
  unit: 'any',
  inputs: { r: '1', U: 'any' },
  source: 'jcgm-106',
  clause: '8.3.2',
} as const satisfies Formula;

export const guardBandOutwardFormula = {
  id: 'guard-band-outward',
  symbol: 'w',
  expression: '-(r * U)',
  unit: 'any',
  inputs: { r: '1', U: 'any' },
  source: 'jcgm-106',
  clause: '8.3.3',
} as const satisfies Formula;

export const guardBandOfRiskFormula = {
  id: 'guard-band-of-risk',
  symbol: 'w',
  expression: 'z * u',
  unit: 'any',
  inputs: { z: '1', u: 'any' },
  source: 'jcgm-106',
  clause: '8.3',
} as const satisfies Formula;

export const acceptanceLowerFormula = {
  id: 'acceptance-lower',
  symbol: 'A_L',
  expression: 'T_L + w',
  unit: 'any',
  inputs: { T_L: 'any', w: 'any' },
  source: 'jcgm-106',
  clause: '8.3',
} as const satisfies Formula;

export const acceptanceUpperFormula = {
  id: 'acceptance-upper',
  symbol: 'A_U',
  expression: 'T_U - w',
  unit: 'any',
  inputs: { T_U: 'any', w: 'any' },
  source: 'jcgm-106',
  clause: '8.3',
} as const satisfies Formula;

export const acceptanceLowerRelativeFormula = {
  id: 'acceptance-lower-relative',
  symbol: 'A_L',
  expression: 'T_L / (1 - w)',
  unit: 'any',
  inputs: { T_L: 'any', w: '1' },
  source: 'jcgm-106',
  clause: '8.3.3, example',
} as const satisfies Formula;

export const acceptanceUpperRelativeFormula = {
  id: 'acceptance-upper-relative',
  symbol: 'A_U',
  expression: 'T_U / (1 + w)',
  unit: 'any',
  inputs: { T_U: 'any', w: '1' },
  source: 'jcgm-106',
  clause: '8.3.3, example',
} as const satisfies Formula;

export const testUncertaintyRatioFormula = {
  id: 'test-uncertainty-ratio',
  symbol: 'TUR',
  expression: '(T_U - T_L) / (2 * U)',
  unit: '1',
  inputs: { T_L: 'any', T_U: 'any', U: 'any' },
  source: 'ncsl-z540-3',
} as const satisfies Formula;

export const oneSidedUncertaintyRatioFormula = {
  id: 'test-uncertainty-ratio-one-sided',
  symbol: 'TUR',
  expression: 'abs(T - N) / U',
  unit: '1',
  inputs: { T: 'any', N: 'any', U: 'any' },
  source: 'common-practice',
} as const satisfies Formula;

export const managedRiskFormula = {
  id: 'managed-risk-multiplier',
  symbol: 'M',
  expression: '1.04 - exp(0.38 * log(TUR) - 0.54)',
  unit: '1',
  inputs: { TUR: '1' },
  source: 'dobbert-2008',
} as const satisfies Formula;

export const guardBandOfMultiplierFormula = {
  id: 'guard-band-of-multiplier',
  symbol: 'w',
  expression: 'max(M, 0) * U',
  unit: 'any',
  inputs: { M: '1', U: 'any' },
  source: 'dobbert-2008',
} as const satisfies Formula;

export const rootSumSquareFormula = {
  id: 'guard-band-root-sum-square',
  symbol: 'w',
  expression: 'U / (TUR + sqrt((TUR - 1) * (TUR + 1)))',
  unit: 'any',
  inputs: { TUR: '1', U: 'any' },
  source: 'guard-band-collection',
} as const satisfies Formula;

export const relaxedGuardBandFormula = {
  id: 'guard-band-relaxed',
  symbol: 'w',
  expression: 'max(1 - TUR / 4, 0) * U',
  unit: 'any',
  inputs: { TUR: '1', U: 'any' },
  source: 'guard-band-collection',
} as const satisfies Formula;

export const distanceToLowerFormula = {
  id: 'distance-to-lower',
  symbol: 'z_L',
  expression: '(y - T_L) / u',
  unit: '1',
  inputs: { y: 'any', T_L: 'any', u: 'any' },
  source: 'jcgm-106',
  clause: '7.3',
} as const satisfies Formula;

export const distanceToUpperFormula = {
  id: 'distance-to-upper',
  symbol: 'z_U',
  expression: '(T_U - y) / u',
  unit: '1',
  inputs: { y: 'any', T_U: 'any', u: 'any' },
  source: 'jcgm-106',
  clause: '7.3',
} as const satisfies Formula;

export const enNumberFormula = {
  id: 'en-number',
  symbol: 'E_n',
  expression: '(x - X) / sqrt(U_x^2 + U_X^2)',
  unit: '1',
  inputs: { x: 'any', X: 'any', U_x: 'any', U_X: 'any' },
  source: 'iso-13528',
} as const satisfies Formula;

export const zetaScoreFormula = {
  id: 'zeta-score',
  symbol: 'zeta',
  expression: '(x - X) / sqrt(u_x^2 + u_X^2)',
  unit: '1',
  inputs: { x: 'any', X: 'any', u_x: 'any', u_X: 'any' },
  source: 'iso-13528',
} as const satisfies Formula;
