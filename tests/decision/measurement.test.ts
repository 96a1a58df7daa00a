import { describe, expect, it } from 'vitest';
import { requireAbsolute, requireExpanded, spreadOf } from '../../src/decision/measurement.js';

describe('the uncertainty of a measurement', () => {
  it.each([
    [{ standardUncertainty: 2 }, { u: 2, expanded: undefined, isRelative: false }],
    [
      { standardUncertainty: 2, coverageFactor: 2.5 },
      { u: 2, expanded: 5, isRelative: false },
    ],
    [
      { expandedUncertainty: 5, coverageFactor: 2.5 },
      { u: 2, expanded: 5, isRelative: false },
    ],
    [
      { standardUncertainty: 2, expandedUncertainty: 4.2 },
      { u: 2, expanded: 4.2, isRelative: false },
    ],
    [
      { standardUncertainty: 0, expandedUncertainty: 0 },
      { u: 0, expanded: 0, isRelative: false },
    ],
    [{ relativeStandardUncertainty: 0.02 }, { u: 0.02, expanded: undefined, isRelative: true }],
    [
      { relativeStandardUncertainty: 0.02, coverageFactor: 2 },
      { u: 0.02, expanded: 0.04, isRelative: true },
    ],
  ])('is completed from %o', (measurement, expected) => {
    expect(spreadOf(measurement)).toMatchObject({ ...expected, degreesOfFreedom: 'infinite' });
  });

  it.each([
    ['negative', { standardUncertainty: -1 }],
    ['negative', { standardUncertainty: 1, expandedUncertainty: -1 }],
    ['not-positive', { standardUncertainty: 1, coverageFactor: -2 }],
    ['not-a-number', { standardUncertainty: Number.NaN }],
    ['not-a-fraction', { relativeStandardUncertainty: 2 }],
    ['not-a-fraction', { relativeStandardUncertainty: -0.1 }],
    ['not-positive', { standardUncertainty: 1, degreesOfFreedom: 0 }],
    ['missing-member', {}],
    ['missing-member', { coverageFactor: 2 }],
    ['missing-member', { expandedUncertainty: 2 }],
    ['wrong-count', { standardUncertainty: 1, expandedUncertainty: 2, coverageFactor: 2 }],
    ['contradiction', { standardUncertainty: 0, expandedUncertainty: 2 }],
    ['contradiction', { standardUncertainty: 1, expandedUncertainty: 0 }],
    ['contradiction', { standardUncertainty: 1, relativeStandardUncertainty: 0.1 }],
    ['contradiction', { expandedUncertainty: 1, relativeStandardUncertainty: 0.1 }],
    ['result-out-of-range', { expandedUncertainty: 1e300, coverageFactor: 1e-300 }],
    ['result-out-of-range', { standardUncertainty: 1e300, coverageFactor: 1e300 }],
  ])('is refused with %s: %o', (code, measurement) => {
    expect(() => spreadOf(measurement)).toThrow(expect.objectContaining({ code }));
  });

  it('gives what a rule needs, or says that it is missing', () => {
    expect(requireExpanded(spreadOf({ standardUncertainty: 2, coverageFactor: 2 }))).toBe(4);
    expect(requireAbsolute(spreadOf({ standardUncertainty: 2 }))).toBe(2);
    expect(() => requireExpanded(spreadOf({ standardUncertainty: 2 }))).toThrow(
      expect.objectContaining({ code: 'missing-member', path: 'coverageFactor' }),
    );
    expect(() => requireAbsolute(spreadOf({ relativeStandardUncertainty: 0.1 }))).toThrow(
      expect.objectContaining({ code: 'missing-member', path: 'standardUncertainty' }),
    );
  });
});
