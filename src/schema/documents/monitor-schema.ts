import * as z from 'zod/mini';
import { choice } from '../parts/choice.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { list, members, optional } from '../parts/members.js';
import { duration, fraction, pause, resistance, resistanceLimit } from '../parts/quantity.js';
import { line, notBlank, prose } from '../parts/text.js';
import { band } from './band-schema.js';
import { degreesOfFreedom } from './measurement-schema.js';
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

/** A return-electrode monitor as its maker states it. */
export const monitorModel = describeForSchema(
  members({
    kind: choice(['continuity', 'contact-quality']),
    lower: optional(limit),
    upper: optional(limit),
    rise: optional(
      members({
        fraction: number.check(z.positive('must be greater than 0')),
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
  }),
  { id: 'Monitor' },
);

const accuracy = members({ relative: optional(fraction), absolute: optional(resistanceLimit) });

/** A decade or substitution box. */
export const resistanceBox = describeForSchema(
  z.union(
    [
      members({ name: optional(line), values: list(resistanceLimit, 1), accuracy }),
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

/** What the monitor did at one resistance. */
export const challengeReading = describeForSchema(
  members({
    challenge: z.int('must be a whole number').check(z.gte(1, 'must be 1 or more')),
    set: optional(resistanceLimit),
    alarm: z.boolean(),
    responseTime: optional(pause),
    phase,
    note: optional(prose),
  }),
  { id: 'ChallengeReading' },
);

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
  }),
  { id: 'ChallengeFinding' },
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
    rows: list(
      members({
        phase,
        what: notBlank(200),
        unit: choice(['ohm', 's']),
        value: optional(number),
        limits: band,
        ...judgedShape,
        isStated: z.boolean(),
        message: prose,
      }),
    ),
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
