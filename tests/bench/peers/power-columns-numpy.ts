import { type PowerColumns, powerColumns } from 'esu-limits/uncertainty';
import type { BenchCase } from '../bench-case.js';
import { missingInPython, pythonContender } from '../conversation.js';
import { sumOf, versionOf } from '../inputs.js';
import { I, n, nuI, nuR, powerFiles, R, uI, uR } from '../power-data.js';

const input = {
  current: { value: I, standardUncertainty: uI, degreesOfFreedom: nuI },
  load: { value: R, standardUncertainty: uR, degreesOfFreedom: nuR },
};

export const benchCase: BenchCase = {
  name: 'P = I²R with u and degrees of freedom, in columns',
  n,
  goal: 1.5,
  missing: () => missingInPython('numpy'),
  contenders: async () => {
    const out: PowerColumns = {
      value: new Float64Array(n),
      standardUncertainty: new Float64Array(n),
      degreesOfFreedom: new Float64Array(n),
    };
    return [
      {
        tool: 'esu-limits powerColumns',
        version: versionOf('esu-limits'),
        values: () => {
          const { value, standardUncertainty, degreesOfFreedom } = powerColumns(input);
          return [...value, ...standardUncertainty, ...degreesOfFreedom];
        },
        run: () => {
          const { value, standardUncertainty, degreesOfFreedom } = powerColumns(input, out);
          return sumOf(value) + sumOf(standardUncertainty) + sumOf(degreesOfFreedom);
        },
      },
      await pythonContender('NumPy', 'tests/bench/peers/power_columns.py', { files: powerFiles() }),
    ];
  },
};
