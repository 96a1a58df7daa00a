import { fail, requirePositive } from '../checks/index.js';
import {
  nominalFromLowerAbsoluteFormula,
  nominalFromLowerFormula,
  nominalFromLowerGreaterFormula,
  nominalFromLowerSumFormula,
  nominalFromUpperAbsoluteFormula,
  nominalFromUpperFormula,
  nominalFromUpperGreaterFormula,
  nominalFromUpperSumFormula,
} from '../working/formulas/band.js';
import { type Formula, type Step, type StepNaming, step } from '../working/index.js';
import type { Tolerance } from './tolerance.js';
import { partsOf, type Side, type SideKind, type SideRule } from './tolerance-side.js';

const formulas: Readonly<Record<Side, Readonly<Record<SideKind, Formula>>>> = {
  below: {
    relative: nominalFromLowerFormula,
    absolute: nominalFromLowerAbsoluteFormula,
    sum: nominalFromLowerSumFormula,
    greater: nominalFromLowerGreaterFormula,
  },
  above: {
    relative: nominalFromUpperFormula,
    absolute: nominalFromUpperAbsoluteFormula,
    sum: nominalFromUpperSumFormula,
    greater: nominalFromUpperGreaterFormula,
  },
};

/** The nominal whose limit on one side is `x`: a tolerance read backwards. */
export function nominalFromLimit(
  x: number,
  tolerance: Tolerance,
  side: Side,
  { kind, factor, offset }: SideRule,
  label: string,
  naming: StepNaming,
): Step {
  if (factor === 0) {
    fail(
      'out-of-range',
      'hypothesis.tolerance.relative',
      1,
      'must be below 1: the lower limit of any nominal is then 0',
    );
  }
  const choose = side === 'below' ? Math.max : Math.min;
  const value = kind === 'greater' ? choose(x / factor, x - offset) : (x - offset) / factor;
  requirePositive(value, 'nominal');
  return step(formulas[side][kind], label, { x, ...partsOf(tolerance, side) }, value, naming);
}
