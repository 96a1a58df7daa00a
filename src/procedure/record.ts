import type { Findings } from './findings.js';
import type { Plan } from './plan.js';
import type { Readings } from './readings.js';

/** Everything that was planned, read and found: another person, or another program, can recompute it. */
export interface VerificationRecord {
  readonly schema: 'esu-limits/record';
  readonly version: 1;
  readonly plan: Plan;
  readonly readings: Readings;
  readonly findings: Findings;
  readonly signature: Signature;
}

/** Who answers for the record. Dates are text: the library has no clock. */
export interface Signature {
  /** Reason of the verification. */
  readonly occasion?: 'acceptance' | 'periodic inspection' | 'after repair';
  readonly by?: string;
  readonly date?: string;
  readonly remarks?: string;
}
