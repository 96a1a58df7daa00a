import { fail, requirePositive, requirePositiveResult, requireResult } from '../../checks/index.js';
import { openCircuitVoltageFormula, sourceResistanceFormula } from '../../working/formulas/circuit-effects.js';
import { type Step, step } from '../../working/index.js';

/** A reading at a load. */
export interface LoadReading {
  /** Resistance, in ohms, greater than 0. */
  readonly load: number;
  /** Rms voltage across it, in volts, greater than 0. */
  readonly voltage: number;
}

/** A generator as a source of constant voltage behind a resistance. */
export interface EquivalentSource {
  /** Rms voltage without a load, in volts: of the straight line through both readings, not of the generator. */
  readonly openCircuitVoltage: number;
  /** In ohms. */
  readonly sourceResistance: number;
  readonly working: readonly Step[];
}

/**
 * The source that gives two readings at two loads: the straight line of voltage against current through both.
 *
 * A generator that keeps its current or its power is no such source: the values then hold between the two loads only.
 *
 * @param first Load and voltage
 * @param second The same at another load
 * @returns Open-circuit voltage and source resistance, with the working
 * @throws CalculationError `not-a-number`, `not-positive`, `duplicate` (the same load), `contradiction` (no source of
 * positive resistance gives both readings), `result-out-of-range`
 * @source Ohm's law for a source with a resistance in series
 * @accuracy As the difference of the two currents permits
 * @example
 * ```ts
 * import { equivalentSource } from 'esu-limits';
 * const source = equivalentSource({ load: 100, voltage: 50 }, { load: 300, voltage: 75 });
 * [source.openCircuitVoltage, source.sourceResistance]; // → [100, 100]
 * ```
 */
export function equivalentSource(first: LoadReading, second: LoadReading): EquivalentSource {
  const R_1 = requirePositive(first.load, 'first.load');
  const V_1 = requirePositive(first.voltage, 'first.voltage');
  const R_2 = requirePositive(second.load, 'second.load');
  const V_2 = requirePositive(second.voltage, 'second.voltage');
  if (R_1 === R_2) fail('duplicate', 'second.load', R_2, 'must be another load than the first');
  const sourceResistance = requireResult((V_2 - V_1) / (V_1 / R_1 - V_2 / R_2), 'sourceResistance');
  if (!(sourceResistance > 0)) {
    fail(
      'contradiction',
      'second.voltage',
      V_2,
      'must be such that the higher load has the higher voltage and the lower current',
    );
  }
  const openCircuitVoltage = requirePositiveResult(V_1 + (V_1 / R_1) * sourceResistance, 'openCircuitVoltage');
  const working = [
    step(sourceResistanceFormula, 'resistance of the source', { V_1, V_2, R_1, R_2 }, sourceResistance),
    step(openCircuitVoltageFormula, 'voltage without a load', { V_1, R_1, R_s: sourceResistance }, openCircuitVoltage),
  ];
  return { openCircuitVoltage, sourceResistance, working };
}
