import type { Formula } from '../formula.js';

/** Formulas of the room leakage/. */
export const leakageLimitFromPowerFormula = {
  id: 'leakage-limit-from-power',
  symbol: 'I_max',
  expression: 'sqrt(q * P_r / R_N)',
  unit: 'A',
  inputs: { q: '1', P_r: 'W', R_N: 'ohm' },
  source: 'iec-60601-2-2-memory',
} as const satisfies Formula;

export const reactanceOfCapacitanceFormula = {
  id: 'reactance-of-capacitance',
  symbol: 'X_C',
  expression: '-1 / (2 * pi * f * C)',
  unit: 'ohm',
  inputs: { f: 'Hz', C: 'F' },
  source: 'definition',
} as const satisfies Formula;

export const leakageAtNominalFormula = {
  id: 'leakage-at-nominal',
  symbol: 'I_N',
  expression: 'I * (sqrt((R_s + R)^2 + X_s^2) / sqrt((R_s + R_N)^2 + X_s^2))',
  unit: 'A',
  inputs: { I: 'A', R_s: 'ohm', X_s: 'ohm', R: 'ohm', R_N: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const leakageHighestFormula = {
  id: 'leakage-highest',
  symbol: 'I_N',
  expression: 'I * max(1, R / R_N)',
  unit: 'A',
  inputs: { I: 'A', R: 'ohm', R_N: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const leakageLowestFormula = {
  id: 'leakage-lowest',
  symbol: 'I_low',
  expression: 'I * min(1, R / R_N)',
  unit: 'A',
  inputs: { I: 'A', R: 'ohm', R_N: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const partOfLimitFormula = {
  id: 'part-of-limit',
  symbol: 'm',
  expression: 'I / I_max',
  unit: '1',
  inputs: { I: 'A', I_max: 'A' },
  source: 'definition',
} as const satisfies Formula;

export const leakageFromStrayFormula = {
  id: 'leakage-from-stray',
  symbol: 'I',
  expression: 'V / sqrt(R^2 + (1 / (2 * pi * f * C))^2)',
  unit: 'A',
  inputs: { V: 'V', R: 'ohm', f: 'Hz', C: 'F' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const strayFromLeakageFormula = {
  id: 'stray-from-leakage',
  symbol: 'C',
  expression: '1 / (2 * pi * f * sqrt(V / I - R) * sqrt(V / I + R))',
  unit: 'F',
  inputs: { V: 'V', I: 'A', R: 'ohm', f: 'Hz' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const wireOverPlaneFormula = {
  id: 'wire-over-plane',
  symbol: 'C_l',
  expression: '2 * pi * 8.8541878128e-12 * epsilon_r / acosh(2 * h / d)',
  unit: 'F/m',
  inputs: { epsilon_r: '1', h: 'm', d: 'm' },
  source: 'definition',
} as const satisfies Formula;

export const leadCapacitanceFormula = {
  id: 'lead-capacitance',
  symbol: 'C',
  expression: 'C_l * l',
  unit: 'F',
  inputs: { C_l: 'F/m', l: 'm' },
  source: 'definition',
} as const satisfies Formula;
