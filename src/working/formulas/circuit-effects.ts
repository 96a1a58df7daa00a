import type { Formula } from '../formula.js';

/** Formulas of the room circuit/ for what departs from a pure resistance: strays, leads, heat, sources. */
export const inductivePartFormula = {
  id: 'inductive-part',
  symbol: 'y',
  expression: '2 * pi * f * L / R',
  unit: '1',
  inputs: { f: 'Hz', L: 'H', R: 'ohm' },
  source: 'definition',
} as const satisfies Formula;

export const capacitivePartFormula = {
  id: 'capacitive-part',
  symbol: 'x',
  expression: '2 * pi * f * R * C',
  unit: '1',
  inputs: { f: 'Hz', R: 'ohm', C: 'F' },
  source: 'definition',
} as const satisfies Formula;

export const seriesResistanceFormula = {
  id: 'series-resistance',
  symbol: 'R_s',
  expression: 'R / (1 + x^2)',
  unit: 'ohm',
  inputs: { R: 'ohm', x: '1' },
  source: 'definition',
} as const satisfies Formula;

export const seriesReactanceFormula = {
  id: 'series-reactance',
  symbol: 'X_s',
  expression: 'R * (y - x / (1 + x^2))',
  unit: 'ohm',
  inputs: { R: 'ohm', x: '1', y: '1' },
  source: 'definition',
} as const satisfies Formula;

export const currentMethodErrorFormula = {
  id: 'current-method-error',
  symbol: 'e_I',
  expression: 'x^2',
  unit: '1',
  inputs: { x: '1' },
  source: 'definition',
} as const satisfies Formula;

export const voltageMethodErrorFormula = {
  id: 'voltage-method-error',
  symbol: 'e_V',
  expression: 'y * (y * (1 + x^2) - 2 * x)',
  unit: '1',
  inputs: { x: '1', y: '1' },
  source: 'definition',
} as const satisfies Formula;

export const tangentOfPhaseFormula = {
  id: 'tangent-of-phase',
  symbol: 't',
  expression: 'y * (1 + x^2) - x',
  unit: '1',
  inputs: { x: '1', y: '1' },
  source: 'definition',
} as const satisfies Formula;

export const productMethodErrorFormula = {
  id: 'product-method-error',
  symbol: 'e_S',
  expression: 't^2 / (1 + sqrt(1 + t^2))',
  unit: '1',
  inputs: { t: '1' },
  source: 'definition',
} as const satisfies Formula;

export const strayInductanceAtPhaseFormula = {
  id: 'stray-inductance-at-phase',
  symbol: 'L',
  expression: 'R * tan(phi) / (2 * pi * f)',
  unit: 'H',
  inputs: { R: 'ohm', phi: 'rad', f: 'Hz' },
  source: 'definition',
} as const satisfies Formula;

export const strayCapacitanceAtPhaseFormula = {
  id: 'stray-capacitance-at-phase',
  symbol: 'C',
  expression: 'tan(phi) / (2 * pi * f * R)',
  unit: 'F',
  inputs: { R: 'ohm', phi: 'rad', f: 'Hz' },
  source: 'definition',
} as const satisfies Formula;

export const resonancePartFormula = {
  id: 'resonance-part',
  symbol: 'u',
  expression: '2 * pi * f * L * (2 * pi * f * C)',
  unit: '1',
  inputs: { f: 'Hz', L: 'H', C: 'F' },
  source: 'definition',
} as const satisfies Formula;

export const loadRangeDiscriminantFormula = {
  id: 'load-range-discriminant',
  symbol: 'D',
  expression: 'tan(phi)^2 + 4 * u * (1 - u)',
  unit: '1',
  inputs: { phi: 'rad', u: '1' },
  source: 'definition',
} as const satisfies Formula;

export const lowestLoadFormula = {
  id: 'lowest-load',
  symbol: 'R_l',
  expression: '4 * pi * f * L / (tan(phi) + sqrt(D))',
  unit: 'ohm',
  inputs: { f: 'Hz', L: 'H', phi: 'rad', D: '1' },
  source: 'definition',
} as const satisfies Formula;

export const highestLoadFormula = {
  id: 'highest-load',
  symbol: 'R_u',
  expression: '(tan(phi) + sqrt(D)) / (4 * pi * f * C * abs(1 - u))',
  unit: 'ohm',
  inputs: { phi: 'rad', D: '1', f: 'Hz', C: 'F', u: '1' },
  source: 'definition',
} as const satisfies Formula;

