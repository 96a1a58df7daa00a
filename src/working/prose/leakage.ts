import type { Prose } from './prose.js';

const resistors = {
  R: 'resistance of the measuring resistor as it is',
  R_N: 'resistance of the measuring resistor at which the limit holds',
} as const;

/** Prose of the formulas of leakage/, by formula identifier. */
export const leakageProse: Readonly<Record<string, Prose>> = {
  'leakage-limit-from-power': {
    title: 'Highest HF leakage of a bipolar output',
    meanings: {
      I_max: 'highest permitted leakage',
      q: 'share of the rated power that may appear in the measuring resistor',
      P_r: 'highest rated bipolar output power',
      R_N: resistors.R_N,
    },
    note: 'From memory: check your copy of the standard.',
  },
  'reactance-of-capacitance': {
    title: 'Reactance of a capacitance',
    meanings: { X_C: 'reactance, negative as it is capacitive', f: 'frequency', C: 'capacitance' },
  },
  'leakage-at-nominal': {
    title: 'Leakage that the nominal measuring resistor would carry',
    meanings: {
      I_N: 'leakage in the nominal measuring resistor',
      I: 'leakage as it was read',
      R_s: 'resistance of the path that the leakage comes through',
      X_s: 'reactance of that path, negative when capacitive',
      ...resistors,
    },
    note: 'A constant voltage behind an impedance. A constant current needs no conversion.',
  },
  'leakage-highest': {
    title: 'Highest leakage in the nominal measuring resistor, whatever the path',
    meanings: { I_N: 'highest leakage in the nominal measuring resistor', I: 'leakage as it was read', ...resistors },
    note: 'Between a constant current and a constant voltage lies every source of constant voltage behind an impedance.',
  },
  'leakage-lowest': {
    title: 'Lowest leakage in the nominal measuring resistor, whatever the path',
    meanings: { I_low: 'lowest leakage in the nominal measuring resistor', I: 'leakage as it was read', ...resistors },
  },
  'part-of-limit': {
    title: 'Part of a limit that a current uses up',
    meanings: { m: 'current over limit', I: 'current', I_max: 'limit' },
  },
  'leakage-from-stray': {
    title: 'Leakage that a stray capacitance drives through the measuring resistor',
    meanings: {
      I: 'rms leakage',
      V: 'rms voltage to earth of the conductor that couples',
      R: 'resistance of the measuring resistor',
      f: 'carrier frequency',
      C: 'stray capacitance',
    },
    note: 'For a sinusoidal output. A waveform with harmonics gives more.',
  },
  'stray-from-leakage': {
    title: 'Stray capacitance that would give a leakage',
    meanings: {
      C: 'stray capacitance',
      V: 'rms voltage to earth of the conductor that couples',
      I: 'rms leakage',
      R: 'resistance of the measuring resistor',
      f: 'carrier frequency',
    },
    note: 'For a sinusoidal output. A waveform with harmonics needs less.',
  },
  'wire-over-plane': {
    title: 'Capacitance by length of a round wire over a metal plane',
    meanings: {
      C_l: 'capacitance by length',
      epsilon_r: 'relative permittivity of what is around the wire',
      h: 'height of the axis of the wire over the plane',
      d: 'diameter of the wire',
    },
  },
  'lead-capacitance': {
    title: 'Capacitance of a lead along metal',
    meanings: { C: 'capacitance to the metal', C_l: 'capacitance by length', l: 'length along the metal' },
  },
};
