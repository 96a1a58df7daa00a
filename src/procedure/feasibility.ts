import type { Quantity } from '../circuit/index.js';
import { formatQuantity } from '../units/index.js';
import type { Bench, BenchLoad, InstrumentRange, Lead } from './bench.js';
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
  return [...found].sort((a, b) => a.maximum - b.maximum);
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
  const add = (check: FeasibilityCheck['check'], ok: boolean, value: number, limit: number, message: string): void => {
    checks.push({ check, ok, value, limit, message });
  };
  const unit = reads === 'power' ? 'W' : reads === 'current' ? 'A' : 'V';
  const largest = ranges(bench, reads).at(-1);
  if (largest !== undefined) {
    const ok = worst.reading <= largest.maximum;
    const text = `up to ${show(worst.reading, unit)} to read, largest range ${show(largest.maximum, unit)}`;
    add('instrument range', ok, worst.reading, largest.maximum, text);
  }
  const { instrument } = bench;
  const peak = worst.peakVoltage;
  if (instrument.maximumPeakVoltage !== undefined && peak !== undefined) {
    const limit = instrument.maximumPeakVoltage;
    add('instrument peak voltage', peak <= limit, peak, limit, peakText(peak, 'instrument', limit));
  }
  if (instrument.maximumCrestFactor !== undefined && output.crestFactor !== undefined) {
    const limit = instrument.maximumCrestFactor;
    const text = `crest factor ${output.crestFactor}, instrument reads true rms up to ${limit}`;
    add('instrument crest factor', output.crestFactor <= limit, output.crestFactor, limit, text);
  }
  if (instrument.frequencyRange !== undefined && output.carrierFrequency !== undefined) {
    const { lower, upper } = instrument.frequencyRange;
    const f = output.carrierFrequency;
    const text = `carrier ${show(f, 'Hz')}, instrument from ${show(lower, 'Hz')} to ${show(upper, 'Hz')}`;
    add('instrument frequency', f >= lower && f <= upper, f, f < lower ? lower : upper, text);
  }
  const permitted = Math.max(load.powerRating, load.overload?.power ?? 0);
  const short = worst.power > load.powerRating && load.overload !== undefined;
  const duration = short ? ` for ${show(load.overload?.on as number, 's')}` : '';
  const dissipation = `up to ${show(worst.power, 'W')} in the load, rated ${show(short ? permitted : load.powerRating, 'W')}${duration}`;
  add('load power', worst.power <= permitted, worst.power, permitted, dissipation);
  if (load.maximumPeakVoltage !== undefined && peak !== undefined) {
    const limit = load.maximumPeakVoltage;
    add('load peak voltage', peak <= limit, peak, limit, peakText(peak, 'load', limit));
  }
  if (lead?.maximumPeakVoltage !== undefined && peak !== undefined) {
    const limit = lead.maximumPeakVoltage;
    add('lead peak voltage', peak <= limit, peak, limit, peakText(peak, 'leads', limit));
  }
  return checks;
}

function peakText(peak: number, part: string, limit: number): string {
  return `up to ${show(peak, 'V')} peak, ${part} rated ${show(limit, 'V')} peak`;
}

function show(value: number, unit: 'W' | 'A' | 'V' | 'Hz' | 's'): string {
  return formatQuantity(value, unit, { digits: 4, rounding: 'nearest' });
}
