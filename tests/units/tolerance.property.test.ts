import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatTolerance,
  type ParsedSides,
  type ParsedTolerance,
  parseTolerance,
  unitVocabulary,
} from '../../src/units/index.js';

const magnitude = fc.oneof(
  fc.double({ min: 0, max: 10, noNaN: true }),
  fc.integer({ min: 0, max: 1000 }).map((thousandths) => thousandths / 1000),
  fc.double({ min: 0, max: 1e300, noNaN: true }),
);

/** A part as the reader gives it: one number for equal sides. */
const part = fc
  .oneof(
    magnitude,
    fc.record({ below: magnitude, above: magnitude }),
    fc.record({ below: magnitude }),
    fc.record({ above: magnitude }),
  )
  .map((sides): number | ParsedSides =>
    typeof sides === 'object' && 'below' in sides && 'above' in sides && sides.below === sides.above
      ? sides.below
      : sides,
  );

const quantity = fc.constantFrom(
  ...unitVocabulary.map((entry) => entry.quantity).filter((kind) => kind !== 'fraction' && kind !== 'number'),
);

/** Sums whose parts limit the same sides: where one part has no limit, the sum has none. */
const sum = fc
  .record({ below: fc.option(fc.tuple(magnitude, magnitude)), above: fc.option(fc.tuple(magnitude, magnitude)) })
  .filter(({ below, above }) => below !== null || above !== null)
  .map(({ below, above }) => {
    const side = (i: 0 | 1): number | ParsedSides => {
      if (below && above && below[i] === above[i]) return below[i];
      return { ...(below ? { below: below[i] } : {}), ...(above ? { above: above[i] } : {}) };
    };
    return { relative: side(0), absolute: side(1), combine: 'sum' as const };
  });

const tolerance: fc.Arbitrary<ParsedTolerance> = fc
  .tuple(
    fc.oneof(
      part.map((relative) => ({ relative })),
      part.map((absolute) => ({ absolute })),
      fc.tuple(part, part).map(([relative, absolute]) => ({ relative, absolute, combine: 'greater' as const })),
      sum,
    ),
    quantity,
    fc.option(magnitude),
  )
  .map(([limits, absoluteQuantity, floor]) => ({
    ...limits,
    ...(floor === null ? {} : { floor }),
    ...('absolute' in limits || floor !== null ? { absoluteQuantity } : {}),
  }));

describe('a tolerance', () => {
  it('reads back from its text: parse(print(x)) = x', () => {
    fc.assert(
      fc.property(tolerance, fc.boolean(), (given, ascii) => {
        expect(parseTolerance(formatTolerance(given, { ascii }))).toEqual(given);
      }),
      { numRuns: 5000 },
    );
  });
});
