import type { Prose } from './prose.js';

/** Prose of the formulas of electrode/, by formula identifier. */
export const electrodeProse: Readonly<Record<string, Prose>> = {
  'heating-factor-added': {
    title: 'Heating factor after one more activation',
    meanings: {
      H: 'heating factor after the activation',
      H_0: 'heating factor before it',
      I: 'rms current through the neutral electrode',
      t: 'length of the activation',
    },
    note: 'No cooling between activations is counted, so that the sum is never too low.',
  },
  'part-of-heating-figure': {
    title: 'Part of a figure that a heating factor uses up',
    meanings: { m: 'heating factor over figure', H: 'heating factor', H_max: 'figure' },
  },
  'heating-factor-left': {
    title: 'What is left up to a figure',
    meanings: { H_r: 'heating factor that is left', H_max: 'figure', H: 'heating factor' },
  },
  'duration-to-figure': {
    title: 'Activation that reaches a figure',
    meanings: { t_r: 'length of the activation', H_r: 'heating factor that is left', I: 'rms current' },
  },
  'resistances-in-series': {
    title: 'Resistances in series',
    meanings: { R: 'resistance of both', R_c: 'resistance of the contact', R_t: 'resistance in series with it' },
  },
  'impedance-of-capacitance': {
    title: 'Impedance of a capacitance',
    meanings: { Z_max: 'magnitude of the impedance', f: 'frequency', C: 'capacitance' },
  },
  'part-of-impedance-limit': {
    title: 'Part of its limit that a contact impedance uses up',
    meanings: { m: 'impedance over limit', Z: 'magnitude of the contact impedance', Z_max: 'limit' },
  },
  'foil-current': {
    title: 'Current of one of two foils',
    meanings: {
      I_f: 'rms current of the foil',
      I: 'rms current of both foils together',
      R_f: 'series resistance of the foil',
      X_f: 'series reactance of the foil',
      R_o: 'series resistance of the other foil',
      X_o: 'series reactance of the other foil',
    },
    note: 'Where the two differ in phase, the rms currents of the foils add to more than the whole.',
  },
  'phase-between-foils': {
    title: 'Phase of the current of the first foil ahead of that of the second',
    meanings: {
      phi: 'phase of the first current ahead of the second',
      X_1: 'series reactance of the first foil',
      R_1: 'series resistance of the first foil',
      X_2: 'series reactance of the second foil',
      R_2: 'series resistance of the second foil',
    },
  },
  'current-concentration': {
    title: 'Concentration of the current on one foil',
    meanings: {
      k: 'larger current over half of the whole',
      I_l: 'larger of the two currents',
      I: 'rms current of both foils together',
    },
    note: 'The heat of the foil rises with its square.',
  },
  'current-density': {
    title: 'Mean current density under an electrode',
    meanings: { J: 'mean current density', I: 'rms current', A_e: 'area in contact' },
    note: 'A mean: at the edges, the leading one above all, the density is higher.',
  },
};
