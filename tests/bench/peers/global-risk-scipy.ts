import { globalRisk } from 'esu-limits/decision';
import type { BenchCase } from '../bench-case.js';
import { missingInPython, numbersFile, pythonContender } from '../conversation.js';
import { sumOf, uniform, versionOf } from '../inputs.js';

const n = 200;
const mean = uniform(n, 1).map((x) => 0.4 * (x - 0.5));
const spread = uniform(n, 2).map((x) => 0.3 + 0.5 * x);
const u = uniform(n, 3).map((x) => 0.05 + 0.2 * x);
const guard = uniform(n, 4).map((x) => 0.2 * x);
const band = { lower: -1, upper: 1 };

function risks(): number[] {
  const results: number[] = [];
  for (let i = 0; i < n; i++) {
    const { consumerRisk, producerRisk } = globalRisk({
      band,
      acceptance: { lower: -1 + guard[i]!, upper: 1 - guard[i]! },
      prior: { kind: 'normal', mean: mean[i]!, standardDeviation: spread[i]! },
      standardUncertainty: u[i]!,
    });
    results.push(consumerRisk, producerRisk);
  }
  return results;
}

export const benchCase: BenchCase = {
  name: "global consumer's and producer's risk to 1e-10",
  n,
  goal: 1 / 20,
  tolerance: 2e-10,
  missing: () => missingInPython('numpy', 'scipy'),
  contenders: async () => [
    { tool: 'esu-limits globalRisk', version: versionOf('esu-limits'), values: risks, run: () => sumOf(risks()) },
    await pythonContender('SciPy quad', 'tests/bench/peers/global_risk.py', {
      file: numbersFile(
        'risks',
        Float64Array.from({ length: 4 * n }, (_, i) => [mean, spread, u, guard][i % 4]![i >> 2]!),
      ),
    }),
  ],
};
