import * as z from 'zod/mini';
import { header } from '../parts/header.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { list, members, optional, resolving } from '../parts/members.js';
import { peakReading, unresolved } from '../parts/quantity.js';
import { isQuantity, readQuantity, ruleFor } from '../parts/read-quantity.js';
import type { Report } from '../parts/report-fault.js';
import { blankableLine, line, prose } from '../parts/text.js';
import { quantityChoice } from '../parts/tolerance.js';
import { degreesOfFreedom } from './measurement-schema.js';
import { monitorDisplay, monitorSet } from './monitor-row-schema.js';
import { challengeReading, monitorTrace } from './monitor-schema.js';
import { phase } from './phase-schema.js';

const shown = { quantity: quantityChoice, value: unresolved('In the SI unit of the quantity, or text with a unit.') };

const givenDisplay = members(shown);
const display = resolving<typeof givenDisplay, 'value'>(givenDisplay, readValue);

const givenReading = members({
  point: line,
  phase,
  ...shown,
  uncertainty: optional(
    members({
      standardUncertainty: z.number().check(z.nonnegative('must be 0 or more')),
      degreesOfFreedom: optional(degreesOfFreedom),
    }),
  ),
  display: optional(display),
  peakVoltage: optional(peakReading),
  afterInterruption: optional(z.boolean()),
  modeUnchanged: optional(z.boolean()),
  note: optional(prose),
});

/** One reading at one point. */
export const reading = describeForSchema(resolving<typeof givenReading, 'value'>(givenReading, readValue), {
  id: 'Reading',
});

/** One reading of the monitor's display. */
export const monitorReading = describeForSchema(members({ set: monitorSet, displayed: monitorDisplay, phase }), {
  id: 'MonitorReading',
});

/** What was read at the bench. */
export const readingsSchema = describeForSchema(
  members({
    ...header('readings'),
    note: optional(prose),
    by: optional(blankableLine),
    date: optional(blankableLine),
    readings: list(reading),
    monitor: optional(list(monitorReading)),
    monitorChallenges: optional(list(challengeReading)),
    monitorTraces: optional(list(monitorTrace)),
  }),
  { title: 'What was read at the bench' },
);

/** Reads a value in the unit of the quantity beside it. */
function readValue(value: { quantity?: unknown; value?: unknown }, report: Report): void {
  if (!isQuantity(value.quantity)) return;
  const read = readQuantity(value.value, ['value'], ruleFor(value.quantity, 'zero or more'), report);
  if (read !== undefined) value.value = read;
}