export const straightWireSurfaceFormula = {
  id: 'straight-wire-surface',
  symbol: 'L',
  expression: '2e-7 * (l * asinh(l / r) - l^2 / (sqrt(l^2 + r^2) + r))',
  unit: 'H',
  inputs: { l: 'm', r: 'm' },
  source: 'rosa-1908',
} as const satisfies Formula;

export const straightWireUniformFormula = {
  id: 'straight-wire-uniform',
  symbol: 'L',
  expression: '2e-7 * (l * asinh(l / r) - l^2 / (sqrt(l^2 + r^2) + r) + l / 4)',
  unit: 'H',
  inputs: { l: 'm', r: 'm' },
  source: 'rosa-1908',
} as const satisfies Formula;

export const twoWireInductanceFormula = {
  id: 'two-wire-inductance',
  symbol: 'L_l',
  expression: '8e-7 * asinh(sqrt((D - d) / (2 * d)))',
  unit: 'H/m',
  inputs: { D: 'm', d: 'm' },
  source: 'definition',
} as const satisfies Formula;

export const twoWireCapacitanceFormula = {
  id: 'two-wire-capacitance',
  symbol: 'C_l',
  expression: 'pi * 8.8541878128e-12 * epsilon_r / (2 * asinh(sqrt((D - d) / (2 * d))))',
  unit: 'F/m',
  inputs: { epsilon_r: '1', D: 'm', d: 'm' },
  source: 'definition',
} as const satisfies Formula;

export const coaxialInductanceFormula = {
  id: 'coaxial-inductance',
  symbol: 'L_l',
  expression: '2e-7 * log1p((d_o - d_i) / d_i)',
  unit: 'H/m',
  inputs: { d_o: 'm', d_i: 'm' },
  source: 'definition',
} as const satisfies Formula;

export const coaxialCapacitanceFormula = {
  id: 'coaxial-capacitance',
  symbol: 'C_l',
  expression: '2 * pi * 8.8541878128e-12 * epsilon_r / log1p((d_o - d_i) / d_i)',
  unit: 'F/m',
  inputs: { epsilon_r: '1', d_o: 'm', d_i: 'm' },
  source: 'definition',
} as const satisfies Formula;

export const skinDepthFormula = {
  id: 'skin-depth',
  symbol: 'delta',
  expression: 'sqrt(rho / (pi * f * 4e-7 * pi * mu_r))',
  unit: 'm',
  inputs: { rho: 'ohm m', f: 'Hz', mu_r: '1' },
  source: 'definition',
} as const satisfies Formula;

export const roundWireRatioFormula = {
  id: 'round-wire-ratio',
  symbol: 'k_R',
  expression: 'max(r / (2 * delta) * (B_re - B_im), 1)',
  unit: '1',
  inputs: { r: 'm', delta: 'm', B_re: '1', B_im: '1' },
  source: 'round-wire-field',
} as const satisfies Formula;

export const roundWireResistanceFormula = {
  id: 'round-wire-resistance',
  symbol: 'R',
  expression: 'k_R * rho * l / (pi * r^2)',
  unit: 'ohm',
  inputs: { k_R: '1', rho: 'ohm m', l: 'm', r: 'm' },
  source: 'definition',
} as const satisfies Formula;

export const solenoidInductanceFormula = {
  id: 'solenoid-inductance',
  symbol: 'L',
  expression: '4e-7 * pi / 3 * (N * d)^2 * (D_e / sqrt(d^2 + l^2) + E_k * sqrt(d^2 + l^2) / l^2)',
  unit: 'H',
  inputs: { N: '1', d: 'm', l: 'm', D_e: '1', E_k: '1' },
  source: 'lorenz-1879',
} as const satisfies Formula;

export const resistanceAtTemperatureFormula = {
  id: 'resistance-at-temperature',
  symbol: 'R_T',
  expression: 'R * (1 + alpha * T)',
  unit: 'ohm',
  inputs: { R: 'ohm', alpha: '1/K', T: 'K' },
  source: 'definition',
} as const satisfies Formula;

export const finalRiseFormula = {
  id: 'final-rise',
  symbol: 'T_f',
  expression: 'P * R_th',
  unit: 'K',
  inputs: { P: 'W', R_th: 'K/W' },
  source: 'definition',
} as const satisfies Formula;

