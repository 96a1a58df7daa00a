import type { CalculationErrorCode } from './codes.js';

/** One thing that is wrong: what, where, what was received and what would be right. */
export interface Fault {
  /** Code from the list, for programs. */
  readonly code: CalculationErrorCode;
  /** Where: the argument or the member, such as `load` or `outputs[0].curves[1].points[3].power`. */
  readonly path: string;
  /** What was received, as short text. */
  readonly received: string;
  /** What would be right, as a phrase that follows "must be" or stands alone. */
  readonly requirement: string;
  /** A suggestion, where one can be made. */
  readonly hint?: string;
}

/**
 * The one error class of the library: bad input, or a result that no number can hold.
 * `faults` lists everything that is wrong; the members of the error repeat the first of them.
 */
export class CalculationError extends RangeError implements Fault {
  override readonly name = 'CalculationError';
  readonly code: CalculationErrorCode;
  readonly path: string;
  readonly received: string;
  readonly requirement: string;
  readonly hint?: string;
  readonly faults: readonly Fault[];

  constructor(fault: Fault, further: readonly Fault[] = []) {
    const faults = [fault, ...further];
    super(faults.map(faultText).join('\n'));
    this.code = fault.code;
    this.path = fault.path;
    this.received = fault.received;
    this.requirement = fault.requirement;
    if (fault.hint !== undefined) this.hint = fault.hint;
    this.faults = faults;
  }
}

/** A fault as one line of text: `load: received -50, must be greater than 0 ohm (not-positive)`. */
export function faultText(fault: Fault): string {
  const hint = fault.hint === undefined ? '' : ` ${fault.hint}`;
  return `${fault.path || 'input'}: received ${fault.received}; ${fault.requirement}. [${fault.code}]${hint}`;
}

/** A value as short text for an error: never throws, never longer than about 60 characters. */
export function describe(value: unknown): string {
  if (typeof value === 'string') return JSON.stringify(value.length > 50 ? `${value.slice(0, 50)}…` : value);
  if (typeof value === 'number') return Object.is(value, -0) ? '-0' : String(value);
  if (value === null || value === undefined || typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return `an array of ${value.length}`;
  if (ArrayBuffer.isView(value)) return 'a typed array';
  return typeof value === 'object' ? 'an object' : `a ${typeof value}`;
}
