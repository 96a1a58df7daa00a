import * as z from 'zod/mini';
import { type CalculationErrorCode, codeList } from '../../checks/index.js';
import type { UnitName } from '../../working/index.js';
import { listed } from '../parts/choice.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { list, members, optional } from '../parts/members.js';
import { line, notBlank, prose } from '../parts/text.js';
import { sourceId } from './rule-schema.js';

const symbol = z
  .string()
  .check(z.regex(/^[A-Za-z_][A-Za-z0-9_]{0,59}$/, 'must be a symbol: letters, digits, underscores'));

/** Every unit that a working can be in; a type cannot be listed, so a test holds this list complete. */
export const unitNames = [
  '1',
  'W',
  'A',
  'V',
  'ohm',
  'Hz',
  's',
  'H',
  'F',
  'K',
  'J',
  'm',
  'VA',
  'var',
  'rad',
  'A^2 s',
  'm^2',
  'A/m^2',
  'W/ohm',
  'ohm m',
  'ohm/m',
  'H/m',
  'F/m',
  'm/s',
  'K/W',
  '1/K',
  'any',
] as const satisfies readonly UnitName[];

/** One step of a working. */
const step = describeForSchema(
  members({
    symbol: notBlank(60),
    label: line,
    formula: notBlank(80),
    expression: notBlank(2000),
    inputs: z.record(symbol, z.number()),
    value: z.number(),
    unit: listed<UnitName>(unitNames, 'a unit of workings'),
    source: sourceId,
    clause: optional(line),
  }),
  { id: 'Step', title: 'One step of a working, which can be recomputed' },
);

export const working = list(step);

/** A matter that is not fatal. */
export const warning = describeForSchema(
  members({ code: listed(Object.keys(codeList) as CalculationErrorCode[], 'a code'), message: prose }),
  { id: 'Warning' },
);
