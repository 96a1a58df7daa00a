import { assessReadings } from './assess-readings.js';
import { canonical } from './canonical.js';
import type { Plan } from './plan.js';
import { planVerification } from './plan-verification.js';
import type { Readings } from './readings.js';
import type { Signature, VerificationRecord } from './record.js';

/**
 * Binds a plan, its readings and the findings into one document that can be kept and recomputed.
 *
 * @param plan A plan of `planVerification`
 * @param readings What was read
 * @param signature Who answers for it; dates are text, because the library has no clock
 * @returns The record, plain JSON
 * @throws CalculationError as `assessReadings`
 */
export function makeRecord(plan: Plan, readings: Readings, signature: Signature = {}): VerificationRecord {
  const kept = canonical(readings);
  return {
    schema: 'esu-limits/record',
    version: 1,
    plan,
    readings: kept,
    findings: assessReadings(plan, kept),
    signature: canonical(signature),
  };
}

/** What a recomputation of a record found. */
export interface RecordCheck {
  /** True when plan and findings come out the same. */
  readonly same: boolean;
  /** Places that differ, such as `findings.points[3].margin`; at most 100. */
  readonly differences: readonly string[];
}

/**
 * Recomputes a record from the specification, the bench and the readings that it holds.
 *
 * @param record A record, as read back
 * @returns Whether plan and findings come out the same, and where not
 * @throws CalculationError as `planVerification` and `assessReadings`
 */
export function recomputeRecord(record: VerificationRecord): RecordCheck {
  const { specification, bench, options } = record.plan;
  const plan = planVerification(specification, bench, options);
  const findings = assessReadings(plan, record.readings);
  const differences: string[] = [];
  compare({ plan, findings }, { plan: record.plan, findings: record.findings }, '', differences);
  return { same: differences.length === 0, differences };
}

function compare(a: unknown, b: unknown, path: string, differences: string[]): void {
  if (differences.length >= 100 || Object.is(a, b)) return;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) {
    differences.push(path);
    return;
  }
  const left = a as Record<string, unknown>;
  const right = b as Record<string, unknown>;
  for (const key of new Set([...Object.keys(left), ...Object.keys(right)])) {
    const step = Array.isArray(a) ? `[${key}]` : path === '' ? key : `.${key}`;
    compare(left[key], right[key], path + step, differences);
  }
}
