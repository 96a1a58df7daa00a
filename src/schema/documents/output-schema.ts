import * as z from 'zod/mini';
import type { Interpolation, OutsideRule } from '../../curve/index.js';
import { choice } from '../parts/choice.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { crossCheck, finite, items, list, members, optional, reportRepeats, resolving } from '../parts/members.js';
import {
  current,
  duration,
  fraction,
  frequency,
  pause,
  peakVoltage,
  power,
  resistance,
  unresolved,
  voltage,
} from '../parts/quantity.js';
import { isQuantity, readQuantity, ruleFor } from '../parts/read-quantity.js';
import type { Report } from '../parts/report-fault.js';
import { setting } from '../parts/setting.js';
import { identifier, line, notBlank } from '../parts/text.js';
import { quantityChoice, statedTolerance } from '../parts/tolerance.js';
import { checkOutput } from './check-output.js';
import { checkLimits } from './monitor-row-schema.js';

export const circuit: z.ZodMiniEnum<{ monopolar: 'monopolar'; bipolar: 'bipolar' }> = choice(['monopolar', 'bipolar']);

const interpolation: z.ZodMiniType<Interpolation> = choice([
  'log-log',
  'monotone-cubic',
  'monotone-cubic-log',
  'linear',
]);
const outsideRule: z.ZodMiniType<OutsideRule> = choice(['refuse', 'end-power', 'end-stretch']);

/** A crest factor: no waveform has one below 1. */
export const crestFactor: z.ZodMiniNumber = z
  .number()
  .check(z.gte(1, 'must be at least 1: a peak is never below the rms value'));

const wattScale = crossCheck(
  members({ kind: z.literal('watt'), minimum: power, maximum: power, step: optional(power) }),
  checkScale,
);

const levelScale = crossCheck(
  members({ kind: z.literal('level'), levels: list(notBlank(60), 1) }),
  ({ levels }, report) => reportRepeats(items(levels), (i) => ['levels', i], report),
);

const published = members({
  setting,
  points: list(describeForSchema(members({ load: resistance, power }), { id: 'CurvePoint' }), 2),
  interpolation: optional(interpolation),
  outside: optional(outsideRule),
});

const curve = crossCheck(published, ({ points }, report) => {
  let before: number | undefined;
  items(points).forEach((point, i) => {
    const load = finite(point?.load);
    if (load !== undefined && before !== undefined && load <= before) {
      report('not-ascending', ['points', i, 'load'], load, `must be greater than the load before it, ${before} ohm`);
    }
    before = load ?? before;
  });
});

const limitOfRow = unresolved('In the SI unit of the quantity, or text with a unit; absent: unlimited.');
const statedRow = members({
  setting,
  load: resistance,
  quantity: quantityChoice,
  power: optional(power),
  lower: optional(limitOfRow),
  upper: optional(limitOfRow),
});

const row = resolving<typeof statedRow, 'lower' | 'upper'>(statedRow, (value, report) => {
  if (value.lower === undefined && value.upper === undefined) {
    report('tolerance-missing', [], value, 'needs a lower or an upper limit');
  }
  if (!isQuantity(value.quantity)) return;
  for (const [name, range] of [
    ['lower', 'zero or more'],
    ['upper', 'positive'],
  ] as const) {
    const limit = readQuantity(value[name], [name], ruleFor(value.quantity, range), report);
    if (limit === undefined) delete value[name];
    else value[name] = limit;
  }
  checkLimits(value, report);
});

const testPoint = members({
  setting,
  load: resistance,
  power: optional(power),
  tolerance: optional(statedTolerance),
});

const duty = members({
  on: duration,
  off: pause,
});

const regimes = crossCheck(
  members({
    currentLimit: optional(current),
    voltageLimit: optional(voltage),
  }),
  (value, report) => {
    if (Object.keys(value).length === 0)
      report('missing-member', ['currentLimit'], undefined, 'must be given, or voltageLimit');
  },
);

/** Shape of a waveform. */
const waveform = z.discriminatedUnion(
  'kind',
  [
    members({ kind: z.literal('sine') }),
    members({ kind: z.literal('gated-sine'), dutyCycle: fraction, repetitionRate: optional(frequency) }),
    members({
      kind: z.literal('damped-sine'),
      timeConstant: duration,
      repetitionRate: frequency,
      rest: optional(choice(['restarts', 'overlaps'])),
    }),
  ],
  { error: 'must be one of: sine, gated-sine, damped-sine' },
);

/** One output in one mode. */
export const output = describeForSchema(
  crossCheck(
    members({
      id: identifier,
      name: line,
      circuit,
      connection: line,
      scale: z.discriminatedUnion('kind', [wattScale, levelScale], { error: 'must be "watt" or "level"' }),
      ratedPower: power,
      ratedLoad: resistance,
      crestFactor: optional(crestFactor),
      crestFactorAt: optional(choice(['rated load', 'open circuit'])),
      waveform: optional(waveform),
      maximumPeakVoltage: optional(peakVoltage),
      carrierFrequency: optional(frequency),
      duty: optional(duty),
      regimes: optional(regimes),
      curves: optional(list(curve)),
      otherSettings: optional(choice(['refuse', 'proportional'])),
      rows: optional(list(row)),
      tolerance: optional(statedTolerance),
      displayTolerance: optional(statedTolerance),
      points: optional(list(testPoint)),
      settings: optional(list(setting, 1)),
      loads: optional(list(resistance, 1)),
    }),
    checkOutput,
  ),
  { id: 'Output' },
);

function checkScale({ minimum, maximum }: { minimum?: unknown; maximum?: unknown }, report: Report): void {
  const [lowest, highest] = [finite(minimum), finite(maximum)];
  if (lowest === undefined || highest === undefined || lowest <= highest) return;
  report('band-reversed', ['minimum'], lowest, `must not be above the highest setting, ${highest} W`);
}
