import { describe, expect, it } from 'vitest';
import { acceptanceBand, conformanceProbability, type DecisionRule } from '../../src/decision/index.js';

/** Risk of a false accept at the acceptance limit of a guard band of r·U. */
function riskAtLimit(r: number, coverageFactor: number): number {
  const rule: DecisionRule =
    r < 0 ? { kind: 'guarded-rejection', ratio: -r } : { kind: 'guarded-acceptance', ratio: r };
  const { upper } = acceptanceBand({ upper: 0 }, rule, { standardUncertainty: 1, coverageFactor });
  return conformanceProbability({ upper: 0 }, upper as number, 1).nonconforming;
}

// ILAC-G8:09/2019, table 1, as quoted by laboratories; the last row, from memory, bounds the risk of a false reject.
const table: readonly (readonly [r: number, bound: number, atUsualFactor: boolean])[] = [
  [3, 1e-6, true],
  [1.5, 0.0016, false],
  [1, 0.025, true],
  [0.83, 0.05, false],
  [0, 0.5, true],
];

describe('bounds that ILAC-G8:09/2019, table 1, states for a guard band of r·U', () => {
  it.each(table)('r = %d: at most %d for k = 2', (r, bound) => {
    expect(riskAtLimit(r, 2)).toBeLessThanOrEqual(bound);
  });

  it.each(table)('r = %d: %d for k = 1.96, where two are exceeded', (r, bound, holds) => {
    // The factor of 95 %: a bound that it meets exactly is met but for rounding.
    expect(riskAtLimit(r, 1.959963984540054) <= bound * (1 + 1e-15)).toBe(holds);
  });

  it('r = −1: a false reject in at most 2.5 %', () => {
    expect(1 - riskAtLimit(-1, 2)).toBeLessThanOrEqual(0.025);
  });
});
