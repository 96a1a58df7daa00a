import { choice } from '../parts/choice.js';
import { header } from '../parts/header.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { members, optional } from '../parts/members.js';
import { blankableLine, prose } from '../parts/text.js';
import { findingsSchema } from './findings-schema.js';
import { planSchema } from './plan-schema.js';
import { readingsSchema } from './readings-schema.js';

/** Everything that was planned, read and found. */
export const recordSchema = describeForSchema(
  members({
    ...header('record'),
    plan: planSchema,
    readings: readingsSchema,
    findings: findingsSchema,
    signature: members({
      occasion: optional(choice(['acceptance', 'periodic inspection', 'after repair'])),
      by: optional(blankableLine),
      date: optional(blankableLine),
      remarks: optional(prose),
    }),
  }),
  { title: 'Record of a verification' },
);
