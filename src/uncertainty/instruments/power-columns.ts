import { fail, requireFinite } from '../../checks/index.js';
import { requireDegrees } from '../require-uncertainty.js';
import type { DegreesOfFreedom } from '../uncertain-input.js';

/** A measured quantity, a row each, with the standard uncertainty of each row. */
export interface UncertainColumn {
  /** Values, in SI units: from 1e-50 to 1e50. */
  readonly value: Float64Array;
  /** Standard uncertainties, in the same unit: 0, or from 1e-50 to 1e50. */
  readonly standardUncertainty: Float64Array;
  /** Degrees of freedom, 1 or more: of all rows, or a column, in which Infinity stands for `infinite` (the default). */
  readonly degreesOfFreedom?: DegreesOfFreedom | Float64Array;
}

/** What powers were measured by: I²R, V²/R, or V·I of a resistive load. Exactly two of the three are given. */
export interface PowerColumnsInput {
  /** Rms current, in amperes. */
  readonly current?: UncertainColumn;
  /** Rms voltage, in volts. */
  readonly voltage?: UncertainColumn;
  /** Load, in ohms. */
  readonly load?: UncertainColumn;
}

/** Powers with their uncertainty, a row each. */
export interface PowerColumns {
  /** Power, in watts. */
  readonly value: Float64Array;
  /** Combined standard uncertainty, in watts. */
  readonly standardUncertainty: Float64Array;
  /** Effective degrees of freedom; Infinity where they are infinite, or where there is no uncertainty. */
  readonly degreesOfFreedom: Float64Array;
}

/**
 * First-order uncertainty of many measured powers at once: what `propagate` gives for P = I²R, V²/R or V·I, without the
 * budget of each row.
 *
 * The two quantities are independent of each other, within a row.
 *
 * @param input Two of current, voltage and load, with uncertainties, in columns of one length
 * @param out Columns to write into, of the same length, that are none of the inputs; new ones unless given. After an
 * error their content is of no use
 * @returns Powers, standard uncertainties, effective degrees of freedom
 * @throws CalculationError `wrong-count` (not two quantities; lengths), `wrong-type`, `out-of-range`, `not-a-number`,
 * naming the first bad row: `load.value[123]`
 * @source JCGM 100:2008, 5.1.2 (10) and 5.1.6; G.4.1 (G.2b)
 * @accuracy 1e-15 relative, but for the rounding of the inputs
 * @example
 * ```ts
 * import { powerColumns } from 'esu-limits/uncertainty';
 * const current = { value: Float64Array.of(0.5, 1), standardUncertainty: Float64Array.of(0.005, 0.01), degreesOfFreedom: 9 };
 * const load = { value: Float64Array.of(400, 100), standardUncertainty: Float64Array.of(0, 1) };
 * const { value, standardUncertainty, degreesOfFreedom } = powerColumns({ current, load });
 * [...value]; // → [100, 100]
 * [...standardUncertainty].map((u) => u.toFixed(4)); // → ["2.0000", "2.2361"]
 * [...degreesOfFreedom].map((degrees) => degrees.toFixed(2)); // → ["9.00", "14.06"]
 * ```
 */
export function powerColumns(input: PowerColumnsInput, out?: PowerColumns): PowerColumns {
  const { current, voltage, load } = input;
  const given = { current, voltage, load };
  const names = (['voltage', 'current', 'load'] as const).filter((name) => given[name] !== undefined);
  const [first, second] = names;
  if (first === undefined || second === undefined || names.length > 2) {
    return fail('wrong-count', 'input', names.join(', '), 'must hold two of current, voltage and load');
  }
  const n = given[first]?.value?.length ?? 0;
  const a = checkedColumn(given[first] as UncertainColumn, first, n);
  const b = checkedColumn(given[second] as UncertainColumn, second, n);
  const used = [a.value, a.u, a.degrees, b.value, b.u, b.degrees];
  const target = (name: keyof PowerColumns): Float64Array => {
    const column = columnOf(out?.[name] ?? new Float64Array(n), `out.${name}`, n);
    if (used.includes(column)) fail('out-of-range', `out.${name}`, column, 'must be a column of its own');
    used.push(column);
    return column;
  };
  const value = target('value');
  const standardUncertainty = target('standardUncertainty');
  const degreesOfFreedom = target('degreesOfFreedom');
  // P = a²·b, a²/b or a·b: the relative contribution of a counts twice or once.
  const times = second === 'load' ? 2 : 1;
  const isQuotient = first === 'voltage' && second === 'load';
  for (let i = 0; i < n; i++) {
    const x = a.value[i] as number;
    const y = b.value[i] as number;
    const power = times === 1 ? x * y : isQuotient ? (x * x) / y : x * x * y;
    const p = (times * (a.u[i] as number)) / x;
    const q = (b.u[i] as number) / y;
    const total = p * p + q * q;
    value[i] = power;
    standardUncertainty[i] = power * Math.sqrt(total);
    // Of no uncertainty at all the share is taken as 0: the result is then infinite, as it is without finite degrees.
    const share = total > 0 ? (p * p) / total : 0;
    const rest = total > 0 ? (q * q) / total : 0;
    const da = a.degrees[a.stride * i] as number;
    const db = b.degrees[b.stride * i] as number;
    degreesOfFreedom[i] = 1 / ((share * share) / da + (rest * rest) / db);
  }
  return { value, standardUncertainty, degreesOfFreedom };
}

interface CheckedColumn {
  readonly value: Float64Array;
  readonly u: Float64Array;
  readonly degrees: Float64Array;
  /** 0 where one number of degrees counts for all rows. */
  readonly stride: 0 | 1;
}

/** One pass over a column that lets good rows through by one chain of comparisons, and names the first bad one. */
function checkedColumn(column: UncertainColumn, name: string, n: number): CheckedColumn {
  const value = columnOf(column.value, `${name}.value`, n);
  const u = columnOf(column.standardUncertainty, `${name}.standardUncertainty`, n);
  const { degreesOfFreedom: stated = 'infinite' } = column;
  const isColumn = stated instanceof Float64Array;
  const degrees = isColumn
    ? columnOf(stated, `${name}.degreesOfFreedom`, n)
    : Float64Array.of(numberOf(requireDegrees(stated, `${name}.degreesOfFreedom`)));
  const stride = isColumn ? 1 : 0;
  for (let i = 0; i < n; i++) {
    const x = value[i] as number;
    const s = u[i] as number;
    if (!(x >= 1e-50 && x <= 1e50)) refuse(`${name}.value[${i}]`, x, 'must be from 1e-50 to 1e50');
    if (!(s === 0 || (s >= 1e-50 && s <= 1e50))) {
      refuse(`${name}.standardUncertainty[${i}]`, s, 'must be 0, or from 1e-50 to 1e50');
    }
    if (!((degrees[stride * i] as number) >= 1)) {
      refuse(`${name}.degreesOfFreedom[${i}]`, degrees[stride * i] as number, 'must be 1 or more');
    }
  }
  return { value, u, degrees, stride };
}

function numberOf(degrees: DegreesOfFreedom): number {
  return degrees === 'infinite' ? Number.POSITIVE_INFINITY : degrees;
}

function refuse(path: string, received: number, requirement: string): never {
  requireFinite(received, path);
  return fail('out-of-range', path, received, requirement);
}

function columnOf(column: Float64Array, path: string, n: number): Float64Array {
  if (!(column instanceof Float64Array)) fail('wrong-type', path, column, 'must be a Float64Array');
  if (column.length !== n) fail('wrong-count', path, column.length, `must have as many rows as the first column, ${n}`);
  return column;
}
