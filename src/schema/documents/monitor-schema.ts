import * as z from 'zod/mini';
import { CalculationError } from '../../checks/index.js';
import { alarmReasons, checkMonitor, type Monitor } from '../../monitor/index.js';
import { choice } from '../parts/choice.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { crossCheck, finite, items, type Loose, list, members, optional } from '../parts/members.js';
import { duration, fraction, pause, resistance, resistanceLimit } from '../parts/quantity.js';
import { type Report, reporter } from '../parts/report-fault.js';
import { line, notBlank, prose } from '../parts/text.js';
import { band } from './band-schema.js';
import { degreesOfFreedom } from './measurement-schema.js';
import { monitorSet } from './monitor-row-schema.js';
import { phase } from './phase-schema.js';
import { warning, working } from './step-schema.js';
import { judgedShape, verdict } from './verdict-schema.js';

const number = z.number();
const limitName = choice(['lower', 'upper', 'rise']);

const fractions = z.union([fraction, members({ below: optional(fraction), above: optional(fraction) })], {
  error: 'must be a fraction, text in percent, or an object with below and above',
});
const resistances = z.union(
  [resistanceLimit, members({ below: optional(resistanceLimit), above: optional(resistanceLimit) })],
  { error: 'must be a resistance, or an object with below and above' },
);

/** How far a resistance may be off. */
const ohmTolerance = members({
  relative: optional(fractions),
  absolute: optional(resistances),
  combine: optional(choice(['greater', 'sum'])),
  floor: optional(resistanceLimit),
});

const limit = members({
  resistance: resistanceLimit,
  tolerance: optional(ohmTolerance),
  hysteresis: optional(resistanceLimit),
});

/** Resistance in series with what is set. */
export const series = members({ resistance: resistanceLimit, limits: optional(resistanceLimit) });

const givenModel = members({
  kind: choice(['continuity', 'contact-quality']),
  lower: optional(limit),
  upper: optional(limit),
  rise: optional(
    members({
      fraction,
      tolerance: optional(fraction),
      hysteresis: optional(fraction),
      baseline: choice(['at-start', 'lowest', 'tracked']),
      timeConstant: optional(duration),
      floor: optional(resistanceLimit),
    }),
  ),
  alarmDelay: optional(pause),
  releaseDelay: optional(pause),
  display: optional(
    members({
      resolution: resistance,
      maximum: resistance,
      open: z.union([z.literal('over-range'), resistance], { error: 'must be "over-range", or a resistance' }),
      tolerance: optional(ohmTolerance),
    }),
  ),
  series: optional(series),
});

/** What the core refuses of the members together, once each of them is right. */
const agreeing = z.check<unknown>(({ value, issues }) => {
  if (issues.length > 0) return;
  try {
    checkMonitor(value as Monitor, '');
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    const { code, path, requirement, hint } = error;
    const keys = path.split('.').filter((key) => key !== '');
    const received = keys.reduce((inner, key) => (inner as Record<string, unknown> | undefined)?.[key], value);
    reporter(issues)(code, keys, received, requirement, hint);
  }
});

/** A return-electrode monitor as its maker states it. */
export const monitorModel = describeForSchema(givenModel.check(agreeing as never), { id: 'Monitor' });

const accuracy = members({ relative: optional(fraction), absolute: optional(resistanceLimit) });

/** Reports values of a box that do not rise. */
function checkRising({ values }: { readonly values?: unknown }, report: Report): void {
  reportFalls(items(values as readonly unknown[]), 'values', report);
}

/** Reports the first value of a column that is not above the one before it. */
function reportFalls(column: readonly unknown[], name: string, report: Report): void {
  const [all, at] = [column.map(finite), column.findIndex((value, i) => i > 0 && !isAbove(value, column[i - 1]))];
  if (at > 0) report('not-ascending', [name, at], all[at], `must be greater than the value before it, ${all[at - 1]}`);
}

/** What is no number is reported where its type is checked. */
function isAbove(value: unknown, before: unknown): boolean {
  const [here, last] = [finite(value), finite(before)];
  return here === undefined || last === undefined || here > last;
}

/** A decade or substitution box. */
export const resistanceBox = describeForSchema(
  z.union(
    [
      crossCheck(members({ name: optional(line), values: list(resistanceLimit, 1), accuracy }), checkRising),
      members({
        name: optional(line),
        step: resistance,
        maximum: resistance,
        minimum: optional(resistanceLimit),
        accuracy,
      }),
    ],
    { error: 'must be a box with { values, accuracy }, or a decade with { step, maximum, accuracy }' },
  ),
  { id: 'ResistanceBox' },
);

const alarmReason = choice(alarmReasons);

const givenChallenge = members({
  challenge: z.int('must be a whole number').check(z.gte(1, 'must be 1 or more')),
  set: optional(resistanceLimit),
  alarm: z.boolean(),
  responseTime: optional(pause),
  alarmReason: optional(alarmReason),
  phase,
  note: optional(prose),
});

/** What the monitor did at one resistance. */
export const challengeReading = describeForSchema(
  crossCheck(givenChallenge, ({ alarm, alarmReason: noted }, report) => {
    if (alarm !== false || noted === undefined) return;
    report('contradiction', ['alarmReason'], noted, 'must be absent where there was no alarm');
  }),
  { id: 'ChallengeReading' },
);

