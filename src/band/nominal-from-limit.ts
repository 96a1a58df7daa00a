import { fail, requirePositive } from '../checks/index.js';
import {
  nominalFromLowerFormula,
  nominalFromLowerGreaterFormula,
  nominalFromLowerSumFormula,
  nominalFromUpperFormula,
  nominalFromUpperGreaterFormula,
  nominalFromUpperSumFormula,
} from '../working/formulas/band.js';
import { type Step, type StepNaming, step } from '../working/index.js';
import type { Tolerance } from './tolerance.js';
import { type Side, sideOf } from './tolerance-side.js';

/** The nominal whose limit on one side is `x`: a tolerance read backwards. */
export function nominalFromLimit(x: number, tolerance: Tolerance, side: Side, label: string, naming: StepNaming): Step {
  const isBelow = side === 'below';
  const r = sideOf(tolerance.relative, side) ?? 0;
  const a = sideOf(tolerance.absolute, side);
  const factor = isBelow ? 1 - r : 1 + r;
  if (factor === 0) {
    fail(
      'out-of-range',
      'hypothesis.tolerance.relative',
      r,
      'must be below 1: every nominal has then a lower limit of 0',
    );
  }
  const inputs = { x, r, a: a ?? 0 };
  const shifted = isBelow ? x + inputs.a : x - inputs.a;
  const made =
    a === undefined
      ? step(isBelow ? nominalFromLowerFormula : nominalFromUpperFormula, label, { x, r }, x / factor, naming)
      : tolerance.combine === 'greater' && tolerance.relative !== undefined
        ? isBelow
          ? step(nominalFromLowerGreaterFormula, label, inputs, Math.max(x / factor, shifted), naming)
          : step(nominalFromUpperGreaterFormula, label, inputs, Math.min(x / factor, shifted), naming)
        : step(
            isBelow ? nominalFromLowerSumFormula : nominalFromUpperSumFormula,
            label,
            inputs,
            shifted / factor,
            naming,
          );
  requirePositive(made.value, 'nominal');
  return made;
}
