import { mkdirSync, writeFileSync } from 'node:fs';
import { analyseCapture } from 'esu-limits/waveform';
import type { BenchCase } from '../bench-case.js';
import { figuresOf, largeCapture, sampleInterval, samples } from '../capture-data.js';
import { sumOf, versionOf } from '../inputs.js';
import { conversation, missingModules } from '../python.js';

const folder = '.cache/bench';

/**
 * Rms, peak, active power and bursts of two channels. NumPy is told how long a pause is; the library finds that from
 * the carrier, checks every sample, and gives carrier, phase, energies and warnings besides.
 */
export const benchCase: BenchCase = {
  name: 'capture of two channels',
  n: samples,
  goal: 1,
  tolerance: 1e-9,
  missing: () => missingModules(['numpy']),
  contenders: async () => {
    mkdirSync(folder, { recursive: true });
    const { voltage, current } = largeCapture();
    writeFileSync(`${folder}/voltage.f64`, voltage);
    writeFileSync(`${folder}/current.f64`, current);
    const { ask, end } = conversation('tests/bench/peers/capture.py');
    const setup = { voltage: `${folder}/voltage.f64`, current: `${folder}/current.f64`, sampleInterval, pause: 125 };
    const version = await ask(JSON.stringify(setup));
    const figures = () => figuresOf(analyseCapture({ voltage, current, sampleInterval }));
    return [
      { tool: 'esu-limits', version: versionOf('esu-limits'), values: figures, run: () => sumOf(figures()) },
      {
        tool: 'NumPy',
        version,
        values: async () => JSON.parse(await ask('values')) as number[],
        timedRun: async () => {
          const [seconds, sum] = (await ask('run')).split(' ').map(Number);
          return { seconds: seconds!, sum: sum! };
        },
        end,
      },
    ];
  },
};
