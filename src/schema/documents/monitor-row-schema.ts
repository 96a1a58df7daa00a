import * as z from 'zod/mini';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { crossCheck, finite, members, optional } from '../parts/members.js';
import { resistanceLimit } from '../parts/quantity.js';
import { readQuantity } from '../parts/read-quantity.js';
import { type Report, reporter } from '../parts/report-fault.js';

/** Resistance of a challenge, or an open circuit. */
export const monitorSet: z.ZodMiniType<number | 'open', number | string> = resistanceOr('open', 'an open circuit');

/** What the display of the monitor shows. */
export const monitorDisplay: z.ZodMiniType<number | 'over-range', number | string> = resistanceOr(
  'over-range',
  'a display that shows over-range',
);

/** Members of a row of the monitor. */
export const monitorRowShape = {
  set: monitorSet,
  lower: optional(resistanceLimit),
  upper: optional(resistanceLimit),
};

/** A resistance to set and the limits of what the display shows. */
export const monitorRow = crossCheck(members(monitorRowShape), checkLimits);

/** Reports a lower limit above its upper. */
export function checkLimits(
  { lower, upper }: { lower?: unknown; upper?: unknown },
  report: Report,
  lowerName = 'lower',
): void {
  const [least, most] = [finite(lower), finite(upper)];
  if (least === undefined || most === undefined || least <= most) return;
  report('band-reversed', [lowerName], least, `must not be above the upper limit, ${most}`);
}

function resistanceOr<const W extends string>(word: W, what: string): z.ZodMiniType<number | W, number | string> {
  const requirement = `must be a number of ohms, text such as "100 ohm", or "${word}" for ${what}`;
  const read = z.transform((input: number | string, context) => {
    if (input === word) return word;
    const value = readQuantity(input, [], { kind: 'resistance', range: 'zero or more' }, reporter(context.issues));
    return value ?? (input as number);
  });
  const given = z.union([z.number(), z.string()], { error: requirement });
  return z.pipe(describeForSchema(given, { description: `In ohms, text with a unit, or "${word}".` }), read);
}
