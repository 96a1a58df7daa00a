import type { Formula } from '../formula.js';

/** Formulas of the room waveform/. */
export const sineRmsFormula = {
  id: 'sine-rms',
  symbol: 'x',
  expression: 'x_p / sqrt(2)',
  unit: 'any',
  inputs: { x_p: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const sineAverageFormula = {
  id: 'sine-average',
  symbol: 'x_a',
  expression: '2 * x_p / pi',
  unit: 'any',
  inputs: { x_p: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const triangleRmsFormula = {
  id: 'triangle-rms',
  symbol: 'x',
  expression: 'x_p / sqrt(3)',
  unit: 'any',
  inputs: { x_p: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const triangleAverageFormula = {
  id: 'triangle-average',
  symbol: 'x_a',
  expression: 'x_p / 2',
  unit: 'any',
  inputs: { x_p: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const pulseRmsFormula = {
  id: 'pulse-rms',
  symbol: 'x',
  expression: 'x_p * sqrt(D)',
  unit: 'any',
  inputs: { x_p: 'any', D: '1' },
  source: 'definition',
} as const satisfies Formula;

export const pulseAverageFormula = {
  id: 'pulse-average',
  symbol: 'x_a',
  expression: 'x_p * D',
  unit: 'any',
  inputs: { x_p: 'any', D: '1' },
  source: 'definition',
} as const satisfies Formula;

export const formFactorFormula = {
  id: 'form-factor',
  symbol: 'FF',
  expression: 'x / x_a',
  unit: '1',
  inputs: { x: 'any', x_a: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const averageRespondingFactorFormula = {
  id: 'average-responding-factor',
  symbol: 'k_a',
  expression: 'pi / (2 * sqrt(2)) * (x_a / x)',
  unit: '1',
  inputs: { x_a: 'any', x: 'any' },
  source: 'definition',
} as const satisfies Formula;

export const burstEnergyFromVoltageFormula = {
  id: 'burst-energy-from-voltage',
  symbol: 'E_b',
  expression: 'x^2 / (R * f_r)',
  unit: 'J',
  inputs: { x: 'V', R: 'ohm', f_r: 'Hz' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const burstEnergyFromCurrentFormula = {
  id: 'burst-energy-from-current',
  symbol: 'E_b',
  expression: 'x^2 * R / f_r',
  unit: 'J',
  inputs: { x: 'A', R: 'ohm', f_r: 'Hz' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const gatedSineRmsFormula = {
  id: 'gated-sine-rms',
  symbol: 'x',
  expression: 'A * sqrt(D / 2)',
  unit: 'any',
  inputs: { A: 'any', D: '1' },
  source: 'definition',
} as const satisfies Formula;

export const gatedSineAverageFormula = {
  id: 'gated-sine-average',
  symbol: 'x_a',
  expression: '2 * A * D / pi',
  unit: 'any',
  inputs: { A: 'any', D: '1' },
  source: 'definition',
} as const satisfies Formula;

export const gateAngleFormula = {
  id: 'gate-angle',
  symbol: 'theta',
  expression: '2 * pi * f / f_r * D',
  unit: 'rad',
  inputs: { f: 'Hz', f_r: 'Hz', D: '1' },
  source: 'definition',
} as const satisfies Formula;

export const gatedSineRmsWithEndFormula = {
  id: 'gated-sine-rms-with-end',
  symbol: 'x',
  expression: 'A * sqrt(D / 2 * (2 * sin(phi + theta / 2)^2 + cos(2 * phi + theta) * (1 - sin(theta) / theta)))',
  unit: 'any',
  inputs: { A: 'any', D: '1', phi: 'rad', theta: 'rad' },
  source: 'definition',
} as const satisfies Formula;

export const gatedSineAverageInsideFormula = {
  id: 'gated-sine-average-inside',
  symbol: 'x_a',
  expression: '2 * A * D * sin(a + theta / 2) * sin(theta / 2) / theta',
  unit: 'any',
  inputs: { A: 'any', D: '1', theta: 'rad', a: 'rad' },
  source: 'definition',
} as const satisfies Formula;

export const gatedSineAverageOverFormula = {
  id: 'gated-sine-average-over',
  symbol: 'x_a',
  expression: 'A * D * (2 + cos(a) + 2 * n - cos(r)) / theta',
  unit: 'any',
  inputs: { A: 'any', D: '1', theta: 'rad', a: 'rad', n: '1', r: 'rad' },
  source: 'definition',
} as const satisfies Formula;

export const gatedSinePeakFormula = {
  id: 'gated-sine-peak',
  symbol: 'x_p',
  expression: 'A * max(abs(sin(phi)), abs(sin(phi + theta)))',
  unit: 'any',
  inputs: { A: 'any', phi: 'rad', theta: 'rad' },
  source: 'definition',
} as const satisfies Formula;

export const ringingFormula = {
  id: 'ringing',
  symbol: 'u',
  expression: '2 * pi * f * tau',
  unit: 'rad',
  inputs: { f: 'Hz', tau: 's' },
  source: 'definition',
} as const satisfies Formula;

export const phaseOfNextBurstFormula = {
  id: 'phase-of-next-burst',
  symbol: 'theta',
  expression: '2 * pi * (f / f_r - round(f / f_r))',
  unit: 'rad',
  inputs: { f: 'Hz', f_r: 'Hz' },
  source: 'definition',
} as const satisfies Formula;

export const dampedSineRemainderFormula = {
  id: 'damped-sine-remainder',
  symbol: 'q',
  expression: 'exp(-1 / (f_r * tau))',
  unit: '1',
  inputs: { f_r: 'Hz', tau: 's' },
  source: 'definition',
} as const satisfies Formula;

export const dampedSineOverlapAmplitudeFormula = {
  id: 'damped-sine-overlap-amplitude',
  symbol: 'B',
  expression:
    'A / sqrt((2 * exp(-1 / (f_r * tau)) * sin(theta / 2)^2 - expm1(-1 / (f_r * tau)))^2 + (exp(-1 / (f_r * tau)) * sin(theta))^2)',
  unit: 'any',
  inputs: { A: 'any', f_r: 'Hz', tau: 's', theta: 'rad' },
  source: 'definition',
} as const satisfies Formula;

export const dampedSineOverlapPhaseFormula = {
  id: 'damped-sine-overlap-phase',
  symbol: 'psi',
  expression:
    'atan2(exp(-1 / (f_r * tau)) * sin(theta), 2 * exp(-1 / (f_r * tau)) * sin(theta / 2)^2 - expm1(-1 / (f_r * tau)))',
  unit: 'rad',
  inputs: { f_r: 'Hz', tau: 's', theta: 'rad' },
  source: 'definition',
} as const satisfies Formula;

export const dampedSineRmsFormula = {
  id: 'damped-sine-rms',
  symbol: 'x',
  expression:
    'B / 2 * sqrt(f_r * tau / (1 + u^2) * (2 * sin(psi)^2 + u * sin(2 * psi) - exp(-2 / (f_r * tau)) * (2 * sin(psi + theta)^2 + u * sin(2 * (psi + theta))) - u^2 * expm1(-2 / (f_r * tau))))',
  unit: 'any',
  inputs: { B: 'any', f_r: 'Hz', tau: 's', psi: 'rad', u: 'rad', theta: 'rad' },
  source: 'definition',
} as const satisfies Formula;

export const dampedSineAverageFormula = {
  id: 'damped-sine-average',
  symbol: 'x_a',
  expression:
    'B * f_r * u^2 / (2 * pi * f * (1 + u^2)) * (sin(x) / u + cos(x) + exp(-(pi - x) / u) * (1 + (1 + exp(-pi / u)) * expm1(-pi * n / u) / expm1(-pi / u) + exp(-pi * n / u) * (1 - exp(-r / u) * (sin(r) / u + cos(r)))))',
  unit: 'any',
  inputs: { B: 'any', f_r: 'Hz', f: 'Hz', u: 'rad', x: 'rad', n: '1', r: 'rad' },
  source: 'definition',
} as const satisfies Formula;

export const dampedSinePeakFormula = {
  id: 'damped-sine-peak',
  symbol: 'x_p',
  expression: 'B * exp(-(atan(u) - psi) / u) * u / sqrt(1 + u^2)',
  unit: 'any',
  inputs: { B: 'any', psi: 'rad', u: 'rad' },
  source: 'definition',
} as const satisfies Formula;
