import { expandedUncertainty, normalInput, propagate } from 'esu-limits/uncertainty';
import type { BenchCase } from '../bench-case.js';
import { missingInPython, pythonContender } from '../conversation.js';
import { versionOf } from '../inputs.js';
import { I, n, nuI, nuR, powerFiles, R, uI, uR } from '../power-data.js';

/** Calls `take` with every result of every row, in order. */
function everyRow(take: (result: number) => void): void {
  for (let i = 0; i < n; i++) {
    const { value, standardUncertainty, degreesOfFreedom } = propagate(
      { arithmetic: (x, m) => m.multiply(m.power(x.I, 2), x.R) },
      {
        I: normalInput({ value: I[i]!, standardUncertainty: uI[i]!, degreesOfFreedom: nuI[i]! }),
        R: normalInput({ value: R[i]!, standardUncertainty: uR[i]!, degreesOfFreedom: nuR[i]! }),
      },
      { secondOrder: false },
    );
    take(value);
    take(standardUncertainty);
    take(degreesOfFreedom as number);
    take(expandedUncertainty({ standardUncertainty, degreesOfFreedom: degreesOfFreedom! }).coverageFactor);
  }
}

export const benchCase: BenchCase = {
  name: 'P = I²R with u, degrees of freedom and k, one budget a row',
  n,
  goal: 1 / 15,
  rounds: 7,
  warmEach: true,
  // The quantile of SciPy 1.10 is good to some 1e-9 only.
  tolerance: 1e-8,
  missing: () => missingInPython('numpy', 'scipy', 'uncertainties'),
  contenders: async () => [
    {
      tool: 'esu-limits propagate',
      version: versionOf('esu-limits'),
      values: () => {
        const results: number[] = [];
        everyRow((result) => results.push(result));
        return results;
      },
      run: () => {
        let sum = 0;
        everyRow((result) => {
          sum += result;
        });
        return sum;
      },
    },
    await pythonContender('Python uncertainties', 'tests/bench/peers/power_uncertainties.py', { files: powerFiles() }),
  ],
};
