import { fail, requireChoice, requirePositive } from '../checks/index.js';
import type { WaveformQuantity } from './waveform-figures.js';

/** How large a waveform is, and what of. */
export interface WaveformScale {
  /** Largest absolute value, in volts or amperes, greater than 0; 1 unless stated, so that figures are relative to it. */
  readonly peak?: number;
  /** What the waveform is the course of; `voltage` unless stated. */
  readonly quantity?: WaveformQuantity;
}

/** What the energy of a burst is reckoned with. */
export interface BurstLoad {
  /** Bursts a second, in hertz, greater than 0. */
  readonly repetitionRate?: number;
  /** Load into which the energy of one burst is wanted, in ohms; needs `repetitionRate`. */
  readonly load?: number;
}

/** The quantity, which is voltage unless stated. */
export function requireWaveformQuantity(quantity: WaveformQuantity | undefined): WaveformQuantity {
  return quantity === undefined ? 'voltage' : requireChoice(quantity, 'quantity', ['voltage', 'current']);
}

/** Load and repetition rate where a load is stated. */
export function requireBurst({
  repetitionRate,
  load,
}: BurstLoad): { readonly load: number; readonly repetitionRate: number } | undefined {
  if (repetitionRate !== undefined) requirePositive(repetitionRate, 'repetitionRate');
  if (load === undefined) return undefined;
  requirePositive(load, 'load');
  if (repetitionRate === undefined) {
    fail('missing-member', 'repetitionRate', repetitionRate, 'must be given where the energy of a burst is wanted');
  }
  return { load, repetitionRate: repetitionRate as number };
}
