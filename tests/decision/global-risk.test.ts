import { describe, expect, it } from 'vitest';
import type { Band } from '../../src/band/index.js';
import { type GlobalRisk, globalRisk, type Prior } from '../../src/decision/index.js';
import fixture from './fixtures/global-risk.json' with { type: 'json' };

type Case = Readonly<Record<keyof GlobalRisk, string>> & {
  readonly prior: Prior;
  readonly band: Band;
  readonly acceptance: Band;
  readonly standardUncertainty: number;
};
const cases = fixture.cases as readonly Case[];

/** Largest relative error of a probability against the 30-digit values, where a number holds all digits of it. */
function worstError(chosen: readonly Case[], member: keyof GlobalRisk): number {
  expect(chosen.length).toBeGreaterThan(0);
  return Math.max(
    ...chosen.map((each) => {
      const published = Number(each[member]);
      const error = Math.abs(globalRisk(each)[member] - published);
      return published > 1e-290 || published === 0 ? error / (published || 1) : error / 1e-290;
    }),
  );
}

/** As measured; a bound may be up to twice the measured error, so that it fails when accuracy is lost. */
const bounds: readonly (readonly [Prior['kind'], keyof GlobalRisk, number])[] = [
  ['normal', 'consumerRisk', 1e-13],
  ['normal', 'producerRisk', 5e-13],
  ['normal', 'inToleranceProbability', 5e-16],
  ['normal', 'outOfToleranceProbability', 1e-15],
  ['normal', 'acceptanceProbability', 1.2e-13],
  ['rectangular', 'consumerRisk', 7e-15],
  ['rectangular', 'producerRisk', 1.2e-15],
  ['rectangular', 'inToleranceProbability', 2.4e-16],
  ['rectangular', 'outOfToleranceProbability', 1e-16],
  ['rectangular', 'acceptanceProbability', 6e-15],
  ['gamma', 'consumerRisk', 3.6e-14],
  ['gamma', 'producerRisk', 4e-14],
  ['gamma', 'inToleranceProbability', 1e-15],
  ['gamma', 'outOfToleranceProbability', 2.4e-14],
  ['gamma', 'acceptanceProbability', 1.6e-15],
];

describe('global risk against 30-digit values', () => {
  it.each(bounds)('%s prior, %s: relative error at most %f', (kind, member, bound) => {
    const error = worstError(
      cases.filter(({ prior }) => prior.kind === kind),
      member,
    );
    expect(error).toBeLessThanOrEqual(bound);
  });

  it('reaches from risks of 1e-200 to 5 %', () => {
    const risks = cases.map(({ consumerRisk }) => Number(consumerRisk)).filter((risk) => risk > 0);
    expect(Math.min(...risks)).toBeLessThan(1e-200);
    expect(Math.max(...risks)).toBeGreaterThan(0.05);
  });
});
