import { requireFinite, requireFraction, requirePositive } from '../../checks/index.js';
import { rectangularInput } from '../inputs/rectangular-input.js';
import { type Propagated, propagate } from '../propagate.js';
import type { UncertainInput } from '../uncertain-input.js';

/** A power that was read off a published curve. */
export interface CurveReadingInput {
  /** Power that the chosen interpolation gives, in watts. */
  readonly power: number;
  /** Slope of the curve there: d ln P / d ln R. */
  readonly slope: number;
  /** Relative limits of the error with which the loads of the points were read off the picture. */
  readonly loadDigitising: number;
  /** Relative limits of the error with which the powers of the points were read off the picture. */
  readonly powerDigitising: number;
  /** Powers that other ways of interpolating give at the same load, in watts. */
  readonly alternatives?: readonly number[];
}

/**
 * Budget of a power that was read off a published curve: digitising of load and power, and the spread between ways of
 * interpolating, taken as limits around the chosen one.
 *
 * @param input Power, slope, digitising errors, other interpolations
 * @returns The budget, in watts
 * @throws CalculationError `not-positive`, `not-a-number`, `not-a-fraction`
 * @source JCGM 100:2008, 4.3.7; an error of load moves the power by slope · P / R
 * @example
 * ```ts
 * import { curveReadingBudget } from 'esu-limits/uncertainty';
 * const read = { power: 100, slope: -1, loadDigitising: 0.01, powerDigitising: 0.01, alternatives: [102] };
 * curveReadingBudget(read).standardUncertainty.toFixed(4); // → "1.4142"
 * ```
 */
export function curveReadingBudget(input: CurveReadingInput): Propagated {
  const { power, slope, loadDigitising, powerDigitising, alternatives = [] } = input;
  requirePositive(power, 'power');
  requireFinite(slope, 'slope');
  requireFraction(loadDigitising, 'loadDigitising');
  requireFraction(powerDigitising, 'powerDigitising');
  alternatives.forEach((other, i) => {
    requirePositive(other, `alternatives[${i}]`);
  });
  const spread = alternatives.reduce((most, other) => Math.max(most, Math.abs(other - power)), 0);
  const naming = (description: string, unit: string) => ({ description, unit });
  const inputs: Record<'power' | 'load' | 'interpolation', UncertainInput> = {
    power: rectangularInput({ value: 0, halfWidth: powerDigitising }, naming('power read off the picture', '1')),
    load: rectangularInput({ value: 0, halfWidth: loadDigitising }, naming('load read off the picture', '1')),
    interpolation: rectangularInput({ value: 0, halfWidth: spread }, naming('choice of interpolation', 'W')),
  };
  return propagate(
    {
      evaluate: (x) => power * (1 + x.power) * (1 + x.load) ** slope + x.interpolation,
      sensitivities: { power: () => power, load: () => slope * power, interpolation: () => 1 },
    },
    inputs,
    { secondOrder: false },
  );
}
