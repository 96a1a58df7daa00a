import * as z from 'zod/mini';
import { choice } from '../parts/choice.js';
import { header } from '../parts/header.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import { list, members, optional } from '../parts/members.js';
import { identifier, line, prose } from '../parts/text.js';
import { quantityChoice } from '../parts/tolerance.js';
import { band } from './band-schema.js';
import { expanded } from './measurement-schema.js';
import { monitorDisplay, monitorSet } from './monitor-row-schema.js';
import {
  challengeFinding,
  challengeReading,
  monitorDisplayHint,
  traceFindings,
  tripFindings,
} from './monitor-schema.js';
import { phase } from './phase-schema.js';
import { library, place } from './plan-schema.js';
import { monitorReading, reading } from './readings-schema.js';
import { ruleId } from './rule-schema.js';
import { warning, working } from './step-schema.js';
import { conformance, judgedShape, reason, verdict } from './verdict-schema.js';

const number = z.number();
const count = z.int('must be a whole number').check(z.gte(0, 'must be 0 or more'));
const displayFinding = members({
  quantity: quantityChoice,
  displayed: number,
  measured: number,
  difference: number,
  relative: optional(number),
  limits: optional(band),
  verdict,
  message: prose,
});

const pointFinding = describeForSchema(
  members({
    point: line,
    number: place,
    phase,
    reading: optional(reading),
    value: optional(number),
    quantity: quantityChoice,
    limits: band,
    nominal: optional(number),
    verdict,
    reason,
    message: prose,
    margin: optional(number),
    power: optional(number),
    expanded: optional(expanded),
    conformance: optional(conformance),
    simpleVerdict: optional(verdict),
    display: optional(displayFinding),
    warnings: list(warning),
    working,
  }),
  { id: 'PointFinding' },
);

const leakageRow = describeForSchema(
  members({
    point: line,
    number: place,
    phase,
    reading: optional(reading),
    value: optional(number),
    limits: band,
    verdict,
    reason,
    message: prose,
    margin: optional(number),
    expanded: optional(expanded),
    conformance: optional(conformance),
    simpleVerdict: optional(verdict),
    overContactGuidance: optional(number),
    warnings: list(warning),
    working,
  }),
  { id: 'LeakageRow' },
);

const ruleFinding = members({
  rule: ruleId,
  output: identifier,
  outputName: line,
  clause: line,
  phase,
  points: list(line),
  verdict,
  message: prose,
  working,
});

const monitorFinding = members({
  number: place,
  phase,
  set: monitorSet,
  displayed: optional(monitorDisplay),
  limits: band,
  ...judgedShape,
  message: prose,
  working,
});

const summary = describeForSchema(
  members({
    verdict: choice(['pass', 'fail', 'incomplete']),
    pass: count,
    fail: count,
    notJudged: count,
    closeToLimit: count,
  }),
  { id: 'Summary' },
);

/** Plan and readings compared. */
export const findingsSchema = describeForSchema(
  members({
    ...header('findings'),
    library,
    points: list(pointFinding),
    rules: list(ruleFinding),
    monitor: list(monitorFinding),
    monitorDisplay: list(monitorDisplayHint),
    monitorChallenges: list(challengeFinding),
    monitorTrips: list(tripFindings),
    monitorTraces: list(traceFindings),
    leakage: list(leakageRow),
    extra: list(reading),
    extraMonitor: list(monitorReading),
    extraChallenges: list(challengeReading),
    asFound: optional(summary),
    final: summary,
    warnings: list(warning),
  }),
  { title: 'Findings of a verification' },
);
