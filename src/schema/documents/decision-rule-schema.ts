import * as z from 'zod/mini';
import { choice } from '../parts/choice.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { members } from '../parts/members.js';
import { fraction } from '../parts/quantity.js';

const ratio = describeForSchema(z.number().check(z.gte(0, 'must be 0 or more')), {
  description: 'Guard band as a multiple of the expanded uncertainty; 1 is usual.',
  minimum: 0,
});

/** A fraction that is neither 0 nor, where `most` is 1, 1. */
function risk(most: number): typeof fraction {
  const text = most < 1 ? `must be greater than 0 and at most ${most}` : 'must be greater than 0 and less than 1';
  const inside = z.refine<number>((value) => value > 0 && value <= most && value < 1, text);
  return fraction.check(inside as never) as typeof fraction;
}

/** How uncertainty enters a verdict. */
export const decisionRule = describeForSchema(
  z.discriminatedUnion(
    'kind',
    [
      members({ kind: z.literal('simple-acceptance') }),
      members({ kind: z.literal('guarded-acceptance'), ratio }),
      members({ kind: z.literal('guarded-rejection'), ratio }),
      members({ kind: z.literal('specific-consumer-risk'), risk: risk(0.5) }),
      members({ kind: z.literal('specific-producer-risk'), risk: risk(0.5) }),
      members({ kind: z.literal('non-binary'), ratio }),
      members({
        kind: z.literal('test-uncertainty-ratio'),
        method: choice(['managed-risk', 'root-sum-square', 'whole-below-four', 'relaxed-below-four']),
      }),
      members({ kind: z.literal('global-consumer-risk'), risk: risk(1), reliability: risk(1) }),
    ],
    {
      error:
        'must be one of: simple-acceptance, guarded-acceptance, guarded-rejection, specific-consumer-risk, ' +
        'specific-producer-risk, non-binary, test-uncertainty-ratio, global-consumer-risk',
    },
  ),
  { id: 'DecisionRule' },
);
