import type { Formula } from '../formula.js';

/** Formulas of the room curve/. */
export const exponentFormula = {
  id: 'curve-exponent',
  symbol: 'm',
  expression: 'log(P2 / P1) / log(R2 / R1)',
  unit: '1',
  inputs: { R1: 'ohm', P1: 'W', R2: 'ohm', P2: 'W' },
  source: 'definition',
} as const satisfies Formula;

export const powerLawFormula = {
  id: 'curve-power-law',
  symbol: 'P',
  expression: 'P1 * (R / R1)^m',
  unit: 'W',
  inputs: { R: 'ohm', R1: 'ohm', P1: 'W', m: '1' },
  source: 'maker-sheet',
} as const satisfies Formula;

export const slopeFormula = {
  id: 'curve-slope',
  symbol: 'm',
  expression: '(P2 - P1) / (R2 - R1)',
  unit: 'W/ohm',
  inputs: { R1: 'ohm', P1: 'W', R2: 'ohm', P2: 'W' },
  source: 'definition',
} as const satisfies Formula;

export const lineFormula = {
  id: 'curve-line',
  symbol: 'P',
  expression: 'P1 + m * (R - R1)',
  unit: 'W',
  inputs: { R: 'ohm', R1: 'ohm', P1: 'W', m: 'W/ohm' },
  source: 'maker-sheet',
} as const satisfies Formula;

export const positionFormula = {
  id: 'curve-position',
  symbol: 't',
  expression: '(R - Ra) / (Rb - Ra)',
  unit: '1',
  inputs: { R: 'ohm', Ra: 'ohm', Rb: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const logPositionFormula = {
  id: 'curve-log-position',
  symbol: 't',
  expression: 'log(R / Ra) / log(Rb / Ra)',
  unit: '1',
  inputs: { R: 'ohm', Ra: 'ohm', Rb: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const cubicFormula = {
  id: 'curve-monotone-cubic',
  symbol: 'P',
  expression: 'P1 * u^2 * (1 + 2 * t) + P2 * t^2 * (1 + 2 * u) + (R2 - R1) * t * u * (m1 * u - m2 * t)',
  unit: 'W',
  inputs: { R1: 'ohm', P1: 'W', m1: 'W/ohm', R2: 'ohm', P2: 'W', m2: 'W/ohm', t: '1', u: '1' },
  source: 'fritsch-butland-1984',
} as const satisfies Formula;

export const cubicLogFormula = {
  id: 'curve-monotone-cubic-log',
  symbol: 'P',
  expression: 'P1 * exp(log(P2 / P1) * t^2 * (3 - 2 * t) + log(R2 / R1) * t * (1 - t) * (m1 * (1 - t) - m2 * t))',
  unit: 'W',
  inputs: { R1: 'ohm', P1: 'W', m1: '1', R2: 'ohm', P2: 'W', m2: '1', t: '1' },
  source: 'fritsch-butland-1984',
} as const satisfies Formula;

export const threeRegimesFormula = {
  id: 'curve-three-regimes',
  symbol: 'P',
  expression: 'min(I^2 * R, P_max, V^2 / R)',
  unit: 'W',
  inputs: { R: 'ohm', I: 'A', P_max: 'W', V: 'V' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const currentAndPowerFormula = {
  id: 'curve-current-and-power',
  symbol: 'P',
  expression: 'min(I^2 * R, P_max)',
  unit: 'W',
  inputs: { R: 'ohm', I: 'A', P_max: 'W' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const powerAndVoltageFormula = {
  id: 'curve-power-and-voltage',
  symbol: 'P',
  expression: 'min(P_max, V^2 / R)',
  unit: 'W',
  inputs: { R: 'ohm', P_max: 'W', V: 'V' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const sweepDeviationFormula = {
  id: 'curve-sweep-deviation',
  symbol: 'd',
  expression: '(P - P_ref) / P_ref',
  unit: '1',
  inputs: { P: 'W', P_ref: 'W' },
  source: 'definition',
} as const satisfies Formula;
