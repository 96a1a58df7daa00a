import type { Formula } from '../formula.js';

/** Formulas of the room circuit/ for a load through its leads; every part is relative to the load's resistance in series. */
export const leadReactancePartFormula = {
  id: 'lead-reactance-part',
  symbol: 'g',
  expression: '2 * pi * f * L_l * l / R_s',
  unit: '1',
  inputs: { f: 'Hz', L_l: 'H/m', l: 'm', R_s: 'ohm' },
  source: 'line-equations',
} as const satisfies Formula;

export const leadResistancePartFormula = {
  id: 'lead-resistance-part',
  symbol: 'r',
  expression: 'R_l * l / R_s',
  unit: '1',
  inputs: { R_l: 'ohm/m', l: 'm', R_s: 'ohm' },
  source: 'line-equations',
} as const satisfies Formula;

export const leadCapacitancePartFormula = {
  id: 'lead-capacitance-part',
  symbol: 'h',
  expression: '2 * pi * f * C_l * l * R_s',
  unit: '1',
  inputs: { f: 'Hz', C_l: 'F/m', l: 'm', R_s: 'ohm' },
  source: 'line-equations',
} as const satisfies Formula;

export const linePhaseFormula = {
  id: 'line-phase',
  symbol: 'beta',
  expression: 'sqrt(h * (sqrt(g^2 + r^2) + g) / 2)',
  unit: 'rad',
  inputs: { h: '1', g: '1', r: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const lineAttenuationFormula = {
  id: 'line-attenuation',
  symbol: 'alpha',
  expression: 'r * h / (2 * beta)',
  unit: '1',
  inputs: { r: '1', h: '1', beta: 'rad' },
  source: 'line-equations',
} as const satisfies Formula;

export const lineShareRealFormula = {
  id: 'line-share-real',
  symbol: 's_re',
  expression: '(alpha * sinh(alpha) * cos(beta) + beta * cosh(alpha) * sin(beta)) / (alpha^2 + beta^2)',
  unit: '1',
  inputs: { alpha: '1', beta: 'rad' },
  source: 'line-equations',
} as const satisfies Formula;

export const lineShareImaginaryFormula = {
  id: 'line-share-imaginary',
  symbol: 's_im',
  expression: '(alpha * cosh(alpha) * sin(beta) - beta * sinh(alpha) * cos(beta)) / (alpha^2 + beta^2)',
  unit: '1',
  inputs: { alpha: '1', beta: 'rad' },
  source: 'line-equations',
} as const satisfies Formula;

export const lineRestRealFormula = {
  id: 'line-rest-real',
  symbol: 'a_re',
  expression: '2 * sinh(alpha / 2)^2 * cos(beta) - 2 * sin(beta / 2)^2',
  unit: '1',
  inputs: { alpha: '1', beta: 'rad' },
  source: 'line-equations',
} as const satisfies Formula;

export const lineRestImaginaryFormula = {
  id: 'line-rest-imaginary',
  symbol: 'a_im',
  expression: 'sinh(alpha) * sin(beta)',
  unit: '1',
  inputs: { alpha: '1', beta: 'rad' },
  source: 'line-equations',
} as const satisfies Formula;

export const lumpedShareRealFormula = {
  id: 'lumped-share-real',
  symbol: 's_re',
  expression: '1 - g * h / 4',
  unit: '1',
  inputs: { g: '1', h: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const lumpedShareImaginaryFormula = {
  id: 'lumped-share-imaginary',
  symbol: 's_im',
  expression: 'r * h / 4',
  unit: '1',
  inputs: { r: '1', h: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const lumpedRestRealFormula = {
  id: 'lumped-rest-real',
  symbol: 'a_re',
  expression: '-g * h / 2',
  unit: '1',
  inputs: { g: '1', h: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const lumpedRestImaginaryFormula = {
  id: 'lumped-rest-imaginary',
  symbol: 'a_im',
  expression: 'r * h / 2',
  unit: '1',
  inputs: { r: '1', h: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const addedVoltageRealFormula = {
  id: 'added-voltage-real',
  symbol: 'w_re',
  expression: 'a_re - a_im * t + (r * s_re - g * s_im)',
  unit: '1',
  inputs: { a_re: '1', a_im: '1', t: '1', r: '1', s_re: '1', g: '1', s_im: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const addedVoltageImaginaryFormula = {
  id: 'added-voltage-imaginary',
  symbol: 'w_im',
  expression: 'a_im + a_re * t + (r * s_im + g * s_re)',
  unit: '1',
  inputs: { a_re: '1', a_im: '1', t: '1', r: '1', s_re: '1', g: '1', s_im: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const addedCurrentRealFormula = {
  id: 'added-current-real',
  symbol: 'd_re',
  expression: 'a_re - h * (s_im + s_re * t)',
  unit: '1',
  inputs: { a_re: '1', h: '1', s_re: '1', s_im: '1', t: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const addedCurrentImaginaryFormula = {
  id: 'added-current-imaginary',
  symbol: 'd_im',
  expression: 'a_im + h * (s_re - s_im * t)',
  unit: '1',
  inputs: { a_im: '1', h: '1', s_re: '1', s_im: '1', t: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const resistanceThroughLeadsFormula = {
  id: 'resistance-through-leads',
  symbol: 'R_n',
  expression: 'R_s * ((1 + w_re) * (1 + d_re) + (t + w_im) * d_im) / ((1 + d_re)^2 + d_im^2)',
  unit: 'ohm',
  inputs: { R_s: 'ohm', t: '1', w_re: '1', w_im: '1', d_re: '1', d_im: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const reactanceThroughLeadsFormula = {
  id: 'reactance-through-leads',
  symbol: 'X_n',
  expression: 'R_s * ((t + w_im) * (1 + d_re) - (1 + w_re) * d_im) / ((1 + d_re)^2 + d_im^2)',
  unit: 'ohm',
  inputs: { R_s: 'ohm', t: '1', w_re: '1', w_im: '1', d_re: '1', d_im: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const voltageRatioOfLeadsFormula = {
  id: 'voltage-ratio-of-leads',
  symbol: 'k_V',
  expression: 'sqrt((1 + t^2) / ((1 + w_re)^2 + (t + w_im)^2))',
  unit: '1',
  inputs: { t: '1', w_re: '1', w_im: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const currentRatioOfLeadsFormula = {
  id: 'current-ratio-of-leads',
  symbol: 'k_I',
  expression: '1 / sqrt((1 + d_re)^2 + d_im^2)',
  unit: '1',
  inputs: { d_re: '1', d_im: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const bypassRatioOfLeadsFormula = {
  id: 'bypass-ratio-of-leads',
  symbol: 'k_b',
  expression: 'sqrt(d_re^2 + d_im^2) * k_I',
  unit: '1',
  inputs: { d_re: '1', d_im: '1', k_I: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const currentErrorThroughLeadsFormula = {
  id: 'current-error-through-leads',
  symbol: 'e_I',
  expression: 'x * x + (1 + x * x) * (d_re * (2 + d_re) + d_im * d_im)',
  unit: '1',
  inputs: { x: '1', d_re: '1', d_im: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const voltageErrorThroughLeadsFormula = {
  id: 'voltage-error-through-leads',
  symbol: 'e_V',
  expression: 'e_0 + (w_re * (2 + w_re) + w_im * (w_im + 2 * t)) / (1 + x * x)',
  unit: '1',
  inputs: { e_0: '1', w_re: '1', w_im: '1', t: '1', x: '1' },
  source: 'line-equations',
} as const satisfies Formula;

export const voltageAtLoadFormula = {
  id: 'voltage-at-load',
  symbol: 'V_2',
  expression: 'k_V * V',
  unit: 'V',
  inputs: { k_V: '1', V: 'V' },
  source: 'definition',
} as const satisfies Formula;

export const currentAtLoadFormula = {
  id: 'current-at-load',
  symbol: 'I_2',
  expression: 'k_I * I',
  unit: 'A',
  inputs: { k_I: '1', I: 'A' },
  source: 'definition',
} as const satisfies Formula;

export const bypassCurrentFormula = {
  id: 'bypass-current',
  symbol: 'I_b',
  expression: 'k_b * I',
  unit: 'A',
  inputs: { k_b: '1', I: 'A' },
  source: 'definition',
} as const satisfies Formula;

export const characteristicImpedanceFormula = {
  id: 'characteristic-impedance',
  symbol: 'Z_0',
  expression: 'sqrt(L_l / C_l)',
  unit: 'ohm',
  inputs: { L_l: 'H/m', C_l: 'F/m' },
  source: 'line-equations',
} as const satisfies Formula;

export const lineVelocityFormula = {
  id: 'line-velocity',
  symbol: 'v',
  expression: '1 / sqrt(L_l * C_l)',
  unit: 'm/s',
  inputs: { L_l: 'H/m', C_l: 'F/m' },
  source: 'line-equations',
} as const satisfies Formula;
