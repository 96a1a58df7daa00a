import { requireFraction, requireNonNegative, requirePositive } from '../../checks/index.js';
import { certificateInput } from '../inputs/certificate-input.js';
import { rectangularInput } from '../inputs/rectangular-input.js';
import { resolutionInput } from '../inputs/resolution-input.js';
import type { UncertainInput } from '../uncertain-input.js';
import type { AccuracyStatement, ReadingConditions } from './accuracy-statement.js';

/** Errors of a reading by name, each an input of value 0 in the unit of the quantity. */
export type ReadingErrors = Readonly<Record<string, UncertainInput>>;

/**
 * The errors of an instrument's reading, from the maker's statement and the conditions of the reading.
 *
 * @param statement What the maker states
 * @param conditions Reading, range, frequency, crest factor
 * @param unit Unit of the quantity, for the budget
 * @returns Inputs of value 0: `accuracy`, `resolution`, and `drift`, `frequency`, `crestFactor` where they apply
 * @throws CalculationError `not-a-number`, `negative`, `not-positive`, `not-a-fraction`
 * @source JCGM 100:2008, 4.3.7 and F.2.2.1
 * @example
 * ```ts
 * import { readingErrors } from 'esu-limits/uncertainty';
 * const conditions = { reading: 0.5, range: { maximum: 1, resolution: 0.001 } };
 * const errors = readingErrors({ ofReading: 0.01, ofRange: 0.005 }, conditions, 'A');
 * errors.accuracy.standardUncertainty.toFixed(6); // → "0.005774"
 * ```
 */
export function readingErrors(
  statement: AccuracyStatement,
  conditions: ReadingConditions,
  unit?: string,
): ReadingErrors & { readonly accuracy: UncertainInput; readonly resolution: UncertainInput } {
  const { reading, range, frequency, crestFactor } = conditions;
  requireNonNegative(reading, 'reading');
  requirePositive(range.maximum, 'range.maximum');
  requirePositive(range.resolution, 'range.resolution');
  const limit = accuracyLimit(statement, conditions);
  const naming = (description: string) => ({ description, ...(unit === undefined ? {} : { unit }) });
  const { coverage = 'limits' } = statement;
  const described = naming('accuracy of the instrument');
  const accuracy =
    coverage === 'limits'
      ? rectangularInput({ value: 0, halfWidth: limit }, described)
      : certificateInput({ value: 0, expandedUncertainty: limit, coverage }, described);
  const resolution = resolutionInput({ value: 0, resolution: range.resolution }, naming('resolution of the display'));
  const part = (fraction: number, description: string): UncertainInput =>
    rectangularInput({ value: 0, halfWidth: fraction * reading }, naming(description));
  const extra: Record<string, UncertainInput> = {};
  const byFrequency = frequencyAddition(statement, frequency);
  if (byFrequency > 0) extra['frequency'] = part(byFrequency, 'addition for the frequency');
  const byCrest = crestFactorAddition(statement, crestFactor);
  if (byCrest > 0) extra['crestFactor'] = part(byCrest, 'addition for the crest factor');
  if (statement.drift !== undefined && requireFraction(statement.drift, 'drift') > 0) {
    extra['drift'] = part(statement.drift, 'drift since the calibration');
  }
  return { accuracy, resolution, ...extra };
}

/** The sum of the parts of a statement, in the unit of the quantity. */
function accuracyLimit(statement: AccuracyStatement, { reading, range }: ReadingConditions): number {
  const ofReading = requireFraction(statement.ofReading ?? 0, 'ofReading');
  const ofRange = requireFraction(statement.ofRange ?? 0, 'ofRange');
  const floor = requireNonNegative(statement.floor ?? 0, 'floor');
  const counts = requireNonNegative(statement.counts ?? 0, 'counts');
  return ofReading * reading + ofRange * range.maximum + floor + counts * range.resolution;
}

function frequencyAddition(statement: AccuracyStatement, frequency: number | undefined): number {
  if (frequency === undefined || statement.frequency === undefined) return 0;
  const found = statement.frequency.filter((band) => frequency >= band.from && frequency <= band.to).at(-1);
  return found === undefined ? 0 : requireFraction(found.ofReading, 'frequency.ofReading');
}

function crestFactorAddition(statement: AccuracyStatement, crestFactor: number | undefined): number {
  if (crestFactor === undefined || statement.crestFactor === undefined) return 0;
  const above = statement.crestFactor.filter((entry) => crestFactor > entry.above);
  const highest = above.reduce<number>(
    (most, entry) => Math.max(most, requireFraction(entry.ofReading, 'crestFactor.ofReading')),
    0,
  );
  return highest;
}
