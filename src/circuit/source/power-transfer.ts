import { requirePositive, requirePositiveResult } from '../../checks/index.js';
import { availablePowerFormula, powerFromSourceFormula } from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';

/** A source with a load. */
export interface SourceAndLoad {
  /** Rms voltage without a load, in volts, greater than 0. */
  readonly openCircuitVoltage: number;
  /** In ohms, greater than 0. */
  readonly sourceResistance: number;
  /** In ohms, greater than 0. */
  readonly load: number;
}

/** Power that a source gives to a load. */
export interface PowerTransfer {
  /** In the load, in watts. */
  readonly power: number;
  /** In a load of the source's own resistance, the highest that there is, in watts. */
  readonly availablePower: number;
  /** The one over the other, 0–1. */
  readonly share: number;
  readonly working: readonly Step[];
}

/**
 * Power that a source of constant voltage behind a resistance gives to a load.
 *
 * @param source Open-circuit voltage, source resistance, load
 * @returns Power, available power and their ratio, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Within 4 units in the last place
 * @example
 * ```ts
 * import { powerTransfer } from 'esu-limits';
 * const { power, share } = powerTransfer({ openCircuitVoltage: 100, sourceResistance: 100, load: 300 });
 * [power, share]; // → [18.75, 0.75]
 * ```
 */
export function powerTransfer(source: SourceAndLoad): PowerTransfer {
  const E = requirePositive(source.openCircuitVoltage, 'openCircuitVoltage');
  const R_s = requirePositive(source.sourceResistance, 'sourceResistance');
  const R = requirePositive(source.load, 'load');
  const current = E / (R + R_s);
  const power = requirePositiveResult(current * R * current, 'power');
  const availablePower = requirePositiveResult((E / (4 * R_s)) * E, 'availablePower');
  // By the smaller over the larger, so that no sum of both overflows.
  const ratio = Math.min(R, R_s) / Math.max(R, R_s);
  const share = (4 * ratio) / (1 + ratio) / (1 + ratio);
  const working = [
    step(powerFromSourceFormula, 'power in the load', { E, R_s, R }, power),
    step(availablePowerFormula, 'highest power that the source can give', { E, R_s }, availablePower),
  ];
  return { power, availablePower, share, working };
}
