import { contains } from '../band/index.js';
import { assessLeakage, leakageHint } from '../leakage/index.js';
import type { LeakageRow } from './findings.js';
import { acceptanceOf, acceptedText, judge, reasonText } from './judge.js';
import { conformanceOf, ownUncertainty } from './measured-reading.js';
import { withWaveform } from './output-waveform.js';
import type { Plan, PlanLeakage } from './plan.js';
import { leakageUncertainty, type Measuring, measurementOf } from './plan-leakage.js';
import { pointAcceptance } from './point-acceptance.js';
import { bandText, roundedText } from './quantity-text.js';
import type { Phase, Reading } from './readings.js';
import type { LeakageTest, Output } from './specification.js';

/** The row of a leakage measurement that has no reading. */
export function unreadLeakage(planned: PlanLeakage, phase: Phase): LeakageRow {
  return {
    ...rowOf(planned, phase),
    verdict: 'not judged',
    reason: 'no-reading',
    message: 'No reading.',
    warnings: [],
    working: [],
  };
}

/** One reading of HF leakage against its limit. */
export function assessLeakageRow(plan: Plan, planned: PlanLeakage, reading: Reading): LeakageRow {
  const { specification, bench, options } = plan;
  const row = { ...rowOf(planned, reading.phase), reading };
  const load = bench.loads.find(({ id }) => id === planned.resistor?.id);
  if (load === undefined) {
    const message = 'The bench has no measuring resistor for this reading.';
    return { ...row, verdict: 'not judged', reason: 'nothing-to-compare', message, warnings: [], working: [] };
  }
  const output = withWaveform(specification.outputs.find(({ id }) => id === planned.output) as Output);
  const ofTest = planned.test ?? planned.id.replace(/^leakage\//, '');
  const test = specification.leakage?.find(({ id }) => id === ofTest) as LeakageTest;
  const measuring: Measuring = { test, output, bench, load, reads: reading.quantity };
  const { current, margin, contact, warnings, working } = assessLeakage(measurementOf(measuring, reading.value));
  const { limits } = row;
  const isPlanned = reading.quantity === planned.reads;
  const own =
    reading.uncertainty === undefined ? undefined : ownUncertainty(reading, reading.uncertainty, 'current', current);
  const known = isPlanned && planned.range !== undefined;
  const expanded = own ?? (known ? leakageUncertainty(measuring, planned.range, reading.value) : undefined);
  const planAccepts = isPlanned ? acceptanceOf(planned) : {};
  const question = { rule: options.decisionRule, limits, nominal: 0, unit: 'A' } as const;
  const accepted = own === undefined ? planAccepts : acceptanceOf(pointAcceptance({ ...question, atUpper: own }));
  const conformance = expanded === undefined ? undefined : conformanceOf(limits, current, expanded);
  const { verdict, reason } = judge({
    rule: options.decisionRule,
    limits,
    ...accepted,
    value: current,
    isClose: margin >= options.closeToLimit,
  });
  const simple = contains(limits, current) ? 'pass' : 'fail';
  const because = reasonText(reason, {
    isLow: false,
    accepted: acceptedText(accepted.acceptance, 'A'),
    conformance,
  });
  const hint = simple === 'fail' ? hintText(measuring, current, planned.limit.current) : '';
  return {
    ...row,
    value: current,
    margin,
    ...(expanded === undefined ? {} : { expanded }),
    ...(conformance === undefined ? {} : { conformance }),
    ...(verdict === simple ? {} : { simpleVerdict: simple }),
    overContactGuidance: contact.occupational,
    verdict,
    reason,
    message: `${roundedText(current, 'current')} against ${bandText(limits, 'current')}: ${because}.${hint}`,
    // The plan says already what is to be known of the limit.
    warnings: warnings.filter(({ code }) => !planned.warnings.some((entry) => entry.code === code)),
    working,
  };
}

/** Where to look first: needs a carrier and a voltage that the sheet states. */
function hintText({ output }: Measuring, current: number, limit: number): string {
  const { carrierFrequency: frequency, maximumPeakVoltage, crestFactor } = output;
  if (frequency === undefined || maximumPeakVoltage === undefined || crestFactor === undefined) {
    return ' Lift the leads clear of metal and of each other, and repeat.';
  }
  return ` ${leakageHint({ current, limit, voltage: maximumPeakVoltage / crestFactor, frequency }).text}`;
}

function rowOf(planned: PlanLeakage, phase: Phase): Pick<LeakageRow, 'point' | 'number' | 'phase' | 'limits'> {
  return { point: planned.id, number: planned.number, phase, limits: { upper: planned.limit.current } };
}
