import { requireNonNegative, requirePositive, requireResult, type Warning } from '../checks/index.js';
import { formatQuantity } from '../units/index.js';
import { leakageAtNominalFormula, leakageHighestFormula, leakageLowestFormula } from '../working/formulas/leakage.js';
import { type Step, step } from '../working/index.js';
import { impedanceOf, type LeakageSource, type SourceImpedance } from './leakage-source.js';

/** A leakage that was read with a measuring resistor of some other value. */
export interface LeakageConversion {
  /** Leakage as it was read, in amperes rms, 0 or more. */
  readonly current: number;
  /** Resistance of the measuring resistor as it is, in ohms, greater than 0. */
  readonly measuringResistance: number;
  /** Resistance at which the limit holds, in ohms; 200 unless stated. */
  readonly nominalResistance?: number;
  /** What the leakage comes through; `unknown` unless stated. */
  readonly source?: LeakageSource;
}

/** The leakage that the nominal measuring resistor would carry. */
export interface NominalLeakage {
  /** In amperes rms: where the path is unknown the highest that there can be. */
  readonly current: number;
  /** Lowest and highest that there can be, in amperes rms: the same where the path is known. */
  readonly range: { readonly lower: number; readonly upper: number };
  /**
   * By how many per cent the result rises for 1 % more resistance of the measuring resistor, at the same current read:
   * 0 for a constant current, 1 for a constant voltage; absent where the path is unknown.
   */
  readonly exponent?: number;
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/** The standard is recalled to permit test resistors within this part of their nominal value. */
const permittedDeviation = 0.03;

/**
 * Refers a leakage to the nominal measuring resistor, by what the leakage comes through.
 *
 * A constant current stays as it is. A constant voltage V behind an impedance drives V/|Z + R|. Where the path is not
 * known the result is the highest that any such path gives, so that a limit is never loosened.
 *
 * @param conversion Leakage, actual and nominal resistance, path
 * @returns Leakage at the nominal resistance, its range, warnings and steps
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`, `unknown-choice`, `result-out-of-range`
 * @source Ohm's law for a voltage behind an impedance
 * @accuracy Within 6 units in the last place
 * @example
 * ```ts
 * import { leakageAtNominal } from 'esu-limits/leakage';
 * const read = { current: 0.12, measuringResistance: 210 };
 * leakageAtNominal({ ...read, source: { kind: 'constant-current' } }).current; // → 0.12
 * leakageAtNominal(read).current.toFixed(4); // → "0.1260"
 * const source = { kind: 'capacitance', capacitance: 500e-12, frequency: 500e3 } as const;
 * leakageAtNominal({ ...read, source }).current.toFixed(4); // → "0.1206"
 * ```
 */
export function leakageAtNominal(conversion: LeakageConversion): NominalLeakage {
  const { source = { kind: 'unknown' } as const, nominalResistance = 200 } = conversion;
  const I = requireNonNegative(conversion.current, 'current');
  const R = requirePositive(conversion.measuringResistance, 'measuringResistance');
  const R_N = requirePositive(nominalResistance, 'nominalResistance');
  const warnings = deviationWarning(R, R_N);
  const impedance = impedanceOf(source);
  if (impedance !== undefined) return throughImpedance(I, R, R_N, impedance, warnings);
  if (source.kind === 'constant-current') {
    return { current: I, range: { lower: I, upper: I }, exponent: 0, warnings, working: [] };
  }
  return throughAnything(I, R, R_N, warnings);
}

function throughImpedance(
  I: number,
  R: number,
  R_N: number,
  { R_s, X_s, working }: SourceImpedance,
  warnings: readonly Warning[],
): NominalLeakage {
  const size = requireResult(Math.hypot(R_s + R, X_s), 'source');
  const current = requireResult(I * (size / Math.hypot(R_s + R_N, X_s)), 'current');
  const made = step(leakageAtNominalFormula, 'leakage at the nominal resistance', { I, R_s, X_s, R, R_N }, current);
  return {
    current,
    range: { lower: current, upper: current },
    exponent: ((R / size) * (R_s + R)) / size,
    warnings,
    working: [...working, made],
  };
}

function throughAnything(I: number, R: number, R_N: number, warnings: readonly Warning[]): NominalLeakage {
  const ratio = R / R_N;
  const upper = requireResult(I * Math.max(1, ratio), 'current');
  const lower = I * Math.min(1, ratio);
  if (R === R_N) return { current: I, range: { lower: I, upper: I }, warnings, working: [] };
  const message = `The path of the leakage is not stated: it is taken as ${milliamperes(upper)}, the highest between ${milliamperes(lower)} and ${milliamperes(upper)}.`;
  const inputs = { I, R, R_N };
  return {
    current: upper,
    range: { lower, upper },
    warnings: [...warnings, { code: 'source-unknown', message }],
    working: [
      step(leakageLowestFormula, 'lowest leakage at the nominal resistance', inputs, lower),
      step(leakageHighestFormula, 'highest leakage at the nominal resistance', inputs, upper),
    ],
  };
}

function deviationWarning(R: number, R_N: number): Warning[] {
  // A part in 1e12 of room, so that 206 Ω counts as 3 % of 200 Ω.
  if (Math.abs(R - R_N) <= permittedDeviation * R_N * (1 + 1e-12)) return [];
  const message = `The measuring resistor of ${formatQuantity(Number(R.toPrecision(6)), 'ohm')} is more than 3 % from ${formatQuantity(Number(R_N.toPrecision(6)), 'ohm')} (3 % from memory: check your copy of the standard).`;
  return [{ code: 'resistor-off-nominal', message }];
}

function milliamperes(current: number): string {
  return formatQuantity(current, 'A', { digits: 4, rounding: 'nearest' });
}
