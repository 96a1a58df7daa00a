/** A value and how far it may be off, to either side. */
export interface LimitStatement {
  readonly value: number;
  /** Half the width between the limits, in the unit of the value, 0 or more. */
  readonly halfWidth: number;
}
