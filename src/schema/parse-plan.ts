import type { Plan } from '../procedure/index.js';
import { planSchema } from './documents/plan-schema.js';
import { type ParseResult, unwrap } from './fault-list.js';
import { parseDocument } from './parse-document.js';

/**
 * Reads a plan, as it was written by this library: numbers in SI units or text with units in, numbers in SI units out.
 *
 * @param input Plain data, such as parsed JSON
 * @returns The document, copied
 * @throws CalculationError with all faults in `faults`, each with code, path, what was received and a hint
 */
export function parsePlan(input: unknown): Plan {
  return unwrap(safeParsePlan(input));
}

/**
 * Reads a plan, as it was written by this library, and says what is wrong where it cannot: the twin of `parsePlan`.
 *
 * @param input Plain data, such as parsed JSON
 * @returns `{ ok: true, value }`, or `{ ok: false, faults }` with all faults
 */
export function safeParsePlan(input: unknown): ParseResult<Plan> {
  return parseDocument<Plan>('plan', planSchema, input);
}
