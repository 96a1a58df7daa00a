import type { Prose } from './prose.js';

/** What each symbol means in every formula of this file. */
const symbols: Readonly<Record<string, string>> = {
  g: 'reactance of the leads over R_s',
  f: 'frequency',
  L_l: 'inductance by length, of both leads together',
  l: 'length of the leads',
  R_s: 'resistance that the load shows in series',
  r: 'resistance of the leads over R_s',
  R_l: 'resistance by length, of both leads together',
  h: 'R_s over the reactance of the capacitance between the leads',
  C_l: 'capacitance by length',
  beta: 'phase over the whole length',
  alpha: 'attenuation over the whole length',
  s_re: 'share of the whole length that counts, real part',
  s_im: 'share of the whole length that counts, imaginary part',
  a_re: 'change over the length of voltage or current at its end, real part',
  a_im: 'change over the length of voltage or current at its end, imaginary part',
  w_re: 'voltage that the leads add over that of R_s, real part',
  t: 'tangent of the phase of the load',
  w_im: 'voltage that the leads add over that of R_s, imaginary part',
  d_re: 'current that leaves beside the load over that in it, real part',
  d_im: 'current that leaves beside the load over that in it, imaginary part',
  R_n: 'resistance in series at the near end',
  X_n: 'reactance in series at the near end, positive when inductive',
  k_V: 'voltage at the load over that at the near end',
  k_I: 'current in the load over that at the near end',
  k_b: 'current that bypasses the load over that at the near end',
  e_I: 'reckoned over true power, less 1',
  x: 'resistance over the reactance of the capacitance of the load',
  e_V: 'reckoned over true power, less 1',
  e_0: 'the same without leads',
  V_2: 'voltage at the load',
  V: 'voltage at the near end',
  I_2: 'current in the load',
  I: 'current at the near end',
  I_b: 'current that bypasses the load',
  Z_0: 'characteristic impedance',
  v: 'velocity of a wave on the line',
};

function prose(title: string, used: string, note?: string): Prose {
  const meanings = Object.fromEntries(used.split(' ').map((symbol) => [symbol, symbols[symbol] ?? '']));
  return { title, meanings, ...(note === undefined ? {} : { note }) };
}

/** Prose of the formulas of a load through its leads, by formula identifier. */
export const leadsProse: Readonly<Record<string, Prose>> = {
  'lead-reactance-part': prose('Reactance of the leads relative to the load', 'g f L_l l R_s'),
  'lead-resistance-part': prose('Resistance of the leads relative to the load', 'r R_l l R_s'),
  'lead-capacitance-part': prose('The load relative to the reactance between its leads', 'h f C_l l R_s'),
  'line-phase': prose('Phase that a line turns over its length', 'beta h g r'),
  'line-attenuation': prose('Attenuation of a line over its length', 'alpha r h beta'),
  'line-share-real': prose(
    'Share of the impedance of a line that counts, real part',
    's_re alpha beta',
    'sinh(\u03b3)/\u03b3 with \u03b3 = \u03b1 + j\u03b2; 1 for leads that are short beside a wave.',
  ),
  'line-share-imaginary': prose(
    'Share of the impedance of a line that counts, imaginary part',
    's_im alpha beta',
    '0 for leads without resistance.',
  ),
  'line-rest-real': prose(
    'Change along a line, real part',
    'a_re alpha beta',
    'cosh(\u03b3) \u2212 1 without the difference of near values.',
  ),
  'line-rest-imaginary': prose(
    'Change along a line, imaginary part',
    'a_im alpha beta',
    '0 for leads without resistance.',
  ),
  'lumped-share-real': prose(
    'Share of the admittance of lumped leads that counts, real part',
    's_re g h',
    'Half of the capacitance at each end, all of the inductance between.',
  ),
  'lumped-share-imaginary': prose('Share of the admittance of lumped leads that counts, imaginary part', 's_im r h'),
  'lumped-rest-real': prose('Change along lumped leads, real part', 'a_re g h'),
  'lumped-rest-imaginary': prose('Change along lumped leads, imaginary part', 'a_im r h'),
  'added-voltage-real': prose(
    'Voltage that leads add to that of the load, real part',
    'w_re a_re a_im t r s_re g s_im',
  ),
  'added-voltage-imaginary': prose(
    'Voltage that leads add to that of the load, imaginary part',
    'w_im a_re a_im t r s_re g s_im',
  ),
  'added-current-real': prose('Current that bypasses the load, real part', 'd_re a_re h s_re s_im t'),
  'added-current-imaginary': prose('Current that bypasses the load, imaginary part', 'd_im a_im h s_re s_im t'),
  'resistance-through-leads': prose('Resistance of a load that is seen through leads', 'R_n R_s t w_re w_im d_re d_im'),
  'reactance-through-leads': prose('Reactance of a load that is seen through leads', 'X_n R_s t w_re w_im d_re d_im'),
  'voltage-ratio-of-leads': prose('Voltage at the load over that at the near end of the leads', 'k_V t w_re w_im'),
  'current-ratio-of-leads': prose('Current in the load over that into the leads', 'k_I d_re d_im'),
  'bypass-ratio-of-leads': prose(
    'Current beside the load over that into the leads',
    'k_b d_re d_im k_I',
    'A sum of phasors, not of sizes: this and the ratio of the currents add up to more than 1.',
  ),
  'current-error-through-leads': prose(
    'Error of the power that is reckoned from the current into the leads',
    'e_I x d_re d_im',
  ),
  'voltage-error-through-leads': prose(
    'Error of the power that is reckoned from the voltage at the near end of the leads',
    'e_V e_0 w_re w_im t x',
  ),
  'voltage-at-load': prose('Voltage at the load from that at the near end of the leads', 'V_2 k_V V'),
  'current-at-load': prose('Current in the load from that into the leads', 'I_2 k_I I'),
  'bypass-current': prose('Current that leaves the leads beside the load', 'I_b k_b I'),
  'characteristic-impedance': prose('Characteristic impedance of a line', 'Z_0 L_l C_l'),
  'line-velocity': prose('Velocity of a wave on a line', 'v L_l C_l'),
};
