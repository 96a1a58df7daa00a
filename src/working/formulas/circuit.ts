import type { Formula } from '../formula.js';

/** Formulas of the room circuit/. */
export const currentFromPowerFormula = {
  id: 'current-from-power',
  symbol: 'I',
  expression: 'sqrt(P / R)',
  unit: 'A',
  inputs: { P: 'W', R: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const voltageFromPowerFormula = {
  id: 'voltage-from-power',
  symbol: 'V',
  expression: 'sqrt(P * R)',
  unit: 'V',
  inputs: { P: 'W', R: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const powerFromCurrentFormula = {
  id: 'power-from-current',
  symbol: 'P',
  expression: 'I^2 * R',
  unit: 'W',
  inputs: { I: 'A', R: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const powerFromVoltageFormula = {
  id: 'power-from-voltage',
  symbol: 'P',
  expression: 'V^2 / R',
  unit: 'W',
  inputs: { V: 'V', R: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const currentFromVoltageFormula = {
  id: 'current-from-voltage',
  symbol: 'I',
  expression: 'V / R',
  unit: 'A',
  inputs: { V: 'V', R: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const voltageFromCurrentFormula = {
  id: 'voltage-from-current',
  symbol: 'V',
  expression: 'I * R',
  unit: 'V',
  inputs: { I: 'A', R: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const powerFromCurrentAndVoltageFormula = {
  id: 'power-from-current-and-voltage',
  symbol: 'P',
  expression: 'I * V',
  unit: 'W',
  inputs: { I: 'A', V: 'V' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const voltageFromPowerAndCurrentFormula = {
  id: 'voltage-from-power-and-current',
  symbol: 'V',
  expression: 'P / I',
  unit: 'V',
  inputs: { P: 'W', I: 'A' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const currentFromPowerAndVoltageFormula = {
  id: 'current-from-power-and-voltage',
  symbol: 'I',
  expression: 'P / V',
  unit: 'A',
  inputs: { P: 'W', V: 'V' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const loadFromPowerAndCurrentFormula = {
  id: 'load-from-power-and-current',
  symbol: 'R',
  expression: 'P / I^2',
  unit: 'ohm',
  inputs: { P: 'W', I: 'A' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const loadFromPowerAndVoltageFormula = {
  id: 'load-from-power-and-voltage',
  symbol: 'R',
  expression: 'V^2 / P',
  unit: 'ohm',
  inputs: { V: 'V', P: 'W' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const loadFromCurrentAndVoltageFormula = {
  id: 'load-from-current-and-voltage',
  symbol: 'R',
  expression: 'V / I',
  unit: 'ohm',
  inputs: { V: 'V', I: 'A' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const peakFromRmsFormula = {
  id: 'peak-from-rms',
  symbol: 'x_p',
  expression: 'CF * x',
  unit: 'any',
  inputs: { CF: '1', x: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const rmsFromPeakFormula = {
  id: 'rms-from-peak',
  symbol: 'x',
  expression: 'x_p / CF',
  unit: 'any',
  inputs: { x_p: 'any', CF: '1' },
  source: 'definition',
} as const satisfies Formula;

export const crestFactorFormula = {
  id: 'crest-factor',
  symbol: 'CF',
  expression: 'x_p / x',
  unit: '1',
  inputs: { x_p: 'any', x: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const peakVoltageFormula = {
  id: 'peak-voltage',
  symbol: 'V_p',
  expression: 'CF * sqrt(P * R)',
  unit: 'V',
  inputs: { CF: '1', P: 'W', R: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const peakCurrentFormula = {
  id: 'peak-current',
  symbol: 'I_p',
  expression: 'CF * sqrt(P / R)',
  unit: 'A',
  inputs: { CF: '1', P: 'W', R: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const impedanceMagnitudeFormula = {
  id: 'impedance-magnitude',
  symbol: 'Z',
  expression: 'sqrt(R^2 + X^2)',
  unit: 'ohm',
  inputs: { R: 'ohm', X: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const phaseOfLoadFormula = {
  id: 'phase-of-load',
  symbol: 'phi',
  expression: 'atan2(X, R)',
  unit: 'rad',
  inputs: { X: 'ohm', R: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const voltageAcrossImpedanceFormula = {
  id: 'voltage-across-impedance',
  symbol: 'V',
  expression: 'I * Z',
  unit: 'V',
  inputs: { I: 'A', Z: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const currentThroughImpedanceFormula = {
  id: 'current-through-impedance',
  symbol: 'I',
  expression: 'V / Z',
  unit: 'A',
  inputs: { V: 'V', Z: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const apparentPowerFormula = {
  id: 'apparent-power',
  symbol: 'S',
  expression: 'V * I',
  unit: 'VA',
  inputs: { V: 'V', I: 'A' },
  source: 'definition',
} as const satisfies Formula;

export const reactivePowerFormula = {
  id: 'reactive-power',
  symbol: 'Q',
  expression: 'I^2 * X',
  unit: 'var',
  inputs: { I: 'A', X: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const powerFactorFormula = {
  id: 'power-factor',
  symbol: 'lambda',
  expression: 'R / Z',
  unit: '1',
  inputs: { R: 'ohm', Z: 'ohm' },
  source: 'definition',
} as const satisfies Formula;
