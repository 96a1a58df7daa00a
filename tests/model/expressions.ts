import fc from 'fast-check';
import { functionList, modelFunctions } from '../../src/model/closed-list.js';

/** Symbols of the random expressions. */
export const symbols = ['x', 'y', 'R_0', 'alpha'] as const;

/** Values of all of them, of the size of 1 and of either sign. */
export const values = (): fc.Arbitrary<Record<(typeof symbols)[number], number>> => {
  const value = fc.oneof(fc.double({ min: 0.2, max: 3, noNaN: true }), fc.double({ min: -3, max: -0.2, noNaN: true }));
  return fc.record({ x: value, y: value, R_0: value, alpha: value });
};

const { expression } = fc.letrec<{ expression: string; part: string }>((tie) => ({
  part: fc.oneof(
    { withCrossShrink: true, maxDepth: 3 },
    fc.constantFrom(...symbols),
    fc.constantFrom('2', '0.5', '3', '1', '0', '1.25', 'pi', 'e'),
    tie('expression').map((text) => `(${text})`),
    fc.constantFrom(...modelFunctions).chain((name) => {
      const { least, most } = functionList[name as keyof typeof functionList];
      return fc
        .array(tie('part'), { minLength: least, maxLength: Math.min(most, 3) })
        .map((parts) => `${name}(${parts.join(', ')})`);
    }),
  ),
  expression: fc.oneof(
    { withCrossShrink: true },
    tie('part'),
    fc
      .tuple(tie('part'), fc.constantFrom(' + ', ' - ', ' * ', ' / ', '^'), tie('part'))
      .map(([left, operator, right]) => left + operator + right),
    fc.tuple(tie('part'), fc.constantFrom('2', '3', '-1', '1.5', '0.5')).map(([base, n]) => `${base}^${n}`),
    tie('part').map((text) => `-${text}`),
    fc
      .tuple(
        tie('part'),
        fc.constantFrom(' + ', ' - ', ' * ', ' / '),
        tie('part'),
        fc.constantFrom(' + ', ' * ', ' / '),
        tie('part'),
      )
      .map((parts) => parts.join('')),
  ),
}));

/** An expression of the closed list over these symbols. It need not have a value everywhere. */
export const expressions = (): fc.Arbitrary<string> => expression;
