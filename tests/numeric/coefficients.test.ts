import { describe, expect, it } from 'vitest';
import { normalMiddleSeries } from '../../src/numeric/distributions/normal-upper-quantile.js';
import { gaussWeights, kronrodNodes, kronrodWeights } from '../../src/numeric/quadrature/kronrod-rule.js';
import { layerArea, tailStart } from '../../src/numeric/random/ziggurat.js';
import { erfcxEven, erfcxOdd } from '../../src/numeric/special/erfcx.js';
import { gammaHalfRatioSeries } from '../../src/numeric/special/gamma-half-ratio.js';
import { logGammaSeries } from '../../src/numeric/special/log-gamma.js';
import { normalTailSeries } from '../../src/numeric/special/normal-quantile-estimate.js';
import { stirlingSeries } from '../../src/numeric/special/stirling-remainder.js';
import { studentSeries } from '../../src/numeric/special/student-tail.js';
import fixture from './fixtures/coefficients.json' with { type: 'json' };

const every = (texts: readonly string[], remainder: number): number[] =>
  texts.filter((_, i) => i % 2 === remainder).map(Number);

describe('the coefficients in the source', () => {
  it.each<[string, readonly number[], readonly number[]]>([
    ['even part of erfcx', erfcxEven, every(fixture.erfcx, 0)],
    ['odd part of erfcx', erfcxOdd, every(fixture.erfcx, 1)],
    ['log-gamma', logGammaSeries, fixture.logGamma.map(Number)],
    ['ratio of gammas', gammaHalfRatioSeries, fixture.gammaHalfRatio.map(Number)],
    ["Stirling's series", stirlingSeries, fixture.stirling.map(Number)],
    ["Student's tail", studentSeries, fixture.sinhRatio.map(Number)],
    ['normal quantile, tail', normalTailSeries, fixture.normalQuantileTail.map(Number)],
    ['normal quantile, middle', normalMiddleSeries, fixture.normalQuantileMiddle.map(Number)],
    ['ziggurat', [tailStart, layerArea], fixture.ziggurat256.map(Number)],
    ['Kronrod nodes', kronrodNodes, fixture.kronrod21.nodes.map(Number)],
    ['Kronrod weights', kronrodWeights, fixture.kronrod21.weights.map(Number)],
    ['Gauss weights', gaussWeights, fixture.kronrod21.gaussWeights.map(Number)],
  ])('are those that were computed at 50 digits: %s', (_, used, computed) => {
    expect(used.length).toBe(computed.length);
    // 18 digits of the fixture and the shortest text of the double may differ in the last bit.
    used.forEach((value, i) => {
      expect(Math.abs(value - (computed[i] as number))).toBeLessThanOrEqual(2.3e-16 * Math.abs(value));
    });
  });
});
