import * as z from 'zod/mini';
import { choice } from '../parts/choice.js';
import { header } from '../parts/header.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { crossCheck, items, list, members, optional, reportRepeats } from '../parts/members.js';
import { identifier, line, notBlank, prose } from '../parts/text.js';
import { quantityChoice } from '../parts/tolerance.js';
import { band } from './band-schema.js';
import { benchSchema } from './bench-schema.js';
import { decisionRule } from './decision-rule-schema.js';
import { planLeakage } from './leakage-schema.js';
import { expanded, readingBudget } from './measurement-schema.js';
import { monitorRowShape } from './monitor-row-schema.js';
import { monitorThresholds } from './monitor-schema.js';
import { ruleId, standardRule, standing } from './rule-schema.js';
import { specificationSchema } from './specification-schema.js';
import { warning, working } from './step-schema.js';

const number = z.number();

/** The library that made a document, and its version. */
export const library = members({ name: z.literal('esu-limits'), version: notBlank(60) });

/** Place in an order that starts at 1. */
export const place = z.int('must be a whole number').check(z.gte(1, 'must be 1 or more'));

/** A setting of a plan, already read on its scale. */
const plannedSetting = z.union([number, notBlank(60)], { error: 'must be a number of watts, or the name of a level' });

const feasibilityCheck = members({
  check: choice([
    'instrument range',
    'instrument peak voltage',
    'instrument crest factor',
    'instrument frequency',
    'load power',
    'load peak voltage',
    'lead peak voltage',
  ]),
  ok: z.boolean(),
  value: number,
  limit: number,
  message: optional(prose),
});

const point = describeForSchema(
  members({
    id: line,
    number: place,
    output: identifier,
    outputName: line,
    connection: line,
    lead: optional(line),
    setting: plannedSetting,
    settingText: line,
    wantedLoad: number,
    load: optional(members({ id: identifier, resistance: number, difference: number, powerChange: number })),
    expected: optional(
      members({
        power: number,
        current: number,
        voltage: number,
        peakVoltage: optional(number),
        peakCurrent: optional(number),
        from: choice([
          'test point',
          'published row',
          'middle of the published row',
          'published curve',
          'scaled curve',
          'rating',
          'regimes',
        ]),
      }),
    ),
    reads: quantityChoice,
    range: optional(members({ maximum: number, resolution: number })),
    limits: band,
    limitsFrom: choice(['published row', 'tolerance', 'standard', 'none']),
    publishedLimits: optional(band),
    derivedLimits: optional(band),
    nominal: optional(number),
    feasible: z.boolean(),
    feasibility: list(feasibilityCheck),
    activation: members({ longest: optional(number), pause: optional(number) }),
    effect: optional(
      members({
        ratios: members({ power: number, current: number, voltage: number }),
        impedance: number,
        phase: number,
        applied: z.boolean(),
        statement: prose,
      }),
    ),
    measurement: optional(
      members({
        budget: readingBudget,
        expanded,
        atLower: optional(number),
        atUpper: optional(number),
        slope: number,
        testUncertaintyRatio: optional(number),
        acceptance: optional(z.nullable(band)),
        failing: optional(band),
        assumptions: list(prose),
        statement: prose,
      }),
    ),
    warnings: list(warning),
    working,
  }),
  { id: 'PlanPoint' },
);

const rule = members({
  rule: ruleId,
  output: identifier,
  outputName: line,
  definition: standardRule,
  parameters: z.record(identifier, number),
  points: list(line),
  instruction: prose,
});

/** Test points with expected values, limits, working and cautions. */
export const planSchema = describeForSchema(
  crossCheck(
    members({
      ...header('plan'),
      library,
      specification: specificationSchema,
      bench: benchSchema,
      options: members({
        rounding: choice(['inward', 'nearest']),
        govern: choice(['published', 'derived', 'tighter']),
        lowSetting: number,
        closeToLimit: number,
        decisionRule,
        negligibleEffect: number,
      }),
      points: list(point),
      rules: list(rule),
      monitor: list(members({ ...monitorRowShape, number: place, connection: line })),
      monitorThresholds: optional(monitorThresholds),
      leakage: list(planLeakage),
      cautions: list(members({ id: identifier, text: prose, standing })),
      warnings: list(warning),
      benchTime: members({
        total: number,
        parts: list(members({ what: line, count: number, each: number })),
      }),
    }),
    ({ points }, report) => {
      reportRepeats(
        items(points).map((entry) => entry?.id),
        (i) => ['points', i, 'id'],
        report,
      );
      reportRepeats(
        items(points).map((entry) => entry?.number),
        (i) => ['points', i, 'number'],
        report,
      );
    },
  ),
  { title: 'Plan of a verification' },
);
