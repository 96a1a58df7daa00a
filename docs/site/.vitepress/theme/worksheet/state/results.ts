import { CalculationError, type Fault } from 'esu-limits';
import { assessReadings, type Bench, type Findings, makeRecord, type Plan, planVerification, type Readings, type Signature, type Specification, type VerificationRecord } from 'esu-limits/procedure';
import type { TypedSignature } from './entries.js';

/** A value, or why there is none. */
export interface Outcome<T> {
  readonly value?: T;
  readonly faults: readonly Fault[];
}

/** The plan of a specification and a bench. */
export function planOf(specification: Specification | undefined, bench: Bench | undefined): Outcome<Plan> {
  if (specification === undefined || bench === undefined) return { faults: [] };
  return attempt(() => planVerification(specification, bench));
}

/** The findings of a plan and readings. */
export function findingsOf(plan: Plan | undefined, readings: Readings): Outcome<Findings> {
  return plan === undefined ? { faults: [] } : attempt(() => assessReadings(plan, readings));
}

/** The record of a plan, readings and a signature. */
export function recordOf(
  plan: Plan | undefined,
  readings: Readings,
  signature: TypedSignature,
): Outcome<VerificationRecord> {
  return plan === undefined ? { faults: [] } : attempt(() => makeRecord(plan, readings, signatureOf(signature)));
}

function signatureOf({ occasion, by, date, remarks }: TypedSignature): Signature {
  return {
    ...(occasion === '' ? {} : { occasion }),
    ...(by.trim() === '' ? {} : { by }),
    ...(date.trim() === '' ? {} : { date }),
    ...(remarks.trim() === '' ? {} : { remarks }),
  };
}

/** Any other error than the library's own is a defect, and is not hidden. */
function attempt<T>(work: () => T): Outcome<T> {
  try {
    return { value: work(), faults: [] };
  } catch (error) {
    if (error instanceof CalculationError) return { faults: error.faults };
    throw error;
  }
}
