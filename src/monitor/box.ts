import { fail, requireFraction, requireNonNegative } from '../checks/index.js';

/** How far a resistance of a box may be off, as its maker or its certificate states: the parts are added up. */
export interface BoxAccuracy {
  /** Part of the value, as a fraction. */
  readonly relative?: number;
  /** Fixed part, in ohms: contacts and leads of the box. */
  readonly absolute?: number;
}

/** A box from which single values are chosen. */
export interface SubstitutionBox {
  /** Its values, in ohms, rising. */
  readonly values: readonly number[];
  readonly accuracy: BoxAccuracy;
}

/** A decade: every multiple of its step up to its maximum. */
export interface DecadeBox {
  /** Smallest step, in ohms. */
  readonly step: number;
  /** Largest value, in ohms. */
  readonly maximum: number;
  /** Smallest value, in ohms; 0 unless stated. */
  readonly minimum?: number;
  readonly accuracy: BoxAccuracy;
}

/** What sets resistances on the bench. */
export type ResistanceBox = SubstitutionBox | DecadeBox;

/** An accuracy of which something is stated. */
export function checkAccuracy(accuracy: BoxAccuracy | undefined, path: string): void {
  const { relative, absolute } = accuracy ?? {};
  if (relative === undefined && absolute === undefined) {
    fail('missing-member', `${path}.relative`, relative, 'must be given, or the absolute part; 0 is taken as exact');
  }
  if (relative !== undefined && requireFraction(relative, `${path}.relative`) === 1) {
    fail('out-of-range', `${path}.relative`, relative, 'must be less than 1: such a box says nothing');
  }
  if (absolute !== undefined) requireNonNegative(absolute, `${path}.absolute`);
}

/** How far a value may be off, in ohms. */
export function offBy({ relative = 0, absolute = 0 }: BoxAccuracy, value: number): number {
  return relative * value + absolute;
}
