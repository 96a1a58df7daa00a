import { type Quantity, quantityUnits } from '../circuit/index.js';
import { formatQuantity } from '../units/index.js';
import type { Bench, BenchLoad, InstrumentRange, Lead } from './bench.js';
import { shortRating } from './choose-load.js';
import type { FeasibilityCheck } from './plan.js';
import type { Output } from './specification.js';

/** The largest values that may occur at a point while it is still inside its limits. */
export interface WorstCase {
  /** Value that the instrument must be able to show. */
  readonly reading: number;
  readonly power: number;
  readonly peakVoltage?: number;
}

/** The smallest range of the instrument that shows a value; undefined when none is large enough. */
export function chooseRange(bench: Bench, reads: Quantity, value: number): InstrumentRange | undefined {
  return ranges(bench, reads).find((range) => range.maximum >= value);
}

/** Ranges of a quantity from small to large. */
export function ranges(bench: Bench, reads: Quantity): readonly InstrumentRange[] {
  const found = bench.instrument.reads.find((f) => f.quantity === reads)?.ranges ?? [];
  return found.length < 2 ? found : [...found].sort((a, b) => a.maximum - b.maximum);
}

/** Whether instrument, load and leads can take a point: one row for each limit that the bench states. */
export function checkFeasibility(
  bench: Bench,
  output: Output,
  load: BenchLoad,
  lead: Lead | undefined,
  reads: Quantity,
  worst: WorstCase,
): readonly FeasibilityCheck[] {
  const checks: FeasibilityCheck[] = [];
  const add = (
    check: FeasibilityCheck['check'],
    ok: boolean,
    value: number,
    limit: number,
    // Most checks hold: their text would be made for nothing.
    message: () => string,
  ): void => {
    checks.push(ok ? { check, ok, value, limit } : { check, ok, value, limit, message: message() });
  };
  const addPeak = (check: FeasibilityCheck['check'], part: string, limit: number | undefined): void => {
    const peak = worst.peakVoltage;
    if (peak === undefined || limit === undefined) return;
    add(
      check,
      peak <= limit,
      peak,
      limit,
      () => `up to ${show(peak, 'V')} peak, ${part} rated ${show(limit, 'V')} peak`,
    );
  };
  const largest = ranges(bench, reads).at(-1);
  if (largest !== undefined) {
    const unit = quantityUnits[reads];
    const ok = worst.reading <= largest.maximum;
    add('instrument range', ok, worst.reading, largest.maximum, () => {
      return `up to ${show(worst.reading, unit)} to read, largest range ${show(largest.maximum, unit)}`;
    });
  }
  const { instrument } = bench;
  addPeak('instrument peak voltage', 'instrument', instrument.maximumPeakVoltage);
  const { crestFactor, carrierFrequency } = output;
  const highestCrest = instrument.maximumCrestFactor;
  if (highestCrest !== undefined && crestFactor !== undefined) {
    add('instrument crest factor', crestFactor <= highestCrest, crestFactor, highestCrest, () => {
      return `crest factor ${crestFactor}, instrument reads true rms up to ${highestCrest}`;
    });
  }
  if (instrument.frequencyRange !== undefined && carrierFrequency !== undefined) {
    const { lower, upper } = instrument.frequencyRange;
    const ok = carrierFrequency >= lower && carrierFrequency <= upper;
    add('instrument frequency', ok, carrierFrequency, carrierFrequency < lower ? lower : upper, () => {
      return `carrier ${show(carrierFrequency, 'Hz')}, instrument from ${show(lower, 'Hz')} to ${show(upper, 'Hz')}`;
    });
  }
  const permitted = shortRating(load);
  add('load power', worst.power <= permitted, worst.power, permitted, () => {
    const duration = load.overload === undefined ? '' : ` for ${show(load.overload.on, 's')}`;
    return `up to ${show(worst.power, 'W')} in the load, rated ${show(permitted, 'W')}${duration}`;
  });
  addPeak('load peak voltage', 'load', load.maximumPeakVoltage);
  addPeak('lead peak voltage', 'leads', lead?.maximumPeakVoltage);
  return checks;
}

function show(value: number, unit: 'W' | 'A' | 'V' | 'Hz' | 's'): string {
  return formatQuantity(value, unit, { digits: 4, rounding: 'nearest' });
}
