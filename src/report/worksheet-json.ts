import type { Plan } from '../procedure/index.js';
import { stableJson } from './json/stable-json.js';

/**
 * A plan as JSON text, the same bytes for the same plan whatever the order of its members.
 *
 * @param plan A plan of `planVerification`
 * @returns JSON, indented by two blanks, ended by a line break; `JSON.parse` gives the plan back
 * @throws CalculationError `not-a-number` for a number that JSON cannot hold
 */
export function worksheetJson(plan: Plan): string {
  return stableJson(plan);
}
