import { type Band, contains } from '../band/index.js';
import type { Warning } from '../checks/index.js';
import { type ExpandedUncertainty, roundUncertainty } from '../uncertainty/index.js';
import type { Step } from '../working/index.js';
import type { JudgedMeasured, Verdict } from './findings.js';
import { acceptanceOf, acceptedText, judge, reasonText } from './judge.js';
import { conformanceOf } from './measured-reading.js';
import type { Plan } from './plan.js';
import { pointAcceptance } from './point-acceptance.js';
import { margin } from './steps.js';

/** A value that brings its own uncertainty. */
export interface MeasuredValue {
  /** At least one limit. */
  readonly limits: Band;
  readonly nominal: number;
  readonly value: number;
  readonly unit: 'ohm' | 's';
  /** Absent where nothing says how well the value is known: then only simple acceptance can judge. */
  readonly expanded?: ExpandedUncertainty;
}

/** The verdict with what goes beside it. */
export interface MeasuredVerdict {
  readonly judged: JudgedMeasured;
  /** The reason as the end of a sentence. */
  readonly because: string;
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/** Judges a value by the rule of the plan, its acceptance limits with its own uncertainty. */
export function judgeMeasured({ options }: Pick<Plan, 'options'>, measured: MeasuredValue): MeasuredVerdict {
  const { limits, nominal, value, unit, expanded } = measured;
  const rule = options.decisionRule;
  const accepts = pointAcceptance({
    rule,
    limits,
    nominal,
    unit,
    ...(expanded === undefined ? {} : { atLower: expanded, atUpper: expanded, ...stepOf(value, expanded) }),
  });
  const accepted = acceptanceOf(accepts);
  const conformance = expanded === undefined ? undefined : conformanceOf(limits, value, expanded);
  const placed = contains(limits, nominal) ? margin(limits, nominal, value) : undefined;
  const isClose = placed !== undefined && Math.abs(placed.margin) >= options.closeToLimit;
  const { verdict, reason } = judge({ rule, limits, ...accepted, value, isClose });
  const simple: Verdict = contains(limits, value) ? 'pass' : 'fail';
  return {
    judged: {
      verdict,
      reason,
      ...(placed === undefined ? {} : { margin: placed.margin }),
      ...accepted,
      ...(expanded === undefined ? {} : { expanded }),
      ...(conformance === undefined ? {} : { conformance }),
      ...(verdict === simple ? {} : { simpleVerdict: simple }),
    },
    because:
      // What is usual of an output that reads low says nothing of a resistance or a time.
      reason === 'below-lower'
        ? 'below the lower limit'
        : reasonText(reason, {
            isLow: value < nominal,
            accepted: acceptedText(accepted.acceptance, unit),
            conformance,
          }),
    warnings: accepts.warnings,
    working: [...accepts.working, ...(placed?.working ?? [])],
  };
}

/** The last place of the uncertainty to two figures: acceptance limits are rounded inward to it. */
function stepOf(value: number, { expandedUncertainty: U }: ExpandedUncertainty): { readonly resolution?: number } {
  if (!(U > 0)) return {};
  return { resolution: Number(`1e${-roundUncertainty(value, U).decimals}`) };
}
