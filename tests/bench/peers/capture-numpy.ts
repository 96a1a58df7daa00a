import { analyseCapture } from 'esu-limits/waveform';
import type { BenchCase } from '../bench-case.js';
import { figuresOf, largeCapture, sampleInterval, samples } from '../capture-data.js';
import { missingInPython, numbersFile, pythonContender } from '../conversation.js';
import { sumOf, versionOf } from '../inputs.js';

/**
 * Rms, peak, active power and bursts of two channels. NumPy is told how long a pause is; the library finds that from
 * the carrier, checks every sample, and gives carrier, phase, energies and warnings besides.
 */
export const benchCase: BenchCase = {
  name: 'capture of two channels',
  n: samples,
  goal: 1,
  tolerance: 1e-9,
  missing: () => missingInPython('numpy'),
  contenders: async () => {
    const { voltage, current } = largeCapture();
    const figures = () => figuresOf(analyseCapture({ voltage, current, sampleInterval }));
    return [
      { tool: 'esu-limits', version: versionOf('esu-limits'), values: figures, run: () => sumOf(figures()) },
      await pythonContender('NumPy', 'tests/bench/peers/capture.py', {
        voltage: numbersFile('voltage', voltage),
        current: numbersFile('current', current),
        sampleInterval,
        pause: 125,
      }),
    ];
  },
};
