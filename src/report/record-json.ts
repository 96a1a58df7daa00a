import type { VerificationRecord } from '../procedure/index.js';
import { stableJson } from './json/stable-json.js';

/**
 * A record as JSON text, the same bytes for the same record whatever the order of its members.
 *
 * @param record A record of `makeRecord`
 * @returns JSON, indented by two blanks, ended by a line break; `JSON.parse` gives the record back
 * @throws CalculationError `not-a-number` for a number that JSON cannot hold
 */
export function recordJson(record: VerificationRecord): string {
  return stableJson(record);
}