const givenTrace = members({
  name: optional(line),
  phase,
  of: choice(['set', 'displayed']),
  time: list(pause, 1),
  resistance: list(monitorSet, 1),
  end: optional(pause),
  startsIn: optional(choice(['accepted', 'alarm'])),
  alarms: list(members({ from: pause, to: optional(pause), reason: optional(alarmReason) })),
});

/** Resistances against time, with the alarms that were noted. */
export const monitorTrace = describeForSchema(crossCheck(givenTrace, checkColumns), { id: 'MonitorTrace' });

/** Reports columns that do not belong together, and times that run backwards. */
function checkColumns(trace: NonNullable<Loose<z.output<typeof givenTrace>>>, report: Report): void {
  const [times, resistances] = [items(trace.time), items(trace.resistance)];
  if (times.length !== resistances.length) {
    const requirement = `must have as many values as the time, ${times.length}`;
    report('wrong-count', ['resistance'], resistances.length, requirement);
  }
  reportFalls(times, 'time', report);
}

const setOrOpen = z.union([number, z.literal('open')]);
const wait = z.nullable(number);

const challengeShape = { id: line, number, instruction: prose, wait, reason: prose };

const challenge = z.discriminatedUnion('kind', [
  members({
    ...challengeShape,
    kind: choice(['must-not-alarm', 'must-alarm']),
    limit: choice(['lower', 'upper', 'rise', 'any']),
    set: setOrOpen,
    baseline: optional(number),
  }),
  members({
    ...challengeShape,
    kind: z.literal('sweep'),
    limit: limitName,
    direction: choice(['up', 'down']),
    values: list(number),
    baseline: optional(number),
    finds: optional(
      members({
        expandedUncertainty: number,
        limits: band,
        acceptance: optional(z.nullable(band)),
        failing: optional(band),
      }),
    ),
  }),
]);

/** How the thresholds of a monitor are challenged, as a plan carries it. */
export const monitorThresholds = describeForSchema(
  members({
    connection: line,
    challenges: list(challenge),
    thresholds: list(
      members({
        limit: limitName,
        baseline: optional(number),
        trip: band,
        mustNotAlarm: z.nullable(number),
        mustAlarm: z.nullable(number),
        undecided: band,
        proven: z.nullable(band),
        status: choice(['verifiable', 'roughly', 'not-verifiable']),
        reason: z.string(),
        needed: optional(members({ step: optional(number), offBy: optional(number), reach: optional(number) })),
        working,
      }),
    ),
    cautions: list(prose),
    warnings: list(warning),
  }),
  { id: 'MonitorThresholds' },
);

/** What the errors of the display have in common. */
export const monitorDisplayHint = describeForSchema(
  members({
    phase,
    gain: number,
    offset: number,
    fault: choice(['none', 'constant', 'factor', 'constant-or-factor', 'constant-and-factor', 'irregular']),
    message: prose,
    working,
  }),
  { id: 'MonitorDisplayHint' },
);

const reasonsShape = { alarmReason: optional(alarmReason), expectedReason: optional(alarmReason) };

/** One challenge of the monitor, judged. */
export const challengeFinding = describeForSchema(
  members({
    challenge: line,
    number,
    phase,
    limit: choice(['lower', 'upper', 'rise', 'any']),
    set: setOrOpen,
    baseline: optional(number),
    mustAlarm: z.boolean(),
    alarm: optional(z.boolean()),
    responseTime: optional(number),
    response: optional(members(judgedShape)),
    verdict,
    message: prose,
    note: optional(prose),
    warnings: optional(list(warning)),
    ...reasonsShape,
  }),
  { id: 'ChallengeFinding' },
);

const tripFinding = describeForSchema(
  members({
    phase,
    what: notBlank(200),
    unit: choice(['ohm', 's']),
    value: optional(number),
    limits: band,
    ...judgedShape,
    isStated: z.boolean(),
    message: prose,
    ...reasonsShape,
  }),
  { id: 'TripFinding' },
);

/** What the sweeps of one state of the unit show. */
export const tripFindings = describeForSchema(
  members({
    phase,
    sweeps: list(
      members({
        steps: list(members({ set: number, alarm: z.boolean() })),
        baseline: optional(number),
        responseTime: optional(number),
      }),
    ),
    rows: list(tripFinding),
    hysteresis: list(
      members({
        limit: limitName,
        baseline: optional(number),
        value: number,
        standardUncertainty: number,
        degreesOfFreedom,
        expandedUncertainty: number,
        stated: z.nullable(number),
      }),
    ),
    warnings: list(warning),
    working,
  }),
  { id: 'TripFindings' },
);

const states = members({
  start: number,
  end: number,
  alarms: list(
    members({
      reason: alarmReason,
      since: number,
      from: number,
      to: z.nullable(number),
      resistance: setOrOpen,
      seen: setOrOpen,
      limit: z.nullable(number),
      baseline: z.nullable(number),
    }),
  ),
  states: list(
    members({ state: choice(['accepted', 'alarm']), from: number, to: number, outputPermitted: z.boolean() }),
  ),
  timeInAlarm: number,
  pendingSince: z.nullable(number),
  baseline: z.nullable(number),
  assumptions: list(prose),
});

/** What the stated monitor makes of a trace, and what was noted. */
export const traceFindings = describeForSchema(
  members({
    number: z.int('must be a whole number').check(z.gte(1, 'must be 1 or more')),
    name: optional(line),
    phase,
    expected: states,
    rows: list(tripFinding),
    warnings: list(warning),
    working,
  }),
  { id: 'TraceFindings' },
);
