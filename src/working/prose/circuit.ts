import type { Prose } from './prose.js';

/** Prose of the formulas of circuit/, by formula identifier. */
export const circuitProse: Readonly<Record<string, Prose>> = {
  'current-from-power': {
    title: 'Current in a load from its power',
    meanings: { I: 'rms current in the load', P: 'power in the load', R: 'resistance of the load' },
  },
  'voltage-from-power': {
    title: 'Voltage across a load from its power',
    meanings: { V: 'rms voltage across the load', P: 'power in the load', R: 'resistance of the load' },
  },
  'power-from-current': {
    title: 'Power in a load from its current',
    meanings: { P: 'power in the load', I: 'rms current in the load', R: 'resistance of the load' },
    note: 'The power that becomes heat: a reactance in series does not change it.',
  },
  'power-from-voltage': {
    title: 'Power in a load from the voltage across it',
    meanings: { P: 'power in the load', V: 'rms voltage across the load', R: 'resistance of the load' },
    note: 'Holds for the voltage across the resistance itself: a reactance in series makes it read too high.',
  },
  'current-from-voltage': {
    title: 'Current in a load from the voltage across it',
    meanings: { I: 'rms current in the load', V: 'rms voltage across the load', R: 'resistance of the load' },
  },
  'voltage-from-current': {
    title: 'Voltage across a load from its current',
    meanings: { V: 'rms voltage across the load', I: 'rms current in the load', R: 'resistance of the load' },
  },
  'power-from-current-and-voltage': {
    title: 'Power in a load from current and voltage',
    meanings: { P: 'power in the load', I: 'rms current in the load', V: 'rms voltage across the load' },
    note: 'For a resistive load: with reactance the product is the apparent power.',
  },
  'voltage-from-power-and-current': {
    title: 'Voltage across a load from its power and current',
    meanings: { V: 'rms voltage across the load', P: 'power in the load', I: 'rms current in the load' },
  },
  'current-from-power-and-voltage': {
    title: 'Current in a load from its power and voltage',
    meanings: { I: 'rms current in the load', P: 'power in the load', V: 'rms voltage across the load' },
  },
  'load-from-power-and-current': {
    title: 'Load from its power and current',
    meanings: { R: 'resistance of the load', P: 'power in the load', I: 'rms current in the load' },
  },
  'load-from-power-and-voltage': {
    title: 'Load from its power and voltage',
    meanings: { R: 'resistance of the load', V: 'rms voltage across the load', P: 'power in the load' },
  },
  'load-from-current-and-voltage': {
    title: 'Load from its current and voltage',
    meanings: { R: 'resistance of the load', V: 'rms voltage across the load', I: 'rms current in the load' },
  },
  'peak-from-rms': {
    title: 'Peak value from rms value and crest factor',
    meanings: { x_p: 'peak value', CF: 'crest factor of the waveform', x: 'rms value' },
  },
  'rms-from-peak': {
    title: 'Rms value from peak value and crest factor',
    meanings: { x: 'rms value', x_p: 'peak value', CF: 'crest factor of the waveform' },
  },
  'crest-factor': {
    title: 'Crest factor of a waveform',
    meanings: { CF: 'crest factor of the waveform', x_p: 'peak value', x: 'rms value' },
    note: 'It depends on the load: record whether it was stated for the open circuit or for the rated load.',
  },
  'peak-voltage': {
    title: 'Peak voltage across a load',
    meanings: {
      V_p: 'peak voltage across the load',
      CF: 'crest factor of the waveform',
      P: 'power in the load',
      R: 'resistance of the load',
    },
  },
  'peak-current': {
    title: 'Peak current in a load',
    meanings: {
      I_p: 'peak current in the load',
      CF: 'crest factor of the waveform',
      P: 'power in the load',
      R: 'resistance of the load',
    },
  },
  'impedance-magnitude': {
    title: 'Magnitude of an impedance',
    meanings: {
      Z: 'magnitude of the impedance',
      R: 'resistance of the load',
      X: 'reactance of the load, positive when inductive',
    },
  },
  'phase-of-load': {
    title: 'Phase of the voltage ahead of the current',
    meanings: {
      phi: 'phase of the voltage ahead of the current',
      X: 'reactance of the load, positive when inductive',
      R: 'resistance of the load',
    },
  },
  'voltage-across-impedance': {
    title: 'Voltage across an impedance',
    meanings: { V: 'rms voltage across the load', I: 'rms current in the load', Z: 'magnitude of the impedance' },
  },
  'current-through-impedance': {
    title: 'Current through an impedance',
    meanings: { I: 'rms current in the load', V: 'rms voltage across the load', Z: 'magnitude of the impedance' },
  },
  'apparent-power': {
    title: 'Apparent power',
    meanings: { S: 'apparent power', V: 'rms voltage across the load', I: 'rms current in the load' },
  },
  'reactive-power': {
    title: 'Reactive power',
    meanings: {
      Q: 'reactive power',
      I: 'rms current in the load',
      X: 'reactance of the load, positive when inductive',
    },
    note: 'Positive when inductive, negative when capacitive.',
  },
  'power-factor': {
    title: 'Power factor of a load',
    meanings: { lambda: 'power factor', R: 'resistance of the load', Z: 'magnitude of the impedance' },
    note: 'For a sinusoidal current. Active over apparent power.',
  },
};
