import { fail, requireChoice, requirePositive } from '../checks/index.js';
import { type Quantity, requireQuantity } from '../circuit/index.js';
import { checkTolerance } from './check-tolerance.js';
import { convertColumn } from './convert-column.js';
import { type LimitRule, requireLowerLimit } from './derive-limits.js';
import { type GridDirection, gridOf, roundOnGrid } from './grid.js';
import type { Tolerance } from './tolerance.js';
import { limitOf, type Side, sideOf } from './tolerance-side.js';

/** Expected outputs at loads, a row each, with one rule for all limits. */
export interface LimitColumnsInput extends LimitRule {
  /** Expected power of each row, in watts, from 1e-150 to 1e150. */
  readonly power: Float64Array;
  /** Load of each row, in ohms, from 1e-150 to 1e150; as many as there are powers. */
  readonly load: Float64Array;
}

/** Expected values and limits, a row each, in the quantity that is read; a side that is unlimited has no column. */
export interface LimitColumns {
  readonly expected: Float64Array;
  readonly lower?: Float64Array;
  readonly upper?: Float64Array;
}

/** Between these a product or a quotient of two values stays a number with all its digits. */
const smallest = 1e-150;
const largest = 1e150;

/**
 * The limits of `deriveLimits` for many rows at once, the same to the last bit, without working.
 *
 * @param input Columns of expected power and load, with tolerance, quantity that is read and resolution
 * @param out Columns to write into, of the same length, that overlap no other column; new ones unless given.
 * After an error that a tolerance or a rounding causes their content is of no use; bad rows are found before any is
 * written
 * @returns Expected values and limits, in the quantity that is read
 * @throws CalculationError as `deriveLimits`, naming the first bad row (`power[123]`); `wrong-type`, `wrong-count`,
 * `out-of-range` (a value beyond 1e±150, or columns that overlap)
 * @source Ohm's law and Joule's law; the tolerance is the caller's
 * @accuracy As `deriveLimits`
 * @example
 * ```ts
 * import { deriveLimitsColumns } from 'esu-limits';
 * const power = Float64Array.of(120, 60);
 * const load = Float64Array.of(500, 500);
 * const { lower, upper } = deriveLimitsColumns({ power, load, tolerance: { relative: 0.2 }, resolution: 0.001 });
 * [...lower!, ...upper!]; // → [0.439, 0.31, 0.536, 0.379]
 * ```
 */
export function deriveLimitsColumns(input: LimitColumnsInput, out: Partial<LimitColumns> = {}): LimitColumns {
  const { power, load, tolerance, resolution, rounding = 'inward' } = input;
  const toleranceIn = requireQuantity(input.toleranceIn ?? 'power', 'toleranceIn');
  const reads = requireQuantity(input.reads ?? 'current', 'reads');
  checkTolerance(tolerance);
  const grid = resolution === undefined ? undefined : gridOf(resolution);
  const isNearest = requireChoice(rounding, 'rounding', ['inward', 'nearest']) === 'nearest';
  checkRows(power, load);

  const columns = [power, load];
  const columnOf = (given: Float64Array | undefined, path: string): Float64Array => {
    const column = given ?? new Float64Array(power.length);
    requireColumn(column, path, power.length);
    if (columns.some((other) => overlap(column, other))) fail('out-of-range', path, column, 'must overlap no column');
    columns.push(column);
    return column;
  };
  const expected = columnOf(out.expected, 'out.expected');
  convertColumn(expected, power, load, 1, 'power', reads);
  const limitColumn = (given: Float64Array | undefined, path: string, side: Side): Float64Array | undefined => {
    if (limitOf(1, tolerance, side) === undefined) return undefined;
    const column = columnOf(given, path);
    fillLimits(column, power, load, tolerance, side, toleranceIn, reads);
    return column;
  };
  const lower = limitColumn(out.lower, 'out.lower', 'below');
  const upper = limitColumn(out.upper, 'out.upper', 'above');
  if (grid !== undefined) {
    const round = (column: Float64Array | undefined, direction: GridDirection): void => {
      if (column === undefined) return;
      for (let i = 0; i < column.length; i++) column[i] = roundOnGrid(column[i] as number, grid, direction);
    };
    round(lower, isNearest ? 'nearest' : 'up');
    round(upper, isNearest ? 'nearest' : 'down');
    if (lower !== undefined && upper !== undefined && !isNearest) checkOrder(lower, upper);
  }
  return { expected, ...(lower === undefined ? {} : { lower }), ...(upper === undefined ? {} : { upper }) };
}

function requireColumn(column: Float64Array, path: string, length: number): void {
  if (!(column instanceof Float64Array)) fail('wrong-type', path, column, 'must be a Float64Array');
  if (column.length !== length) fail('wrong-count', path, column.length, `must have ${length} rows`);
}

function overlap(a: Float64Array, b: Float64Array): boolean {
  return (
    a.buffer === b.buffer && a.byteOffset < b.byteOffset + b.byteLength && b.byteOffset < a.byteOffset + a.byteLength
  );
}

function checkRows(power: Float64Array, load: Float64Array): void {
  requireColumn(power, 'power', power.length);
  requireColumn(load, 'load', power.length);
  for (let i = 0; i < power.length; i++) {
    const p = power[i] as number;
    const r = load[i] as number;
    // One chain of comparisons lets every good row through: NaN fails it too.
    if (p >= smallest && p <= largest && r >= smallest && r <= largest) continue;
    for (const [value, path] of [
      [p, `power[${i}]`],
      [r, `load[${i}]`],
    ] as const) {
      requirePositive(value, path);
      if (value < smallest || value > largest) fail('out-of-range', path, value, 'must be from 1e-150 to 1e150');
    }
  }
}

function checkOrder(lower: Float64Array, upper: Float64Array): void {
  for (let i = 0; i < lower.length; i++) {
    if ((lower[i] as number) > (upper[i] as number)) {
      fail('band-empty', `power[${i}]`, lower[i], 'no step of the resolution lies between the limits of this row');
    }
  }
}

function fillLimits(
  column: Float64Array,
  power: Float64Array,
  load: Float64Array,
  tolerance: Tolerance,
  side: Side,
  toleranceIn: Quantity,
  reads: Quantity,
): void {
  const relative = sideOf(tolerance.relative, side);
  const { floor } = tolerance;
  if (relative !== undefined && sideOf(tolerance.absolute, side) === undefined && floor === undefined) {
    const factor = side === 'below' ? 1 - relative : 1 + relative;
    if (toleranceIn !== 'power') convertColumn(column, power, load, 1, 'power', toleranceIn);
    convertColumn(column, toleranceIn === 'power' ? power : column, load, factor, toleranceIn, reads);
    return;
  }
  convertColumn(column, power, load, 1, 'power', toleranceIn);
  for (let i = 0; i < column.length; i++) {
    const nominal = column[i] as number;
    let limit = limitOf(nominal, tolerance, side) as number;
    if (floor !== undefined) {
      if (nominal < floor) {
        fail('out-of-range', `power[${i}]`, power[i], `must not lie below the floor, ${floor}, in ${toleranceIn}`);
      }
      if (side === 'below' && limit < floor) limit = floor;
    }
    if (side === 'below') requireLowerLimit(limit, `power[${i}]`);
    column[i] = limit;
  }
  convertColumn(column, column, load, 1, toleranceIn, reads);
}
