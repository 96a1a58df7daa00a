import fc from 'fast-check';
import {
  assessLeakage,
  leadCapacitance,
  leakageAtNominal,
  leakageFromStray,
  leakageLimit,
  strayFromLeakage,
} from '../../../src/leakage/index.js';
import { frequency, load, valueBetween, voltage } from '../../generators.js';
import type { Twins } from './twin.js';

const resistance = { R: load(), R_N: load() };

export const twins: Twins = {
  'leakage-limit-from-power': {
    fast: ({ q, P_r, R_N }) =>
      leakageLimit({
        arrangement: 'bipolar',
        measuredAt: 'leads',
        ratedPower: P_r!,
        limit: { shareOfRatedPower: q!, measuringResistance: R_N!, statedIn: 'test' },
      }).current,
    symbols: { q: valueBetween(0.001, 1) },
  },
  'reactance-of-capacitance': {
    fast: ({ f, C }) => {
      const source = { kind: 'capacitance', capacitance: C!, frequency: f! } as const;
      return leakageAtNominal({ current: 1, measuringResistance: 200, source }).working[0]!.value;
    },
  },
  'leakage-at-nominal': {
    fast: ({ I, R_s, X_s, R, R_N }) =>
      leakageAtNominal({
        current: I!,
        measuringResistance: R!,
        nominalResistance: R_N!,
        source: { kind: 'impedance', resistance: R_s!, reactance: X_s! },
      }).current,
    symbols: { R_s: valueBetween(0, 1e4), X_s: valueBetween(-1e5, 1e3), ...resistance },
  },
  'leakage-highest': {
    fast: ({ I, R, R_N }) =>
      leakageAtNominal({ current: I!, measuringResistance: R!, nominalResistance: R_N! }).range.upper,
  },
  'leakage-lowest': {
    fast: ({ I, R, R_N }) =>
      leakageAtNominal({ current: I!, measuringResistance: R!, nominalResistance: R_N! }).range.lower,
  },
  'part-of-limit': {
    fast: ({ I, I_max }) =>
      assessLeakage({
        arrangement: 'isolated',
        measuredAt: 'leads',
        limit: { current: I_max!, statedIn: 'test' },
        reading: I!,
      }).margin,
  },
  'leakage-from-stray': {
    fast: ({ V, R, f, C }) =>
      leakageFromStray({ voltage: V!, measuringResistance: R!, frequency: f!, capacitance: C! }).current,
  },
  'stray-from-leakage': {
    fast: ({ V, I, R, f }) =>
      strayFromLeakage({ voltage: V!, current: I!, measuringResistance: R!, frequency: f! }).capacitance,
    // The voltage drives more than the leakage through the resistor alone, or no capacitance gives it.
    inputs: fc
      .record({ V: voltage(), part: valueBetween(1e-4, 0.999), R: load(), f: frequency() })
      .map(({ V, part, R, f }) => ({ V, I: (part * V) / R, R, f })),
  },
  'wire-over-plane': {
    fast: ({ epsilon_r, h, d }) =>
      leadCapacitance({
        length: 1,
        conductorDiameter: d!,
        insulationDiameter: d!,
        gap: h! - d! / 2,
        relativePermittivity: epsilon_r!,
      }).upper,
    inputs: fc
      .record({ epsilon_r: valueBetween(1, 10), d: valueBetween(1e-4, 1e-2), ratio: valueBetween(1, 100) })
      .map(({ epsilon_r, d, ratio }) => ({ epsilon_r, d, h: d * ratio })),
  },
  'lead-capacitance': {
    fast: ({ C_l, l }) => {
      // The height at which a wire of 1 mm has this capacitance by length.
      const h = (1e-3 / 2) * Math.cosh((2 * Math.PI * 8.8541878128e-12) / C_l!);
      const wire = { conductorDiameter: 1e-3, insulationDiameter: 1e-3, relativePermittivity: 1 };
      return leadCapacitance({ ...wire, gap: h - 1e-3 / 2, length: l! }).lower;
    },
    symbols: { C_l: valueBetween(1e-11, 3e-11), l: valueBetween(0.1, 10) },
  },
};
