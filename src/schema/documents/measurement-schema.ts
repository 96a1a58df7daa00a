import * as z from 'zod/mini';
import { choice } from '../parts/choice.js';
import { list, members, optional } from '../parts/members.js';
import { line, prose } from '../parts/text.js';
import { quantityChoice } from '../parts/tolerance.js';

const number = z.number();
/** Degrees of freedom of an uncertainty. */
export const degreesOfFreedom = z.union([number, z.literal('infinite')], { error: 'must be a number, or "infinite"' });

const contribution = members({
  name: line,
  description: optional(prose),
  unit: optional(line),
  value: number,
  standardUncertainty: number,
  degreesOfFreedom,
  type: choice(['A', 'B']),
  distribution: choice([
    'normal',
    'rectangular',
    'triangular',
    'arcsine',
    'trapezoidal',
    'curvilinear-trapezoid',
    'student-t',
  ]),
  sensitivity: number,
  contribution: number,
  share: number,
});

const secondOrder = members({
  standardUncertainty: optional(number),
  shift: number,
  firstOrderEnough: z.boolean(),
  statement: prose,
});

/** Budget of a reading. */
export const readingBudget = members({
  value: number,
  standardUncertainty: number,
  degreesOfFreedom: optional(degreesOfFreedom),
  degreesOfFreedomReason: optional(prose),
  contributions: list(contribution),
  correlations: list(members({ between: z.tuple([line, line]), coefficient: number })),
  method: choice(['analytic', 'forward mode', 'extrapolated differences']),
  secondOrder: optional(secondOrder),
  assumptions: list(prose),
  quantity: quantityChoice,
  loadExponent: number,
  loadStatement: prose,
});

/** Expanded uncertainty with its coverage. */
export const expanded = members({
  expandedUncertainty: number,
  coverageFactor: number,
  coverageProbability: number,
  degreesOfFreedom,
});
