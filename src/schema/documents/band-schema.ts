import * as z from 'zod/mini';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { members, optional } from '../parts/members.js';

/** Limits in the quantity of a point. */
export const band = describeForSchema(members({ lower: optional(z.number()), upper: optional(z.number()) }), {
  id: 'Band',
});
