import { type Band, marginIn } from '../band/index.js';
import { fail, requireNonNegative, requirePositive, type Warning } from '../checks/index.js';
import { explainConversion, type Quantity, requireQuantity } from '../circuit/index.js';
import type { DegreesOfFreedom, Propagated } from '../uncertainty/index.js';
import { partOfLimitFormula } from '../working/formulas/leakage.js';
import { type Caution, type Step, step } from '../working/index.js';
import { leakageCautions } from './cautions.js';
import { contactCurrentGuidance } from './contact-current.js';
import { leakageAtNominal } from './leakage-at-nominal.js';
import { type LeakageInstrument, leakageBudget, type MeasuringResistor } from './leakage-budget.js';
import { type LeakageLimit, type LeakageLimitQuestion, leakageLimit } from './leakage-limit.js';
import type { LeakageSource } from './leakage-source.js';

/** A leakage that was read, with everything that its comparison with the limit depends on. */
export interface LeakageMeasurement extends LeakageLimitQuestion {
  /** What the instrument showed, in amperes, volts or watts, 0 or more. */
  readonly reading: number;
  /** Quantity that it showed: current in, voltage across or power in the measuring resistor; `current` unless stated. */
  readonly quantity?: Quantity;
  /** Resistance of the measuring resistor as it is, in ohms; that of the limit unless stated. */
  readonly measuringResistance?: number;
  /** What the leakage comes through; `unknown` unless stated. */
  readonly source?: LeakageSource;
  /** For the uncertainty; without it the result has none. */
  readonly instrument?: LeakageInstrument;
  /** Errors of the measuring resistor, for the uncertainty; none unless stated. */
  readonly resistor?: MeasuringResistor;
}

/** What a decision is made from: with a rule this is the whole input of `decide`. */
export interface DecidableLeakage {
  /** One-sided, in amperes. */
  readonly band: Band;
  readonly value: number;
  readonly unit: 'A';
  /** In amperes; absent where no instrument was stated. */
  readonly standardUncertainty?: number;
  readonly degreesOfFreedom?: DegreesOfFreedom;
}

/** A leakage beside its limit. Whether it is accepted is for a decision rule to say. */
export interface LeakageFinding {
  readonly limit: LeakageLimit;
  /** Leakage at the resistance of the limit, in amperes rms: the highest there can be where the path is unknown. */
  readonly current: number;
  /** Lowest and highest that it can be, for what is known of the path. */
  readonly range: { readonly lower: number; readonly upper: number };
  /** Leakage over limit: 0 is none, 1 is on the limit. */
  readonly margin: number;
  readonly decidable: DecidableLeakage;
  /** Budget of the leakage, in amperes; absent where no instrument was stated. */
  readonly budget?: Propagated;
  /** Leakage over the guidance for contact currents: above 1 it is hazardous to touch, whatever the limit. */
  readonly contact: { readonly occupational: number; readonly public: number };
  /** Always there: a pass is still hazardous to touch. */
  readonly cautions: readonly Caution[];
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/**
 * Places a measured HF leakage beside its limit: margin, uncertainty, and what a decision rule needs.
 *
 * @param measurement Arrangement and place, reading, measuring resistor, path, instrument
 * @returns Leakage at the resistance of the limit, margin, uncertainty budget, cautions, warnings and steps
 * @throws CalculationError as `leakageLimit`, `leakageAtNominal`, `readingErrors` and `loadErrors`; `missing-member`
 * (errors of the resistor without an instrument)
 * @source IEC 60601-2-2, HF leakage; from memory: check your copy of the standard
 * @accuracy Within 6 units in the last place
 * @example
 * ```ts
 * import { decide } from 'esu-limits/decision';
 * import { assessLeakage } from 'esu-limits/leakage';
 * const finding = assessLeakage({
 *   arrangement: 'isolated',
 *   measuredAt: 'leads',
 *   reading: 0.12,
 *   instrument: { accuracy: { ofReading: 0.05 }, range: { maximum: 0.5, resolution: 0.001 } },
 *   resistor: { tolerance: 0.01 },
 * });
 * finding.margin.toFixed(3); // → "0.800"
 * finding.decidable.standardUncertainty?.toFixed(5); // → "0.00354"
 * finding.contact.occupational.toFixed(1); // → "3.0"
 * decide({ ...finding.decidable, rule: { kind: 'simple-acceptance' } }).decision; // → "accept"
 * finding.cautions[0]?.id; // → "pass-is-hazardous"
 * ```
 */
export function assessLeakage(measurement: LeakageMeasurement): LeakageFinding {
  const { quantity = 'current', instrument, resistor, source } = measurement;
  const limit = leakageLimit(measurement);
  const reading = requireNonNegative(measurement.reading, 'reading');
  requireQuantity(quantity, 'quantity');
  const R_N = limit.measuringResistance;
  const R = requirePositive(measurement.measuringResistance ?? R_N, 'measuringResistance');
  const read = explainConversion(
    reading,
    { from: quantity, to: 'current', load: R },
    { label: 'leakage in the measuring resistor' },
  );
  const nominal = leakageAtNominal({
    current: read.value,
    measuringResistance: R,
    nominalResistance: R_N,
    ...(source === undefined ? {} : { source }),
  });
  const { current } = nominal;
  if (instrument === undefined && resistor !== undefined) {
    fail('missing-member', 'instrument', instrument, 'must be given where the errors of the resistor are');
  }
  const budget =
    instrument === undefined
      ? undefined
      : leakageBudget({
          reading,
          quantity,
          current,
          measuringResistance: R,
          exponent: nominal.exponent,
          instrument,
          resistor,
        });
  const band = { upper: limit.current };
  const margin = marginIn(band, 0, current);
  const { occupational, public: ofPublic } = contactCurrentGuidance;
  const part = (label: string, I_max: number, value: number): Step =>
    step(partOfLimitFormula, label, { I: current, I_max }, value);
  const contact = { occupational: current / occupational, public: current / ofPublic };
  return {
    limit,
    current,
    range: nominal.range,
    margin,
    decidable: { band, value: current, unit: 'A', ...uncertaintyOf(budget) },
    ...(budget === undefined ? {} : { budget }),
    contact,
    cautions: leakageCautions,
    warnings: [...limit.warnings, ...nominal.warnings],
    working: [
      ...limit.working,
      ...read.working,
      ...nominal.working,
      part('leakage over its limit', limit.current, margin),
      part('leakage over the guidance for contact at work', occupational, contact.occupational),
      part('leakage over the guidance for contact of the public', ofPublic, contact.public),
    ],
  };
}

function uncertaintyOf(
  budget: Propagated | undefined,
): Pick<DecidableLeakage, 'standardUncertainty' | 'degreesOfFreedom'> {
  if (budget === undefined) return {};
  const { standardUncertainty, degreesOfFreedom } = budget;
  return { standardUncertainty, ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }) };
}
