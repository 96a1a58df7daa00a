import * as z from 'zod/mini';
import { nearName } from '../../checks/index.js';
import { type LeakageArrangementId, leakageArrangements, leakageLoadings } from '../../leakage/index.js';
import type { LeakageTest, Specification } from '../../procedure/index.js';
import { choice } from '../parts/choice.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { items, type Loose, list, members, optional, reportRepeats } from '../parts/members.js';
import { current, fraction, resistance } from '../parts/quantity.js';
import type { Report } from '../parts/report-fault.js';
import { readSetting, setting } from '../parts/setting.js';
import { identifier, line, prose } from '../parts/text.js';
import { quantityChoice } from '../parts/tolerance.js';
import { band } from './band-schema.js';
import { standing } from './rule-schema.js';
import { warning, working } from './step-schema.js';

const number = z.number();

const arrangement = choice([
  'earth-referenced-load-between-electrodes',
  'earth-referenced-load-to-earth',
  'isolated',
  'bipolar',
]);

const loading = choice(leakageLoadings);

const measuredAt = choice(['leads', 'terminals']);

/** A measurement of HF leakage, as a specification asks for it. */
export const leakageTest = describeForSchema(
  members({
    id: identifier,
    output: identifier,
    setting,
    arrangement,
    measuredAt,
    loading: optional(list(loading, 1)),
    connection: line,
    limit: optional(
      members({
        current: optional(current),
        shareOfRatedPower: optional(fraction),
        measuringResistance: optional(resistance),
        statedIn: line,
        clause: optional(line),
        edition: optional(line),
        standing: optional(standing),
      }),
    ),
  }),
  { id: 'LeakageTest' },
);

/** Reads the settings of leakage measurements on the scale of their output, and holds them to the sheet. */
export function checkLeakage({ leakage, outputs }: NonNullable<Loose<Specification>>, report: Report): void {
  const tests = items(leakage) as readonly Loose<LeakageTest>[];
  reportRepeats(
    tests.map((test) => test?.id),
    (i) => ['leakage', i, 'id'],
    report,
  );
  const known = items(outputs);
  tests.forEach((test, i) => {
    if (!test) return;
    checkLoading(test, (name) => ['leakage', i, ...name], report);
    if (typeof test.output !== 'string') return;
    const output = known.find((entry) => entry?.id === test.output);
    if (output === undefined) {
      const names = known.map((entry) => entry?.id).filter((id) => typeof id === 'string');
      const near = nearName(test.output, names);
      const hint = near === undefined ? undefined : `Did you mean "${near}"?`;
      const requirement = `must be an output of this sheet: ${names.join(', ')}`;
      report('unknown-choice', ['leakage', i, 'output'], test.output, requirement, hint);
      return;
    }
    const read = readSetting(test.setting, output.scale, ['leakage', i, 'setting'], report);
    if (read !== undefined) test.setting = read;
    if (typeof test.arrangement !== 'string' || typeof output.circuit !== 'string') return;
    if ((test.arrangement === 'bipolar') !== (output.circuit === 'bipolar')) {
      const requirement = `must be an arrangement of a ${output.circuit} output`;
      report('contradiction', ['leakage', i, 'arrangement'], test.arrangement, requirement);
    }
  });
}

/** Holds the states of the output to the arrangement. */
function checkLoading(
  { arrangement: name, loading: states }: NonNullable<Loose<LeakageTest>>,
  path: (name: readonly PropertyKey[]) => readonly PropertyKey[],
  report: Report,
): void {
  if (states === undefined) return;
  reportRepeats(items(states), (i) => path(['loading', i]), report);
  if (typeof name !== 'string' || !Object.hasOwn(leakageArrangements, name)) return;
  if (leakageArrangements[name as LeakageArrangementId].alsoUnloaded) return;
  const requirement = 'must be absent: the load of this arrangement is part of it';
  report('contradiction', path(['loading']), states, requirement);
}

/** A measurement of HF leakage, as a plan carries it. */
export const planLeakage = describeForSchema(
  members({
    id: line,
    test: optional(identifier),
    measuredFrom: optional(choice(['active electrode', 'neutral electrode', 'pole 1', 'pole 2'])),
    loading: optional(loading),
    number: z.int('must be a whole number').check(z.gte(1, 'must be 1 or more')),
    output: identifier,
    outputName: line,
    setting: z.union([number, line]),
    settingText: line,
    arrangement,
    measuredAt,
    connection: line,
    instruction: prose,
    resistor: optional(members({ id: identifier, resistance: number })),
    reads: quantityChoice,
    range: optional(members({ maximum: number, resolution: number })),
    limit: members({
      current: number,
      measuringResistance: number,
      basis: members({
        statedIn: line,
        clause: optional(line),
        edition: optional(line),
        standing: optional(standing),
        isStated: z.boolean(),
      }),
    }),
    highestReading: optional(number),
    atLimit: optional(number),
    acceptance: optional(z.nullable(band)),
    failing: optional(band),
    highestAccepted: optional(number),
    warnings: list(warning),
    working,
  }),
  { id: 'PlanLeakage' },
);
