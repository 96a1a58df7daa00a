import fc from 'fast-check';
import {
  complexLoadPower,
  crestFactor,
  currentFromPower,
  currentFromPowerAndVoltage,
  currentFromVoltage,
  loadFromCurrentAndVoltage,
  loadFromPowerAndCurrent,
  loadFromPowerAndVoltage,
  peakCurrent,
  peakFromRms,
  peakVoltage,
  powerFromCurrent,
  powerFromCurrentAndVoltage,
  powerFromVoltage,
  rmsFromPeak,
  voltageFromCurrent,
  voltageFromPower,
  voltageFromPowerAndCurrent,
} from '../../../src/circuit/index.js';
import { crestFactor as crestFactors, load, reactance, voltage } from '../../generators.js';
import type { Twins } from './twin.js';

/** Resistance and the magnitude of an impedance that holds it. */
const resistanceAndImpedance = fc.record({ R: load(), X: reactance() }).map(({ R, X }) => ({ R, Z: Math.hypot(R, X) }));

export const twins: Twins = {
  'current-from-power': { fast: ({ P, R }) => currentFromPower(P!, R!) },
  'voltage-from-power': { fast: ({ P, R }) => voltageFromPower(P!, R!) },
  'power-from-current': { fast: ({ I, R }) => powerFromCurrent(I!, R!) },
  'power-from-voltage': { fast: ({ V, R }) => powerFromVoltage(V!, R!) },
  'current-from-voltage': { fast: ({ V, R }) => currentFromVoltage(V!, R!) },
  'voltage-from-current': { fast: ({ I, R }) => voltageFromCurrent(I!, R!) },
  'power-from-current-and-voltage': { fast: ({ I, V }) => powerFromCurrentAndVoltage(I!, V!) },
  'voltage-from-power-and-current': { fast: ({ P, I }) => voltageFromPowerAndCurrent(P!, I!) },
  'current-from-power-and-voltage': { fast: ({ P, V }) => currentFromPowerAndVoltage(P!, V!) },
  'load-from-power-and-current': { fast: ({ P, I }) => loadFromPowerAndCurrent(P!, I!) },
  'load-from-power-and-voltage': { fast: ({ P, V }) => loadFromPowerAndVoltage(P!, V!) },
  'load-from-current-and-voltage': { fast: ({ I, V }) => loadFromCurrentAndVoltage(I!, V!) },
  'peak-from-rms': { fast: ({ x, CF }) => peakFromRms(x!, CF!), symbols: { x: voltage(), CF: crestFactors() } },
  'rms-from-peak': { fast: ({ x_p, CF }) => rmsFromPeak(x_p!, CF!), symbols: { x_p: voltage(), CF: crestFactors() } },
  'crest-factor': {
    fast: ({ x_p, x }) => crestFactor({ peak: x_p!, rms: x! }),
    inputs: fc.record({ x: voltage(), CF: crestFactors() }).map(({ x, CF }) => ({ x, x_p: CF * x })),
  },
  'peak-voltage': {
    fast: ({ P, R, CF }) => peakVoltage({ power: P!, load: R!, crestFactor: CF! }),
    symbols: { CF: crestFactors() },
  },
  'peak-current': {
    fast: ({ P, R, CF }) => peakCurrent({ power: P!, load: R!, crestFactor: CF! }),
    symbols: { CF: crestFactors() },
  },
  'impedance-magnitude': {
    fast: ({ R, X }) => complexLoadPower({ resistance: R!, reactance: X!, current: 1 }).impedance,
    symbols: { X: reactance() },
  },
  'phase-of-load': {
    fast: ({ R, X }) => complexLoadPower({ resistance: R!, reactance: X!, current: 1 }).phase,
    symbols: { X: reactance() },
  },
  'voltage-across-impedance': {
    fast: ({ I, Z }) => complexLoadPower({ resistance: Z!, reactance: 0, current: I! }).voltage,
  },
  'current-through-impedance': {
    fast: ({ V, Z }) => complexLoadPower({ resistance: Z!, reactance: 0, voltage: V! }).current,
  },
  'apparent-power': {
    fast: ({ V, I }) => complexLoadPower({ resistance: V! / I!, reactance: 0, current: I! }).apparentPower,
  },
  'reactive-power': {
    fast: ({ I, X }) => complexLoadPower({ resistance: 50, reactance: X!, current: I! }).reactivePower,
    symbols: { X: reactance() },
  },
  'power-factor': {
    fast: ({ R, Z }) =>
      complexLoadPower({ resistance: R!, reactance: Math.sqrt((Z! - R!) * (Z! + R!)), current: 1 }).powerFactor,
    inputs: resistanceAndImpedance,
  },
};
