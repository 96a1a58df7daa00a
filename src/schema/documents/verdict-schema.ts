import * as z from 'zod/mini';
import { choice } from '../parts/choice.js';
import { members, optional } from '../parts/members.js';
import { band } from './band-schema.js';
import { expanded } from './measurement-schema.js';

const number = z.number();

/** Verdict of one row. */
export const verdict = choice(['pass', 'fail', 'not judged']);

/** Why a row has its verdict. */
export const reason = choice([
  'inside',
  'close-to-limit',
  'below-lower',
  'above-upper',
  'in-guard-band',
  'outside-in-guard-band',
  'conditional-pass',
  'conditional-fail',
  'no-decision',
  'no-reading',
  'false-alarm',
  'early-release',
  'no-limits',
  'not-plausible',
  'nothing-to-compare',
]);

/** Whether a quantity lies inside its limits, as probabilities. */
export const conformance = members({ conforming: number, nonconforming: number, below: number, above: number });

/** Members of a value as the rule of the plan judges it. */
export const judgedShape = {
  verdict,
  reason,
  margin: optional(number),
  acceptance: optional(z.nullable(band)),
  failing: optional(band),
  expanded: optional(expanded),
  conformance: optional(conformance),
  simpleVerdict: optional(verdict),
};
