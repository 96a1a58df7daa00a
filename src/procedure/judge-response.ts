import { expandedUncertainty, rectangularInput } from '../uncertainty/index.js';
import { halfWidthUncertaintyFormula, tripExpandedFormula } from '../working/formulas/monitor.js';
import { step } from '../working/index.js';
import { judgeMeasured, type MeasuredVerdict } from './judge-measured.js';
import type { Plan } from './plan.js';

/** A response time of the monitor against the longest that is permitted, by the rule of the plan. */
export function judgeResponse(plan: Plan, time: number, permitted: number): MeasuredVerdict {
  const a = plan.bench.timing?.limits;
  const measured = { limits: { upper: permitted }, nominal: 0, value: time, unit: 's' } as const;
  if (a === undefined) return judgeMeasured(plan, measured);
  const { standardUncertainty: u } = rectangularInput({ value: time, halfWidth: a });
  const expanded = expandedUncertainty({ standardUncertainty: u });
  const { coverageFactor: k, expandedUncertainty: U } = expanded;
  const found = judgeMeasured(plan, { ...measured, expanded });
  const naming = { unit: 's' } as const;
  return {
    ...found,
    working: [
      step(halfWidthUncertaintyFormula, 'standard uncertainty of a response time', { a }, u, naming),
      step(tripExpandedFormula, 'expanded uncertainty of a response time', { k, u }, U, naming),
      ...found.working,
    ],
  };
}
