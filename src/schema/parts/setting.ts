import * as z from 'zod/mini';
import { nearName } from '../../checks/index.js';
import type { Setting, SettingScale } from '../../procedure/index.js';
import { describeForSchema } from './json-schema-notes.js';
import { finite, items, type Loose } from './members.js';
import { readText } from './read-quantity.js';
import type { Report } from './report-fault.js';

/** A setting: watts, text of a power, or the name of a level. Which of them is right depends on the scale. */
export const setting: z.ZodMiniType<Setting> = describeForSchema(
  z.union([z.number(), z.string()], {
    error: 'must be a number of watts, text such as "120 W", or the name of a level',
  }),
  { id: 'Setting', description: 'Watts, text such as "120 W", or the name of a level of the scale.' },
);

/** A setting on its scale; undefined after a fault was reported, or when the scale itself is not right. */
export function readSetting(
  input: unknown,
  scale: Loose<SettingScale>,
  path: readonly PropertyKey[],
  report: Report,
): Setting | undefined {
  if (typeof input !== 'number' && typeof input !== 'string') return undefined;
  if (scale?.kind === 'level') return readLevel(input, items((scale as { levels?: unknown[] }).levels), path, report);
  if (scale?.kind !== 'watt') return undefined;
  const watts = typeof input === 'number' ? input : readText(input, { kind: 'power' });
  if (typeof watts !== 'number') {
    const hint = watts.hint ?? 'The scale of this output is in watts.';
    report(watts.code, path, input, `${watts.requirement}, because the scale is in watts`, hint);
    return undefined;
  }
  const { minimum, maximum } = scale as { minimum?: unknown; maximum?: unknown };
  const [lowest, highest] = [finite(minimum), finite(maximum)];
  // A scale that is upside down was reported itself.
  const reversed = lowest !== undefined && highest !== undefined && lowest > highest;
  const inside = reversed || (watts >= (lowest ?? watts) && watts <= (highest ?? watts));
  if (watts > 0 && inside) return watts;
  const range = lowest === undefined || highest === undefined ? 'on the scale' : `from ${lowest} to ${highest} W`;
  report(watts > 0 ? 'setting-outside-scale' : 'not-positive', path, input, `must be ${range}`);
  return undefined;
}

function readLevel(
  input: number | string,
  levels: readonly unknown[],
  path: readonly PropertyKey[],
  report: Report,
): Setting | undefined {
  const names = levels.filter((level) => typeof level === 'string');
  if (names.length === 0) return undefined;
  if (typeof input === 'string' && names.includes(input)) return input;
  const near = names.includes(String(input)) ? String(input) : nearName(String(input), names);
  report(
    'level-unknown',
    path,
    input,
    `must be one of the levels: ${names.slice(0, 30).join(', ')}`,
    near === undefined ? undefined : `Did you mean "${near}"?`,
  );
  return undefined;
}
