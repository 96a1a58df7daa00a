import fc from 'fast-check';
import {
  assessContact,
  contactImpedance,
  contactLimits,
  currentDensity,
  electrodeHeating,
  foilCurrents,
} from '../../../src/electrode/index.js';
import { current, load, valueBetween } from '../../generators.js';
import type { Twins } from './twin.js';

/** A heating factor, in A²·s. */
const heating = valueBetween(0.1, 100);
/** One activation whose heating factor is the stated one. */
const activationOf = (H: number) => [{ current: 1, duration: H }];
/** A foil of the stated series resistance and reactance at 500 kHz. */
const foilOf = (R: number, X: number) => ({ seriesResistance: R, capacitance: -1 / (2 * Math.PI * 5e5 * X) });
const reactance = valueBetween(-5000, -0.1);

export const twins: Twins = {
  'heating-factor-added': {
    fast: ({ H_0, I, t }) =>
      electrodeHeating({ activations: [...activationOf(H_0!), { current: I!, duration: t! }], figure: 1 })
        .heatingFactor,
    symbols: { H_0: heating },
  },
  'part-of-heating-figure': {
    fast: ({ H, H_max }) => electrodeHeating({ activations: activationOf(H!), figure: H_max! }).share,
    symbols: { H: heating, H_max: heating },
  },
  'heating-factor-left': {
    fast: ({ H, H_max }) => electrodeHeating({ activations: activationOf(H!), figure: H_max! }).remaining,
    // Where the figure is reached nothing is left, and there is no step.
    inputs: fc
      .record({ H_max: heating, part: valueBetween(0.01, 0.99) })
      .map(({ H_max, part }) => ({ H_max, H: part * H_max })),
  },
  'duration-to-figure': {
    fast: ({ H_r, I }) =>
      electrodeHeating({ activations: activationOf(0), figure: H_r!, nextCurrent: I! }).remainingDuration!,
    symbols: { H_r: heating },
  },
  'resistances-in-series': {
    fast: ({ R_c, R_t }) => contactImpedance({ resistance: R_c!, seriesResistance: R_t! }, 5e5).resistance,
    symbols: { R_t: load() },
  },
  'impedance-of-capacitance': {
    fast: ({ f, C }) =>
      assessContact({
        kind: 'capacitive',
        impedance: 0,
        frequency: f!,
        limits: { ...contactLimits, capacitance: C! },
      }).limit,
  },
  'part-of-impedance-limit': {
    fast: ({ Z, Z_max }) =>
      assessContact({
        kind: 'conductive',
        impedance: Z!,
        frequency: 5e5,
        limits: { ...contactLimits, conductiveImpedance: Z_max! },
      }).margin,
  },
  'foil-current': {
    fast: ({ I, R_f, X_f, R_o, X_o }) =>
      foilCurrents({ current: I!, frequency: 5e5, foils: [foilOf(R_f!, X_f!), foilOf(R_o!, X_o!)] }).foils[0].current,
    inputs: fc.record({ I: current(), R_f: load(), X_f: reactance, R_o: load(), X_o: reactance }),
  },
  'phase-between-foils': {
    fast: ({ X_1, R_1, X_2, R_2 }) =>
      foilCurrents({ current: 1, frequency: 5e5, foils: [foilOf(R_1!, X_1!), foilOf(R_2!, X_2!)] }).phaseBetween,
    // Far enough apart that the difference keeps its digits when a reactance goes through a capacitance and back.
    inputs: fc
      .record({ R_1: load(), first: valueBetween(0.5, 5), R_2: load(), second: valueBetween(0.01, 0.3) })
      .map(({ R_1, first, R_2, second }) => ({ R_1, X_1: -first * R_1, R_2, X_2: -second * R_2 })),
  },
  'current-concentration': {
    fast: ({ I_l, I }) => {
      // Two resistances that share the current so that the first has the stated part of it.
      const foils = [{ resistance: I! - I_l! }, { resistance: I_l! }] as const;
      return foilCurrents({ current: I!, frequency: 5e5, foils }).concentration;
    },
    inputs: fc.record({ I: current(), part: valueBetween(0.51, 0.99) }).map(({ I, part }) => ({ I, I_l: part * I })),
  },
  'current-density': {
    fast: ({ I, A_e }) => currentDensity({ current: I!, area: A_e! }),
    symbols: { A_e: valueBetween(1e-4, 0.03) },
  },
};
