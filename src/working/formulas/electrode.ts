import type { Formula } from '../formula.js';

/** Formulas of the room electrode/. */
export const heatingFactorAddedFormula = {
  id: 'heating-factor-added',
  symbol: 'H',
  expression: 'H_0 + I^2 * t',
  unit: 'A^2 s',
  inputs: { H_0: 'A^2 s', I: 'A', t: 's' },
  source: 'definition',
} as const satisfies Formula;

export const partOfHeatingFigureFormula = {
  id: 'part-of-heating-figure',
  symbol: 'm',
  expression: 'H / H_max',
  unit: '1',
  inputs: { H: 'A^2 s', H_max: 'A^2 s' },
  source: 'definition',
} as const satisfies Formula;

export const heatingFactorLeftFormula = {
  id: 'heating-factor-left',
  symbol: 'H_r',
  expression: 'H_max - H',
  unit: 'A^2 s',
  inputs: { H_max: 'A^2 s', H: 'A^2 s' },
  source: 'definition',
} as const satisfies Formula;

export const durationToFigureFormula = {
  id: 'duration-to-figure',
  symbol: 't_r',
  expression: 'H_r / I^2',
  unit: 's',
  inputs: { H_r: 'A^2 s', I: 'A' },
  source: 'definition',
} as const satisfies Formula;

export const resistancesInSeriesFormula = {
  id: 'resistances-in-series',
  symbol: 'R',
  expression: 'R_c + R_t',
  unit: 'ohm',
  inputs: { R_c: 'ohm', R_t: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const impedanceOfCapacitanceFormula = {
  id: 'impedance-of-capacitance',
  symbol: 'Z_max',
  expression: '1 / (2 * pi * f * C)',
  unit: 'ohm',
  inputs: { f: 'Hz', C: 'F' },
  source: 'definition',
} as const satisfies Formula;

export const partOfImpedanceLimitFormula = {
  id: 'part-of-impedance-limit',
  symbol: 'm',
  expression: 'Z / Z_max',
  unit: '1',
  inputs: { Z: 'ohm', Z_max: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const foilCurrentFormula = {
  id: 'foil-current',
  symbol: 'I_f',
  expression: 'I * (sqrt(R_o^2 + X_o^2) / sqrt((R_f + R_o)^2 + (X_f + X_o)^2))',
  unit: 'A',
  inputs: { I: 'A', R_f: 'ohm', X_f: 'ohm', R_o: 'ohm', X_o: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const phaseBetweenFoilsFormula = {
  id: 'phase-between-foils',
  symbol: 'phi',
  expression: 'atan2(X_2, R_2) - atan2(X_1, R_1)',
  unit: 'rad',
  inputs: { X_1: 'ohm', R_1: 'ohm', X_2: 'ohm', R_2: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const currentConcentrationFormula = {
  id: 'current-concentration',
  symbol: 'k',
  expression: '2 * I_l / I',
  unit: '1',
  inputs: { I_l: 'A', I: 'A' },
  source: 'definition',
} as const satisfies Formula;

export const currentDensityFormula = {
  id: 'current-density',
  symbol: 'J',
  expression: 'I / A_e',
  unit: 'A/m^2',
  inputs: { I: 'A', A_e: 'm^2' },
  source: 'definition',
} as const satisfies Formula;
