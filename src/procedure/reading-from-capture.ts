import { fail } from '../checks/index.js';
import type { Quantity } from '../circuit/index.js';
import type { CaptureBudget } from '../uncertainty/index.js';
import type { CaptureAnalysis } from '../waveform/index.js';
import type { Phase, Reading } from './readings.js';

/** A capture that stands in place of a typed reading. */
export interface CapturedReading {
  /** Identifier or number of the point in the plan. */
  readonly point: string;
  readonly phase: Phase;
  /** Which figure of the capture is the reading: active power, rms current or rms voltage. */
  readonly quantity: Quantity;
  /** Figures of the capture, as `analyseCapture` gives them. */
  readonly analysis: CaptureAnalysis;
  /** Their budgets, as `captureBudget` gives them: the reading then brings its own uncertainty. */
  readonly budget?: CaptureBudget;
  readonly note?: string;
}

/**
 * A reading from a capture: its rms value or active power, the true peak of its voltage, and its own uncertainty.
 *
 * @param captured Point, phase, quantity, figures of the capture and their budgets
 * @returns A reading, as `assessReadings` takes it
 * @throws CalculationError `missing-member` (the capture has no such channel)
 * @source Definition
 * @example
 * ```ts
 * import { analyseCapture } from 'esu-limits/waveform';
 * import { readingFromCapture } from 'esu-limits/procedure';
 * const current = Float64Array.from({ length: 5000 }, (_, k) => 0.6 * Math.sin(2 * Math.PI * 0.0201 * k));
 * const analysis = analyseCapture({ current, sampleInterval: 40e-9 });
 * const reading = readingFromCapture({ point: 'cut/100W/500ohm', phase: 'as-found', quantity: 'current', analysis });
 * reading.value.toFixed(4); // → "0.4243"
 * ```
 */
export function readingFromCapture(captured: CapturedReading): Reading {
  const { point, phase, quantity, analysis, budget, note } = captured;
  const value = {
    power: analysis.activePower,
    current: analysis.current?.rms,
    voltage: analysis.voltage?.rms,
  }[quantity];
  if (value === undefined) {
    const needed = quantity === 'power' ? 'must have both channels' : `must have a channel of the ${quantity}`;
    return fail('missing-member', 'analysis', value, `${needed}, for a reading of the ${quantity}`);
  }
  const figure =
    budget?.figures[({ power: 'activePower', current: 'currentRms', voltage: 'voltageRms' } as const)[quantity]];
  const peakVoltage = analysis.voltage?.peak;
  const doubts = analysis.warnings.map((warning) => warning.message);
  const remark = [note, ...doubts].filter((text) => text !== undefined).join(' ');
  return {
    point,
    phase,
    quantity,
    value,
    ...(peakVoltage === undefined ? {} : { peakVoltage }),
    ...(figure === undefined
      ? {}
      : {
          uncertainty: {
            standardUncertainty: figure.standardUncertainty,
            ...(figure.degreesOfFreedom === undefined ? {} : { degreesOfFreedom: figure.degreesOfFreedom }),
          },
        }),
    ...(remark === '' ? {} : { note: remark }),
  };
}
