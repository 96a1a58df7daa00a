import { requireFinite, requirePositive } from '../../checks/index.js';
import { type InputNaming, inputOf, type UncertainInput } from '../uncertain-input.js';

/**
 * A value that a display shows in steps: rectangular over one step, u = step/√12.
 *
 * @param statement Value as shown, and one step of the last digit
 * @param naming Description and unit, for the budget
 * @returns The input
 * @throws CalculationError `not-a-number`, `not-positive`
 * @source JCGM 100:2008, F.2.2.1
 * @example
 * ```ts
 * import { resolutionInput } from 'esu-limits/uncertainty';
 * resolutionInput({ value: 0.75, resolution: 0.012 }).standardUncertainty; // → 0.0034641016151377548
 * ```
 */
export function resolutionInput(
  { value, resolution }: { readonly value: number; readonly resolution: number },
  naming?: InputNaming,
): UncertainInput {
  requireFinite(value, 'value');
  requirePositive(resolution, 'resolution');
  const halfWidth = resolution / 2;
  return inputOf(value, halfWidth / Math.sqrt(3), { kind: 'rectangular', halfWidth }, naming);
}
