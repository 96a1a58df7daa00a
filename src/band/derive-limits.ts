import { fail, requirePositive } from '../checks/index.js';
import { explainConversion, type Quantity, quantitySymbols, quantityUnits, requireQuantity } from '../circuit/index.js';
import type { Step } from '../working/index.js';
import type { Band } from './band.js';
import { type BandNaming, explainBandAround } from './explain-band-around.js';
import { explainConvertBand } from './explain-convert-band.js';
import { explainRoundBand } from './explain-round-band.js';
import type { RoundingDirection } from './round-band.js';
import type { Tolerance } from './tolerance.js';

/** How limits follow from a tolerance. */
export interface LimitRule {
  /** Tolerance of the output; an absolute part is in the unit of `toleranceIn`. */
  readonly tolerance: Tolerance;
  /** Quantity of which the tolerance is stated; `power` unless stated. */
  readonly toleranceIn?: Quantity;
  /** Quantity that the instrument reads; `current` unless stated. */
  readonly reads?: Quantity;
  /** One step of the last digit of the instrument, in the unit of `reads`; not rounded unless stated. */
  readonly resolution?: number;
  /** Direction of the rounding; `inward` unless stated. */
  readonly rounding?: RoundingDirection;
}

/** An expected output at a load, with the rule for its limits. */
export interface LimitInput extends LimitRule {
  /** Expected power in the load, in watts, greater than 0. */
  readonly power: number;
  /** Resistance of the load, in ohms, greater than 0. */
  readonly load: number;
}

/** Limits of one test point, and how they came about. */
export interface DerivedLimits {
  /** Expected power in watts, rms current in amperes, rms voltage in volts. */
  readonly expected: Readonly<Record<Quantity, number>>;
  /** Limits in the quantity that is read, rounded where a resolution was given. */
  readonly limits: Band;
  /** The same before rounding. */
  readonly limitsBeforeRounding: Band;
  /** The same, before rounding, in watts. */
  readonly powerLimits: Band;
  readonly working: readonly Step[];
}

/**
 * Limits of an output at a load in the quantity that the instrument reads.
 * The tolerance is applied in its own quantity; the limits are then converted exactly and rounded last.
 *
 * @param input Expected power, load, tolerance, quantity that is read, resolution
 * @returns Expected values, limits and the working of each number
 * @throws CalculationError `not-a-number`, `not-positive`, `limit-negative` (the tolerance reaches below 0 and states
 * no floor of 0), `band-empty`, and those of `bandAround` and `roundBand`
 * @source Ohm's law and Joule's law; the tolerance is the caller's
 * @accuracy Within 3 units in the last place of each limit before rounding
 * @example
 * ```ts
 * import { deriveLimits } from 'esu-limits';
 * const { limits } = deriveLimits({ power: 120, load: 500, tolerance: { relative: 0.2 }, resolution: 0.001 });
 * limits; // → { "lower": 0.439, "upper": 0.536 }
 * ```
 */
export function deriveLimits(input: LimitInput): DerivedLimits {
  const { power, load, tolerance, toleranceIn = 'power', reads = 'current', resolution, rounding } = input;
  requirePositive(power, 'power');
  const current = explainConversion(power, { from: 'power', to: 'current', load }, { label: 'expected current' });
  const voltage = explainConversion(power, { from: 'power', to: 'voltage', load }, { label: 'expected voltage' });
  const expected = { power, current: current.value, voltage: voltage.value };

  requireQuantity(toleranceIn, 'toleranceIn');
  const stated = explainBandAround(expected[toleranceIn], tolerance, namingOf(toleranceIn));
  requireLowerLimit(stated.band.lower, 'tolerance');
  const read = explainConvertBand(stated.band, { from: toleranceIn, to: requireQuantity(reads, 'reads'), load });
  const inPower = explainConvertBand(stated.band, { from: toleranceIn, to: 'power', load });
  const rounded =
    resolution === undefined
      ? { band: read.band, working: [] }
      : explainRoundBand(read.band, resolution, namingOf(reads), rounding);
  return {
    expected,
    limits: rounded.band,
    limitsBeforeRounding: read.band,
    powerLimits: inPower.band,
    working: [
      ...current.working,
      ...voltage.working,
      ...stated.working,
      ...(reads === 'power' ? [] : inPower.working),
      ...read.working,
      ...rounded.working,
    ],
  };
}

/** A tolerance may not reach below 0 in a quantity that has no negative values. */
export function requireLowerLimit(lower: number | undefined, path: string): void {
  if (lower === undefined || lower >= 0) return;
  fail('limit-negative', path, lower, 'must leave a lower limit of 0 or more', 'State floor: 0 to raise it to 0.');
}

function namingOf(quantity: Quantity): BandNaming {
  return { unit: quantityUnits[quantity], symbol: quantitySymbols[quantity], name: quantity };
}
