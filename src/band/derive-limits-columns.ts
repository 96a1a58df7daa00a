import { fail, requireChoice, requirePositive } from '../checks/index.js';
import { type Quantity, requireQuantity } from '../circuit/index.js';
import { checkTolerance } from './check-tolerance.js';
import { convertColumn } from './convert-column.js';
import { type LimitRule, requireLowerLimit } from './derive-limits.js';
import { type Grid, type GridDirection, gridOf, roundOnGrid } from './grid.js';
import { limitBy, type Side, type SideRule, sideRule } from './tolerance-side.js';

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

/**
 * The limits of `deriveLimits` for many rows at once, the same to the last bit, without working.
 *
 * @param input Columns of expected power and load, with tolerance, quantity that is read and resolution
 * @param out Columns to write into, of the same length, that overlap no other column; new ones unless given.
 * After an error their content is of no use
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
  const columnOf = columnSource(power, load);

  const expected = columnOf(out.expected, 'out.expected');
  expectedColumn(expected, power, load, reads);
  const limitColumn = (given: Float64Array | undefined, path: string, side: Side): Float64Array | undefined => {
    const rule = sideRule(tolerance, side);
    if (rule === undefined) return undefined;
    const column = columnOf(given, path);
    // The nominal of the tolerance: a column that is there, or one that is made on the way.
    let nominal = toleranceIn === 'power' ? power : expected;
    if (toleranceIn !== 'power' && toleranceIn !== reads) {
      convertColumn(column, power, load, unchanged, 'power', toleranceIn);
      nominal = column;
    }
    const isPlain = rule.kind !== 'greater' && tolerance.floor === undefined && !(side === 'below' && rule.offset < 0);
    if (isPlain) {
      convertColumn(column, nominal, load, rule, toleranceIn, reads);
    } else {
      checkedLimits(column, nominal, rule, side, tolerance.floor);
      convertColumn(column, column, load, unchanged, toleranceIn, reads);
    }
    if (grid !== undefined) roundColumn(column, grid, isNearest ? 'nearest' : side === 'below' ? 'up' : 'down');
    return column;
  };
  const lower = limitColumn(out.lower, 'out.lower', 'below');
  const upper = limitColumn(out.upper, 'out.upper', 'above');
  if (grid !== undefined && lower !== undefined && upper !== undefined) checkOrder(lower, upper);
  return { expected, ...(lower === undefined ? {} : { lower }), ...(upper === undefined ? {} : { upper }) };
}

const unchanged = { factor: 1, offset: 0 };

/** Gives columns to write into: as long as the inputs, and overlapping neither them nor each other. */
function columnSource(power: Float64Array, load: Float64Array) {
  const used: Float64Array[] = [];
  const accept = (column: Float64Array, path: string): Float64Array => {
    if (!(column instanceof Float64Array)) fail('wrong-type', path, column, 'must be a Float64Array');
    if (column.length !== power.length) {
      fail('wrong-count', path, column.length, `must have as many rows as power, ${power.length}`);
    }
    return column;
  };
  accept(power, 'power');
  accept(load, 'load');
  used.push(power, load);
  return (given: Float64Array | undefined, path: string): Float64Array => {
    const column = accept(given ?? new Float64Array(power.length), path);
    if (used.some((other) => overlap(column, other)))
      fail('out-of-range', path, column, 'must overlap no other column');
    used.push(column);
    return column;
  };
}

function overlap(a: Float64Array, b: Float64Array): boolean {
  return (
    a.buffer === b.buffer && a.byteOffset < b.byteOffset + b.byteLength && b.byteOffset < a.byteOffset + a.byteLength
  );
}

/** Whether a row is good, in one chain of comparisons: NaN fails it too. Products and quotients then keep all digits. */
function isGood(power: number, load: number): boolean {
  return power >= 1e-150 && power <= 1e150 && load >= 1e-150 && load <= 1e150;
}

/** The pass that checks every row; the expected value is made on the way, where it costs nothing. */
function expectedColumn(expected: Float64Array, power: Float64Array, load: Float64Array, reads: Quantity): void {
  const n = expected.length;
  let i = 0;
  if (reads === 'power') {
    for (; i < n && isGood(power[i] as number, load[i] as number); i++) expected[i] = power[i] as number;
  } else if (reads === 'current') {
    for (; i < n; i++) {
      const p = power[i] as number;
      const r = load[i] as number;
      if (!isGood(p, r)) break;
      expected[i] = Math.sqrt(p / r);
    }
  } else {
    for (; i < n; i++) {
      const p = power[i] as number;
      const r = load[i] as number;
      if (!isGood(p, r)) break;
      expected[i] = Math.sqrt(p * r);
    }
  }
  if (i < n) {
    requirePositive(power[i] as number, `power[${i}]`);
    requirePositive(load[i] as number, `load[${i}]`);
    fail('out-of-range', `power[${i}]`, power[i], `must, as the load of its row, ${load[i]}, be from 1e-150 to 1e150`);
  }
}

/** Limits of which a row can be at fault. */
function checkedLimits(
  column: Float64Array,
  nominal: Float64Array,
  rule: SideRule,
  side: Side,
  floor = Number.NEGATIVE_INFINITY,
): void {
  for (let i = 0; i < column.length; i++) {
    const N = nominal[i] as number;
    if (N < floor) fail('out-of-range', `power[${i}]`, N, `must not give a nominal below the floor, ${floor}`);
    let limit = limitBy(rule, N);
    if (side === 'below') {
      if (limit < floor) limit = floor;
      if (limit < 0) requireLowerLimit(limit, `power[${i}]`);
    }
    column[i] = limit;
  }
}

function roundColumn(column: Float64Array, grid: Grid, direction: GridDirection): void {
  for (let i = 0; i < column.length; i++) column[i] = roundOnGrid(column[i] as number, grid, direction);
}

function checkOrder(lower: Float64Array, upper: Float64Array): void {
  for (let i = 0; i < lower.length; i++) {
    if ((lower[i] as number) > (upper[i] as number)) {
      fail('band-empty', `power[${i}]`, lower[i], 'no step of the resolution lies between the limits of this row');
    }
  }
}
