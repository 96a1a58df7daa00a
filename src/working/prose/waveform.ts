import type { Prose } from './prose.js';

const rms = 'rms value';
const average = 'average rectified value';
const peak = 'peak value';
const duty = 'duty cycle';
const amplitude = 'amplitude of the sine';
const amplitudeOfBurst = 'amplitude from which a burst starts, with the rest of earlier ones';
const frequency = 'frequency of the sine';
const rate = 'bursts a second';
const timeConstant = 'time in which the envelope falls to 1/e';
const gateAngle = 'angle of the sine while the gate is open';
const startPhase = 'phase of the sine when the gate opens';
const firstAngle = 'start phase, less whole half-cycles';
const burstPhase = 'phase from which a burst starts, with the rest of earlier ones';
const ringing = 'ringing, the time constant in radians of the sine';
const nextPhase = 'phase reached when the next burst begins, less whole turns';
const halfCycles = 'whole half-cycles after the first zero';
const lastAngle = 'angle after the last whole half-cycle';

/** Prose of the formulas of waveform/, by formula identifier. */
export const waveformProse: Readonly<Record<string, Prose>> = {
  'sine-rms': { title: 'Rms value of a sine', meanings: { x: rms, x_p: peak } },
  'sine-average': { title: 'Average rectified value of a sine', meanings: { x_a: average, x_p: peak } },
  'triangle-rms': { title: 'Rms value of a triangle or a sawtooth', meanings: { x: rms, x_p: peak } },
  'triangle-average': {
    title: 'Average rectified value of a triangle or a sawtooth',
    meanings: { x_a: average, x_p: peak },
  },
  'pulse-rms': { title: 'Rms value of rectangular pulses', meanings: { x: rms, x_p: peak, D: duty } },
  'pulse-average': {
    title: 'Average rectified value of rectangular pulses',
    meanings: { x_a: average, x_p: peak, D: duty },
  },
  'form-factor': { title: 'Form factor of a waveform', meanings: { FF: 'form factor', x: rms, x_a: average } },
  'average-responding-factor': {
    title: 'Reading of an average-responding instrument over the rms value',
    meanings: { k_a: 'reading over rms value', x_a: average, x: rms },
    note: 'For an instrument that is calibrated to show the rms value of a sine, whose form factor is π/(2√2).',
  },
  'burst-energy-from-voltage': {
    title: 'Energy of one burst from the voltage',
    meanings: { E_b: 'energy of one burst', x: 'rms voltage across the load', R: 'resistance of the load', f_r: rate },
  },
  'burst-energy-from-current': {
    title: 'Energy of one burst from the current',
    meanings: { E_b: 'energy of one burst', x: 'rms current in the load', R: 'resistance of the load', f_r: rate },
  },
  'gated-sine-rms': {
    title: 'Rms value of a gated sine of whole half-cycles',
    meanings: { x: rms, A: amplitude, D: duty },
  },
  'gated-sine-average': {
    title: 'Average rectified value of a gated sine of whole half-cycles',
    meanings: { x_a: average, A: amplitude, D: duty },
  },
  'gate-angle': {
    title: 'Angle of a gate',
    meanings: { theta: gateAngle, f: frequency, f_r: rate, D: duty },
  },
  'gated-sine-rms-with-end': {
    title: 'Rms value of a gated sine of any gate',
    meanings: { x: rms, A: amplitude, D: duty, phi: startPhase, theta: gateAngle },
    note: 'For whole half-cycles it is A·√(D/2): the rest is the part of a half-cycle at the end.',
  },
  'gated-sine-average-inside': {
    title: 'Average rectified value of a gated sine within one half-cycle',
    meanings: { x_a: average, A: amplitude, D: duty, theta: gateAngle, a: firstAngle },
  },
  'gated-sine-average-over': {
    title: 'Average rectified value of a gated sine over several half-cycles',
    meanings: { x_a: average, A: amplitude, D: duty, theta: gateAngle, a: firstAngle, n: halfCycles, r: lastAngle },
  },
  'gated-sine-peak': {
    title: 'Peak of a gated sine that reaches no crest',
    meanings: { x_p: peak, A: amplitude, phi: startPhase, theta: gateAngle },
  },
  ringing: { title: 'Ringing of a damped sine', meanings: { u: ringing, f: frequency, tau: timeConstant } },
  'phase-of-next-burst': {
    title: 'Phase that a burst has reached when the next begins',
    meanings: { theta: nextPhase, f: frequency, f_r: rate },
  },
  'damped-sine-remainder': {
    title: 'Share of its amplitude that a burst has when the next begins',
    meanings: { q: 'share of the amplitude', f_r: rate, tau: timeConstant },
  },
  'damped-sine-overlap-amplitude': {
    title: 'Amplitude of overlapping damped sines',
    meanings: {
      B: amplitudeOfBurst,
      A: 'amplitude of a single burst',
      f_r: rate,
      tau: timeConstant,
      theta: nextPhase,
    },
    note: 'The bursts so far are a geometric series: its sum scales and turns the sine.',
  },
  'damped-sine-overlap-phase': {
    title: 'Phase of overlapping damped sines',
    meanings: { psi: burstPhase, f_r: rate, tau: timeConstant, theta: nextPhase },
  },
  'damped-sine-rms': {
    title: 'Rms value of a repeated damped sine',
    meanings: {
      x: rms,
      B: amplitudeOfBurst,
      f_r: rate,
      tau: timeConstant,
      psi: burstPhase,
      u: ringing,
      theta: nextPhase,
    },
    note: 'For bursts that die out it is A·√((f_r·τ/4)·u²/(1 + u²)).',
  },
  'damped-sine-average': {
    title: 'Average rectified value of a repeated damped sine',
    meanings: {
      x_a: average,
      B: amplitudeOfBurst,
      f_r: rate,
      f: frequency,
      u: ringing,
      x: 'phase from which a burst starts, less half a turn where the sine is negative',
      n: halfCycles,
      r: lastAngle,
    },
  },
  'damped-sine-peak': {
    title: 'True peak of a damped sine',
    meanings: { x_p: peak, B: amplitudeOfBurst, psi: burstPhase, u: ringing },
    note: 'The sine turns before its envelope has fallen far: the peak is lower than the start of the envelope.',
  },
};
