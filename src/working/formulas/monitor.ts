import type { Formula } from '../formula.js';

/** Formulas of the room monitor/. */
export const seenFormula = {
  id: 'monitor-seen',
  symbol: 'R_seen',
  expression: 'R + R_s',
  unit: 'ohm',
  inputs: { R: 'ohm', R_s: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const riseLimitFormula = {
  id: 'monitor-rise-limit',
  symbol: 'R_rise',
  expression: 'max(b, f) * (1 + r)',
  unit: 'ohm',
  inputs: { b: 'ohm', f: 'ohm', r: '1' },
  source: 'maker-sheet',
} as const satisfies Formula;

export const riseReleaseFormula = {
  id: 'monitor-rise-release',
  symbol: 'R_release',
  expression: 'max(b, f) * (1 + r - h)',
  unit: 'ohm',
  inputs: { b: 'ohm', f: 'ohm', r: '1', h: '1' },
  source: 'maker-sheet',
} as const satisfies Formula;

export const upperReleaseFormula = {
  id: 'monitor-upper-release',
  symbol: 'R_release',
  expression: 'T - h',
  unit: 'ohm',
  inputs: { T: 'ohm', h: 'ohm' },
  source: 'maker-sheet',
} as const satisfies Formula;

export const lowerReleaseFormula = {
  id: 'monitor-lower-release',
  symbol: 'R_release',
  expression: 'T + h',
  unit: 'ohm',
  inputs: { T: 'ohm', h: 'ohm' },
  source: 'maker-sheet',
} as const satisfies Formula;

export const alarmTimeFormula = {
  id: 'monitor-alarm-time',
  symbol: 't_alarm',
  expression: 't + d',
  unit: 's',
  inputs: { t: 's', d: 's' },
  source: 'maker-sheet',
} as const satisfies Formula;

export const trackedBaselineFormula = {
  id: 'monitor-tracked-baseline',
  symbol: 'b',
  expression: 'R_seen + (b_0 - R_seen) * exp(-t / tau)',
  unit: 'ohm',
  inputs: { R_seen: 'ohm', b_0: 'ohm', t: 's', tau: 's' },
  source: 'definition',
} as const satisfies Formula;

export const displayErrorFormula = {
  id: 'monitor-display-error',
  symbol: 'e',
  expression: 'y - x',
  unit: 'ohm',
  inputs: { y: 'ohm', x: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const displayResidualFormula = {
  id: 'monitor-display-residual',
  symbol: 'v',
  expression: 'y - (a + g * x)',
  unit: 'ohm',
  inputs: { y: 'ohm', a: 'ohm', g: '1', x: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const setBelowFormula = {
  id: 'monitor-set-below',
  symbol: 'R_set',
  expression: '(T - R_s - a) / (1 + q)',
  unit: 'ohm',
  inputs: { T: 'ohm', R_s: 'ohm', a: 'ohm', q: '1' },
  source: 'definition',
} as const satisfies Formula;

export const setAboveFormula = {
  id: 'monitor-set-above',
  symbol: 'R_set',
  expression: '(T - R_s + a) / (1 - q)',
  unit: 'ohm',
  inputs: { T: 'ohm', R_s: 'ohm', a: 'ohm', q: '1' },
  source: 'definition',
} as const satisfies Formula;

export const seenLeastFormula = {
  id: 'monitor-seen-least',
  symbol: 'R_least',
  expression: 'R * (1 - q) - a + R_s',
  unit: 'ohm',
  inputs: { R: 'ohm', R_s: 'ohm', a: 'ohm', q: '1' },
  source: 'definition',
} as const satisfies Formula;

export const seenMostFormula = {
  id: 'monitor-seen-most',
  symbol: 'R_most',
  expression: 'R * (1 + q) + a + R_s',
  unit: 'ohm',
  inputs: { R: 'ohm', R_s: 'ohm', a: 'ohm', q: '1' },
  source: 'definition',
} as const satisfies Formula;

export const tripFormula = {
  id: 'monitor-trip',
  symbol: 'R_trip',
  expression: '(R_1 + R_2) / 2 + R_s',
  unit: 'ohm',
  inputs: { R_1: 'ohm', R_2: 'ohm', R_s: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const tripMeanFormula = {
  id: 'monitor-trip-mean',
  symbol: 'R_trip',
  expression: 'S / n',
  unit: 'ohm',
  inputs: { S: 'ohm', n: '1' },
  source: 'definition',
} as const satisfies Formula;

export const stepUncertaintyFormula = {
  id: 'monitor-step-uncertainty',
  symbol: 'u_d',
  expression: 'd / sqrt(12)',
  unit: 'ohm',
  inputs: { d: 'ohm' },
  source: 'jcgm-100',
  clause: '4.3.7',
} as const satisfies Formula;

export const halfWidthUncertaintyFormula = {
  id: 'monitor-half-width-uncertainty',
  symbol: 'u_a',
  expression: 'a / sqrt(3)',
  unit: 'any',
  inputs: { a: 'any' },
  source: 'jcgm-100',
  clause: '4.3.7',
} as const satisfies Formula;

export const tripUncertaintyFormula = {
  id: 'monitor-trip-uncertainty',
  symbol: 'u',
  expression: 'sqrt(u_d^2 + u_b^2 + u_s^2 + u_0^2 + u_m^2)',
  unit: 'ohm',
  inputs: { u_d: 'ohm', u_b: 'ohm', u_s: 'ohm', u_0: 'ohm', u_m: 'ohm' },
  source: 'jcgm-100',
  clause: '5.1.2',
} as const satisfies Formula;

export const tripDegreesFormula = {
  id: 'monitor-trip-degrees',
  symbol: 'nu',
  expression: '(n - 1) * (u / u_m)^4',
  unit: '1',
  inputs: { n: '1', u: 'ohm', u_m: 'ohm' },
  source: 'jcgm-100',
  clause: 'G.4.1',
} as const satisfies Formula;

export const tripExpandedFormula = {
  id: 'monitor-trip-expanded',
  symbol: 'U',
  expression: 'k * u',
  unit: 'any',
  inputs: { k: '1', u: 'any' },
  source: 'jcgm-100',
  clause: '6.2.1',
} as const satisfies Formula;

export const hysteresisFormula = {
  id: 'monitor-hysteresis',
  symbol: 'H',
  expression: 'R_1 - R_2',
  unit: 'ohm',
  inputs: { R_1: 'ohm', R_2: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const hysteresisUncertaintyFormula = {
  id: 'monitor-hysteresis-uncertainty',
  symbol: 'u_H',
  expression: 'sqrt(u_1^2 + u_2^2 + u_b^2)',
  unit: 'ohm',
  inputs: { u_1: 'ohm', u_2: 'ohm', u_b: 'ohm' },
  source: 'jcgm-100',
  clause: '5.1.2',
} as const satisfies Formula;

export const contactResistanceFormula = {
  id: 'monitor-contact-resistance',
  symbol: 'R_a',
  expression: 'R / a',
  unit: 'ohm',
  inputs: { R: 'ohm', a: '1' },
  source: 'definition',
} as const satisfies Formula;

export const contactCapacitanceFormula = {
  id: 'monitor-contact-capacitance',
  symbol: 'C_a',
  expression: 'C * a',
  unit: 'F',
  inputs: { C: 'F', a: '1' },
  source: 'definition',
} as const satisfies Formula;

export const padResistanceFormula = {
  id: 'monitor-pad-resistance',
  symbol: 'R',
  expression: 'R_1 + R_2 + R_t',
  unit: 'ohm',
  inputs: { R_1: 'ohm', R_2: 'ohm', R_t: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const padReactanceFormula = {
  id: 'monitor-pad-reactance',
  symbol: 'X',
  expression: 'X_1 + X_2',
  unit: 'ohm',
  inputs: { X_1: 'ohm', X_2: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const areaFactorFormula = {
  id: 'monitor-area-factor',
  symbol: 'q',
  expression:
    '(T^2 - R_a^2 - X_a^2) / (R_a * R_b + X_a * X_b + sqrt((R_a * R_b + X_a * X_b)^2 + (R_b^2 + X_b^2) * (T^2 - R_a^2 - X_a^2)))',
  unit: '1',
  inputs: { T: 'ohm', R_a: 'ohm', X_a: 'ohm', R_b: 'ohm', X_b: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const remainingAreaFormula = {
  id: 'monitor-remaining-area',
  symbol: 'a',
  expression: '1 / q',
  unit: '1',
  inputs: { q: '1' },
  source: 'definition',
} as const satisfies Formula;
