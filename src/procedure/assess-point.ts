import { contains } from '../band/index.js';
import type { Warning } from '../checks/index.js';
import { convertQuantity } from '../circuit/index.js';
import { type Conformance, decisionWord } from '../decision/index.js';
import { formatQuantity } from '../units/index.js';
import type { Step } from '../working/index.js';
import { assessDisplay } from './assess-display.js';
import type { PointFinding, ReasonCode } from './findings.js';
import { measuredReading } from './measured-reading.js';
import type { Plan, PlanPoint } from './plan.js';
import { probabilityText } from './probability-text.js';
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
  const value = convertQuantity(reading.value, { from: reading.quantity, to: point.reads, load });
  if (reading.quantity !== point.reads) {
    warnings.push({
      code: 'reading-converted',
      message: `${quantityText(reading.value, reading.quantity)} was converted to ${roundedText(value, point.reads)} at ${formatQuantity(load, 'ohm')}; the error of the load enters.`,
    });
  }
  const power = convertQuantity(reading.value, { from: reading.quantity, to: 'power', load });
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
    reading.display === undefined ? undefined : assessDisplay(reading.display, reading, output.displayTolerance, load);
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
  const measured =
    reading.quantity === point.reads ? measuredReading(plan.bench, output, point, value, limits) : undefined;
  const { verdict, reason } = verdictOf(plan, point, reading, value, placed?.margin);
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
    ...measured,
    ...(verdict === simple ? {} : { simpleVerdict: simple }),
    warnings,
    working: [...working, ...(placed?.working ?? [])],
    verdict,
    reason,
    message: `${shown} against ${bandText(limits, point.reads)}: ${reasonText(reason, point, value, measured?.conformance)}.`,
  };

  function keyingSlip(band: PlanPoint['limits'], shifted: number): { text: string } | undefined {
    for (const factor of [10, 0.1, 100, 0.01, 1000, 0.001]) {
      if (contains(band, shifted * factor)) return { text: roundedText(shifted * factor, point.reads) };
    }
    return undefined;
  }
}

/** Verdict and reason by the rule of the plan. */
function verdictOf(
  plan: Plan,
  { limits, measurement, reads }: PlanPoint,
  reading: Reading,
  value: number,
  placed: number | undefined,
): Pick<PointFinding, 'verdict' | 'reason'> {
  const beyond = limits.lower !== undefined && value < limits.lower ? 'below-lower' : 'above-upper';
  const isInside = contains(limits, value);
  if (plan.options.decisionRule.kind === 'simple-acceptance') {
    if (!isInside) return { verdict: 'fail', reason: beyond };
    return { verdict: 'pass', reason: insideReason(plan, placed) };
  }
  // The acceptance limits stand on the uncertainty of the quantity that the plan reads, and on no other.
  if (measurement?.acceptance === undefined || reading.quantity !== reads)
    return { verdict: 'not judged', reason: 'no-decision' };
  const { acceptance, failing } = measurement;
  const word = decisionWord(value, {
    tolerance: limits,
    acceptance,
    ...(failing === undefined ? {} : { failing }),
  });
  switch (word) {
    case 'accept':
    case 'pass':
      return { verdict: 'pass', reason: isInside ? insideReason(plan, placed) : 'outside-in-guard-band' };
    case 'conditional-pass':
      return { verdict: 'pass', reason: 'conditional-pass' };
    case 'conditional-fail':
      return { verdict: 'fail', reason: 'conditional-fail' };
    default:
      return { verdict: 'fail', reason: isInside ? 'in-guard-band' : beyond };
  }
}

function insideReason(plan: Plan, placed: number | undefined): ReasonCode {
  return placed !== undefined && Math.abs(placed) >= plan.options.closeToLimit ? 'close-to-limit' : 'inside';
}

/** The reason as the end of a sentence. */
function reasonText(
  reason: ReasonCode,
  { limits, nominal, measurement, reads }: PlanPoint,
  value: number,
  conformance: Conformance | undefined,
): string {
  const accepted = measurement?.acceptance;
  const guarded = accepted ? `${bandText(accepted, reads)} is accepted` : 'no reading is accepted';
  const sure = conformance === undefined ? '' : `; probability that it conforms: ${probabilityText(conformance)}`;
  const isLow = limits.lower !== undefined && value < (nominal ?? Number.NEGATIVE_INFINITY);
  switch (reason) {
    case 'close-to-limit':
      return `inside, close to the ${isLow ? 'lower' : 'upper'} limit${sure}`;
    case 'below-lower':
      return 'below the lower limit. Check connections and neutral electrode before anything else';
    case 'above-upper':
      return 'above the upper limit';
    case 'in-guard-band':
      return `inside the limits, but too close for the uncertainty: ${guarded}${sure}`;
    case 'outside-in-guard-band':
      return `outside the limits, but by less than the guard band: not rejected${sure}`;
    case 'conditional-pass':
      return `inside the limits, but not by the guard band: conditional pass${sure}`;
    case 'conditional-fail':
      return `outside the limits, but not by the guard band: conditional fail${sure}`;
    case 'no-decision':
      return 'the decision rule of the plan cannot be applied: the uncertainty of this reading is not known';
    default:
      return 'inside';
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
