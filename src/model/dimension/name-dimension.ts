import { baseUnits, type Dimension, sameDimension } from './dimension.js';
import type { Rational } from './rational.js';
import { dimensionOfFactors, type UnitFactors } from './unit-factors.js';
import { unitNames } from './unit-names.js';

const one: Rational = { numerator: 1, denominator: 1 };
const minusOne: Rational = { numerator: -1, denominator: 1 };

/**
 * The plainest unit that has a dimension: one of those at hand, one named unit, a power of one, a quotient or a
 * product of two, else base units. A plain number has none of them.
 *
 * @param atHand Units that are in use already, such as those of the symbols
 */
export function nameDimension(wanted: Dimension, atHand: Iterable<UnitFactors> = []): UnitFactors {
  for (const factors of candidates(atHand)) {
    const found = dimensionOfFactors(factors);
    if (found && sameDimension(found, wanted)) return factors;
  }
  return new Map(
    baseUnits.map((name, i) => [name, wanted[i] as Rational] as const).filter(([, { numerator }]) => numerator !== 0),
  );
}

function* candidates(atHand: Iterable<UnitFactors>): Generator<UnitFactors> {
  const names = [...unitNames.keys()];
  yield new Map();
  yield* atHand;
  for (const name of names) yield new Map([[name, one]]);
  for (const numerator of [2, 3, -1, -2]) {
    for (const name of names) yield new Map([[name, { numerator, denominator: 1 }]]);
  }
  for (const name of names) yield new Map([[name, { numerator: 1, denominator: 2 }]]);
  for (const exponent of [minusOne, one]) {
    for (const a of names) {
      for (const b of names) {
        if (a !== b) {
          yield new Map([
            [a, one],
            [b, exponent],
          ]);
        }
      }
    }
  }
}
