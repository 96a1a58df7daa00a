import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readCaptureCsv } from '../../src/schema/index.js';
import { captureBudget } from '../../src/uncertainty/index.js';
import { analyseCapture, dampedSine } from '../../src/waveform/index.js';

describe('the capture of the example', () => {
  it('gives the figures of the waveform that it was made from, within their uncertainty', () => {
    const text = readFileSync(new URL('../../examples/capture/coagulation.csv', import.meta.url), 'utf8');
    const samples = readCaptureCsv(text, { columns: ['voltage', 'current'] });
    const analysis = analyseCapture({ ...samples, currentFactor: 2, expectedCarrier: 420e3 });
    expect(analysis.warnings).toEqual([]);
    // Steps and noise as in make-capture.mjs, where scales and probes are exact.
    const { figures } = captureBudget({
      analysis,
      sampleInterval: samples.sampleInterval,
      voltage: { step: 16, noise: 8 / Math.sqrt(3) },
      current: { step: 0.032, noise: 0.016 / Math.sqrt(3) },
    });
    const made = dampedSine({
      frequency: 420e3,
      timeConstant: 3e-6,
      repetitionRate: 22e3,
      amplitude: 1545,
      load: 500,
    });
    const expected = {
      voltageRms: made.rms,
      voltagePeak: made.peak,
      voltageCrestFactor: made.crestFactor,
      activePower: made.rms ** 2 / 500,
      burstEnergy: made.burstEnergy ?? 0,
      carrierFrequency: 420e3,
      repetitionRate: 22e3,
    };
    for (const [name, value] of Object.entries(expected)) {
      const figure = figures[name as keyof typeof expected];
      const error = Math.abs((figure?.value ?? Number.NaN) - value);
      // The ends of the window and the sampling of the steep beginning of a burst add up to 5e-4.
      expect(error, name).toBeLessThan(2 * (figure?.standardUncertainty ?? 0) + 5e-4 * value);
    }
    expect(Math.abs((analysis.carrierFrequency ?? 0) / 420e3 - 1)).toBeLessThan(2e-3);
    expect(Math.abs((analysis.repetitionRate ?? 0) / 22e3 - 1)).toBeLessThan(1e-4);
  });
});
