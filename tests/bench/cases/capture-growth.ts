import { analyseCapture } from 'esu-limits/waveform';
import type { BenchCase } from '../bench-case.js';
import { largeCapture, sampleInterval, samples } from '../capture-data.js';
import { versionOf } from '../inputs.js';

const parts = 10;

/** Time grows with the number of samples and no faster: ten million at once against ten times a million. */
export const benchCase: BenchCase = {
  name: 'capture, growth with the number of samples',
  n: samples,
  goal: 1.25,
  contenders: () => {
    const { voltage, current } = largeCapture();
    const size = samples / parts;
    const version = versionOf('esu-limits');
    const energy = (from: number, to: number): number =>
      analyseCapture({ voltage: voltage.subarray(from, to), current: current.subarray(from, to), sampleInterval })
        .energy as number;
    const inParts = (): number => {
      let sum = 0;
      for (let start = 0; start < samples; start += size) sum += energy(start, start + size);
      return sum;
    };
    return [
      { tool: 'esu-limits, at once', version, values: () => [energy(0, samples)], run: () => energy(0, samples) },
      { tool: 'esu-limits, in 10 parts', version, values: () => [inParts()], run: inParts },
    ];
  },
};
