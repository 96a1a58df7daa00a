import { monteCarlo, normalInput } from 'esu-limits/uncertainty';
import type { BenchCase } from '../bench-case.js';
import { missingInPython, pythonContender } from '../conversation.js';
import { sumOf, versionOf } from '../inputs.js';

const trials = 1_000_000;
const setup = { I: 0.5, uI: 0.005, R: 400, uR: 4, trials, seed: 1 };

function run(): number[] {
  const { value, standardUncertainty, symmetricInterval } = monteCarlo(
    (x) => x.I * x.I * x.R,
    {
      I: normalInput({ value: setup.I, standardUncertainty: setup.uI }),
      R: normalInput({ value: setup.R, standardUncertainty: setup.uR }),
    },
    { seed: setup.seed, trials },
  );
  return [value, standardUncertainty, symmetricInterval!.lower, symmetricInterval!.upper];
}

export const benchCase: BenchCase = {
  name: 'Monte Carlo of P = I²R: mean, u, symmetric 95 % interval',
  n: trials,
  goal: 1.2,
  // Two runs of other random numbers: u differs by 1/√(2M)·√2 = 1e-3 of itself, one standard deviation.
  tolerance: 4e-3,
  missing: () => missingInPython('numpy'),
  contenders: async () => [
    {
      tool: 'esu-limits monteCarlo',
      version: versionOf('esu-limits'),
      values: run,
      run: () => sumOf(run()),
    },
    await pythonContender('NumPy', 'tests/bench/peers/monte_carlo.py', setup),
  ],
};
