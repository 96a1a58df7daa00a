import { contains } from '../band/index.js';
import type { Warning } from '../checks/index.js';
import { convertQuantity, quantityUnits } from '../circuit/index.js';
import { formatQuantity } from '../units/index.js';
import type { Step } from '../working/index.js';
import { assessDisplay } from './assess-display.js';
import type { PointFinding } from './findings.js';
import { idealValue, valueAs } from './ideal-value.js';
import { acceptedText, judge, reasonText } from './judge.js';
import { measuredReading } from './measured-reading.js';
import type { Plan, PlanPoint } from './plan.js';
import { bandText, quantityText, roundedText } from './quantity-text.js';
import type { Phase, Reading } from './readings.js';
import type { Output } from './specification.js';
import { margin } from './steps.js';

/** A reading that implies at least this many times the larger of setting and expected power is a keying error. */
export const implausiblePowerRatio = 10;

/** The row of a point that has no reading. */
export function unreadPoint(point: PlanPoint, phase: Phase): PointFinding {
  return {
    ...rowOf(point, phase),
    verdict: 'not judged',
    reason: 'no-reading',
    message: point.feasible ? 'No reading.' : 'No reading: the point is not feasible at this bench.',
    warnings: [],
    working: [],
  };
}

/** One reading against its point. */
export function assessPoint(plan: Plan, point: PlanPoint, output: Output, reading: Reading): PointFinding {
  const warnings: Warning[] = [];
  const working: Step[] = [];
  const load = point.load?.resistance;
  if (load === undefined || point.expected === undefined) {
    return {
      ...rowOf(point, reading.phase),
      reading,
      verdict: 'not judged',
      reason: 'nothing-to-compare',
      message: 'The plan has no load or no expected value for this point.',
      warnings,
      working,
    };
  }
  if (!point.feasible) {
    warnings.push({
      code: 'not-feasible',
      message: 'The plan calls this point not feasible at this bench: the reading may be wrong or harmful.',
    });
  }
  const value = valueAs(point, reading.value, reading.quantity, point.reads, load);
  if (reading.quantity !== point.reads) {
    warnings.push({
      code: 'reading-converted',
      message: `${quantityText(reading.value, reading.quantity)} was converted to ${roundedText(value, point.reads)} at ${formatQuantity(load, 'ohm')}; the error of the load enters.`,
    });
  }
  const ideal = { ...reading, value: idealValue(point, reading.quantity, reading.value) };
  const power = convertQuantity(ideal.value, { from: reading.quantity, to: 'power', load });
  const common = { ...rowOf(point, reading.phase), reading, value, power };

  const implausible = implausibleText(point, power, value);
  if (implausible !== undefined) {
    return { ...common, verdict: 'not judged', reason: 'not-plausible', message: implausible, warnings, working };
  }
  if (point.range !== undefined && reading.quantity === point.reads && value > point.range.maximum) {
    warnings.push({
      code: 'reading-beyond-range',
      message: `The reading is above the range of ${quantityText(point.range.maximum, point.reads)} that the plan chose.`,
    });
  }
  const display =
    reading.display === undefined ? undefined : assessDisplay(reading.display, ideal, output.displayTolerance, load);
  const judged = { ...common, ...(display === undefined ? {} : { display: display.finding }) };
  working.push(...(display?.working ?? []));

  const { limits, nominal } = point;
  if (limits.lower === undefined && limits.upper === undefined) {
    return {
      ...judged,
      verdict: 'not judged',
      reason: 'no-limits',
      message: 'No limit applies to this point.',
      warnings,
      working,
    };
  }
  const placed = nominal === undefined || !contains(limits, nominal) ? undefined : margin(limits, nominal, value);
  const { expanded, conformance, ...accepted } = measuredReading(plan, output, point, reading, value);
  const { verdict, reason } = judge({
    rule: plan.options.decisionRule,
    limits,
    ...accepted,
    value,
    isClose: placed !== undefined && Math.abs(placed.margin) >= plan.options.closeToLimit,
  });
  const simple = contains(limits, value) ? 'pass' : 'fail';
  if (simple === 'fail') {
    const slip = keyingSlip(limits, value);
    if (slip !== undefined) {
      warnings.push({
        code: 'keying-suspected',
        message: `${slip.text} would lie inside the limits: check the decimal point and the unit that were written down.`,
      });
    }
  }
  const shown = reading.quantity === point.reads ? quantityText(value, point.reads) : roundedText(value, point.reads);
  return {
    ...judged,
    ...(placed === undefined ? {} : { margin: placed.margin }),
    ...(expanded === undefined ? {} : { expanded }),
    ...(conformance === undefined ? {} : { conformance }),
    ...(verdict === simple ? {} : { simpleVerdict: simple }),
    warnings,
    working: [...working, ...(placed?.working ?? [])],
    verdict,
    reason,
    message: `${shown} against ${bandText(limits, point.reads)}: ${reasonText(reason, {
      isLow: value < (nominal ?? Number.NEGATIVE_INFINITY),
      accepted: acceptedText(accepted.acceptance, quantityUnits[point.reads]),
      conformance,
    })}.`,
  };

  function keyingSlip(band: PlanPoint['limits'], shifted: number): { text: string } | undefined {
    for (const factor of [10, 0.1, 100, 0.01, 1000, 0.001]) {
      if (contains(band, shifted * factor)) return { text: roundedText(shifted * factor, point.reads) };
    }
    return undefined;
  }
}

function rowOf(
  point: PlanPoint,
  phase: Phase,
): Pick<PointFinding, 'point' | 'number' | 'phase' | 'quantity' | 'limits' | 'nominal'> {
  return {
    point: point.id,
    number: point.number,
    phase,
    quantity: point.reads,
    limits: point.limits,
    ...(point.nominal === undefined ? {} : { nominal: point.nominal }),
  };
}

/** Text when a reading cannot be right: nothing is judged from it, and nothing passes with it. */
function implausibleText(point: PlanPoint, power: number, value: number): string | undefined {
  const expected = point.expected?.power ?? 0;
  const setting = typeof point.setting === 'number' ? point.setting : 0;
  const reference = Math.max(expected, setting);
  if (!(power >= implausiblePowerRatio * reference)) return undefined;
  const ratio = power / reference;
  return (
    `${roundedText(value, point.reads)} implies ${roundedText(power, 'power')}, ${ratio < 1e4 ? ratio.toFixed(0) : 'over 10000'} times ` +
    `the ${reference === setting ? 'setting' : 'expected power'}: a keying error. Nothing is judged from it. ` +
    'Read again; if it repeats, take the generator out of use.'
  );
}
