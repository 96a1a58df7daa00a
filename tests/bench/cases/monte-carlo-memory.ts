import { monteCarlo, normalInput } from 'esu-limits/uncertainty';
import type { BenchCase } from '../bench-case.js';

const trials = 10_000_000;
const inputs = {
  I: normalInput({ value: 0.5, standardUncertainty: 0.005 }),
  R: normalInput({ value: 400, standardUncertainty: 4 }),
};
const megabyte = 2 ** 20;

function moments(count: number): number {
  const { value, standardUncertainty } = monteCarlo((x) => x.I * x.I * x.R, inputs, {
    seed: 1,
    trials: count,
    interval: 'none',
  });
  // By the closed forms, mean R·(I² + u²) and u within five standard errors.
  const expected = { value: 400 * (0.25 + 0.005 ** 2), u: 2.236 };
  if (!(Math.abs(value - expected.value) < (5 * expected.u) / Math.sqrt(count))) throw new Error(`mean ${value}`);
  if (!(Math.abs(standardUncertainty / expected.u - 1) < 1e-3 + 5 / Math.sqrt(2 * count))) {
    throw new Error(`u ${standardUncertainty}`);
  }
  return standardUncertainty;
}

/** Highest resident memory of this process so far, in MB. */
const peak = (): number => process.resourceUsage().maxRSS / 1024;

export const benchCase: BenchCase = {
  name: 'moments of P = I²R by Monte Carlo',
  n: trials,
  measure: async () => {
    // Everything is compiled and the young generation has its size before the peak is taken.
    for (let i = 0; i < 5; i++) moments(1_000_000);
    const before = peak();
    const start = process.hrtime.bigint();
    moments(trials);
    const seconds = Number(process.hrtime.bigint() - start) / 1e9;
    return [
      { what: 'time', unit: 's', samples: [seconds] },
      // All values would be 76 MB.
      {
        what: 'growth of the highest memory over a tenth of the trials',
        unit: 'MB',
        samples: [peak() - before],
        goal: 4,
      },
      { what: 'values, had they been kept', unit: 'MB', samples: [(8 * trials) / megabyte] },
    ];
  },
};
