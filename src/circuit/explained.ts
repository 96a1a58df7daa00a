import { type Formula, step } from '../working/index.js';
import type { ExplainedValue } from './explain-conversion.js';

/** A value that one formula gives, with its step. */
export function explained<F extends Formula>(
  formula: F,
  label: string,
  inputs: Readonly<Record<keyof F['inputs'] & string, number>>,
  value: number,
): ExplainedValue {
  return { value, working: [step(formula, label, inputs, value)] };
}