export const temperatureRiseFormula = {
  id: 'temperature-rise',
  symbol: 'T_e',
  expression: 'T_0 * exp(-t / tau) - T_f * expm1(-t / tau)',
  unit: 'K',
  inputs: { T_0: 'K', T_f: 'K', t: 's', tau: 's' },
  source: 'newton-cooling',
} as const satisfies Formula;

export const dissipatedEnergyFormula = {
  id: 'dissipated-energy',
  symbol: 'E_h',
  expression: 'P * t',
  unit: 'J',
  inputs: { P: 'W', t: 's' },
  source: 'definition',
} as const satisfies Formula;

export const permittedActivationFormula = {
  id: 'permitted-activation',
  symbol: 't_m',
  expression: 'tau * log1p((T_m - T_0) / (T_f - T_m))',
  unit: 's',
  inputs: { tau: 's', T_m: 'K', T_0: 'K', T_f: 'K' },
  source: 'newton-cooling',
} as const satisfies Formula;

export const dutyRiseFormula = {
  id: 'duty-rise',
  symbol: 'T_d',
  expression: 'T_f * expm1(-t / tau) / expm1(-(t + t_p) / tau)',
  unit: 'K',
  inputs: { T_f: 'K', t: 's', t_p: 's', tau: 's' },
  source: 'newton-cooling',
} as const satisfies Formula;

export const startRiseFormula = {
  id: 'start-rise',
  symbol: 'T_s',
  expression: 'T_m - (T_f - T_m) * expm1(t / tau)',
  unit: 'K',
  inputs: { T_m: 'K', T_f: 'K', t: 's', tau: 's' },
  source: 'newton-cooling',
} as const satisfies Formula;

export const requiredPauseFormula = {
  id: 'required-pause',
  symbol: 't_p',
  expression: 'tau * log(T_m / T_s)',
  unit: 's',
  inputs: { tau: 's', T_m: 'K', T_s: 'K' },
  source: 'newton-cooling',
} as const satisfies Formula;

export const pauseFromRatingFormula = {
  id: 'pause-from-rating',
  symbol: 't_p',
  expression: 't * max((P - P_r) / P_r, 0)',
  unit: 's',
  inputs: { t: 's', P: 'W', P_r: 'W' },
  source: 'definition',
} as const satisfies Formula;

export const heatingFactorFormula = {
  id: 'heating-factor',
  symbol: 'H',
  expression: 'I^2 * t',
  unit: 'A^2 s',
  inputs: { I: 'A', t: 's' },
  source: 'definition',
} as const satisfies Formula;

export const sourceResistanceFormula = {
  id: 'source-resistance',
  symbol: 'R_s',
  expression: '(V_2 - V_1) / (V_1 / R_1 - V_2 / R_2)',
  unit: 'ohm',
  inputs: { V_1: 'V', V_2: 'V', R_1: 'ohm', R_2: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const openCircuitVoltageFormula = {
  id: 'open-circuit-voltage',
  symbol: 'E',
  expression: 'V_1 + V_1 / R_1 * R_s',
  unit: 'V',
  inputs: { V_1: 'V', R_1: 'ohm', R_s: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const powerFromSourceFormula = {
  id: 'power-from-source',
  symbol: 'P',
  expression: 'E^2 * R / (R + R_s)^2',
  unit: 'W',
  inputs: { E: 'V', R: 'ohm', R_s: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const availablePowerFormula = {
  id: 'available-power',
  symbol: 'P_a',
  expression: 'E^2 / (4 * R_s)',
  unit: 'W',
  inputs: { E: 'V', R_s: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;

export const accessoryFactorFormula = {
  id: 'accessory-factor',
  symbol: 'y',
  expression: 'min((V_p - V_o) / V_d, y_m)',
  unit: '1',
  inputs: { V_p: 'V', V_o: 'V', V_d: 'V', y_m: '1' },
  source: 'iec-60601-2-2-memory',
} as const satisfies Formula;

export const neededRatingFormula = {
  id: 'needed-rating',
  symbol: 'V_n',
  expression: 'k * V_p',
  unit: 'V',
  inputs: { k: '1', V_p: 'V' },
  source: 'iec-60601-2-2-memory',
} as const satisfies Formula;
