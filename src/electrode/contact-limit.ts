import { type Band, marginIn } from '../band/index.js';
import {
  fail,
  requireChoice,
  requireNonNegative,
  requirePositive,
  requirePositiveResult,
  type Warning,
} from '../checks/index.js';
import { formatQuantity } from '../units/index.js';
import { impedanceOfCapacitanceFormula, partOfImpedanceLimitFormula } from '../working/formulas/electrode.js';
import { type Caution, type SourceId, type Standing, type Step, step } from '../working/index.js';
import { electrodeCautions } from './cautions.js';

/** Limits of the contact impedance of neutral electrodes. */
export interface ContactLimits {
  /** Highest magnitude of a conductive contact, in ohms. */
  readonly conductiveImpedance: number;
  /** Lowest capacitance of a capacitive contact, in farads. */
  readonly capacitance: number;
  /** Frequencies between which they hold, in hertz. */
  readonly from: number;
  readonly to: number;
  readonly standing: Standing;
  readonly source: SourceId;
}

/** Limits of IEC 60601-2-2, from memory: check your copy of the standard. */
export const contactLimits: ContactLimits = {
  conductiveImpedance: 50,
  capacitance: 4e-9,
  from: 50e3,
  to: 5e6,
  standing: 'from memory',
  source: 'iec-60601-2-2-memory',
};

/** A contact impedance that was measured. */
export interface ContactMeasurement {
  readonly kind: 'conductive' | 'capacitive';
  /** Magnitude of the contact impedance, in ohms, 0 or more. */
  readonly impedance: number;
  /** Frequency of the measurement, in hertz, greater than 0. */
  readonly frequency: number;
  /** Standard uncertainty of the impedance, in ohms; none unless stated. */
  readonly standardUncertainty?: number;
  /** Limits in place of those from memory. */
  readonly limits?: ContactLimits;
}

/** A contact impedance beside its limit. Whether it is accepted is for a decision rule to say. */
export interface ContactFinding {
  /** Highest magnitude at this frequency, in ohms. */
  readonly limit: number;
  readonly standing: Standing;
  /** Impedance over limit: 1 is on it. */
  readonly margin: number;
  /** With a rule this is the whole input of `decide`. */
  readonly decidable: {
    readonly band: Band;
    readonly value: number;
    readonly unit: 'ohm';
    readonly standardUncertainty?: number;
  };
  readonly cautions: readonly Caution[];
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/**
 * Places the contact impedance of a neutral electrode beside its limit: that of a conductive one, or the impedance of the
 * least capacitance of a capacitive one at the frequency of the measurement.
 *
 * @param measurement Kind, impedance, frequency
 * @returns Limit, margin, what a decision rule needs, cautions, warnings and steps
 * @throws CalculationError `unknown-choice`, `not-a-number`, `negative`, `not-positive`, `not-ascending` (frequencies of the
 * limits), `result-out-of-range`
 * @source IEC 60601-2-2, contact impedance of neutral electrodes; from memory: check your copy of the standard
 * @accuracy Within 4 units in the last place
 * @example
 * ```ts
 * import { assessContact } from 'esu-limits/electrode';
 * assessContact({ kind: 'conductive', impedance: 40, frequency: 500e3 }).margin; // → 0.8
 * const capacitive = assessContact({ kind: 'capacitive', impedance: 60, frequency: 500e3 });
 * [capacitive.limit.toFixed(2), capacitive.margin.toFixed(3)]; // → ["79.58", "0.754"]
 * ```
 */
export function assessContact(measurement: ContactMeasurement): ContactFinding {
  const { kind, limits = contactLimits, standardUncertainty } = measurement;
  requireChoice(kind, 'kind', ['conductive', 'capacitive']);
  const Z = requireNonNegative(measurement.impedance, 'impedance');
  const f = requirePositive(measurement.frequency, 'frequency');
  if (standardUncertainty !== undefined) requireNonNegative(standardUncertainty, 'standardUncertainty');
  const { limit, working } = kind === 'conductive' ? conductiveLimit(limits) : capacitiveLimit(limits, f);
  const band = { upper: limit };
  const margin = marginIn(band, 0, Z);
  return {
    limit,
    standing: limits.standing,
    margin,
    decidable: {
      band,
      value: Z,
      unit: 'ohm',
      ...(standardUncertainty === undefined ? {} : { standardUncertainty }),
    },
    cautions: electrodeCautions,
    warnings: [...standingWarning(limits), ...frequencyWarning(f, limits)],
    working: [
      ...working,
      step(partOfImpedanceLimitFormula, 'contact impedance over its limit', { Z, Z_max: limit }, margin),
    ],
  };
}

function conductiveLimit(limits: ContactLimits): { limit: number; working: readonly Step[] } {
  return { limit: requirePositive(limits.conductiveImpedance, 'limits.conductiveImpedance'), working: [] };
}

function capacitiveLimit(limits: ContactLimits, f: number): { limit: number; working: readonly Step[] } {
  const C = requirePositive(limits.capacitance, 'limits.capacitance');
  const limit = requirePositiveResult(1 / (2 * Math.PI * f * C), 'limit');
  const label = 'impedance of the least capacitance';
  return { limit, working: [step(impedanceOfCapacitanceFormula, label, { f, C }, limit)] };
}

function standingWarning({ standing }: ContactLimits): Warning[] {
  if (standing !== 'from memory') return [];
  const message = 'The limit of the contact impedance is from memory: check your copy of the standard.';
  return [{ code: 'limit-from-memory', message }];
}

function frequencyWarning(f: number, { from, to }: ContactLimits): Warning[] {
  requirePositive(from, 'limits.from');
  if (!(requirePositive(to, 'limits.to') > from)) {
    fail('not-ascending', 'limits.to', to, `must be greater than the lowest frequency, ${from}`);
  }
  if (f >= from && f <= to) return [];
  const message = `${hertz(f)} is outside ${hertz(from)} to ${hertz(to)}, for which the limit is stated.`;
  return [{ code: 'frequency-outside', message }];
}

function hertz(frequency: number): string {
  return formatQuantity(frequency, 'Hz', { digits: 6, rounding: 'nearest' });
}
