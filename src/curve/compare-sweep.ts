import {
  atPath,
  CalculationError,
  type CalculationErrorCode,
  fail,
  requireFraction,
  requireNonNegative,
  requirePositive,
  type Warning,
} from '../checks/index.js';
import { explainConversion } from '../circuit/index.js';
import { sweepDeviationFormula } from '../working/formulas/curve.js';
import { type Step, step } from '../working/index.js';
import type { CurveReading, Stretch } from './curve.js';
import { explainReading } from './explain-reading.js';
import type { LoadCurve } from './load-curve.js';
import type { RegimeCurve } from './regime-curve.js';

/** A reading of a sweep: a load and one of power, current and voltage; none where nothing was read. */
export interface SweepReading {
  /** Load, in ohms, greater than 0. */
  readonly load: number;
  /** Power in the load, in watts, 0 or more. */
  readonly power?: number;
  /** Rms current, in amperes, 0 or more. */
  readonly current?: number;
  /** Rms voltage, in volts, 0 or more. */
  readonly voltage?: number;
}

/** How far a measured power may lie below and above the reference, as fractions; a number stands for both sides. */
export type SweepTolerance = number | { readonly below?: number; readonly above?: number };

/** One load of the comparison. */
export interface SweepRow {
  /** Position of the reading in the sweep, from 0. */
  readonly index: number;
  /** Load, in ohms. */
  readonly load: number;
  /** Power of the reference curve, in watts. */
  readonly reference: number;
  /** Measured power, in watts. */
  readonly measured: number;
  /** Measured over reference, less 1. */
  readonly deviation: number;
  /** Lowest power inside the tolerance, in watts; absent where there is no limit. */
  readonly lower?: number;
  /** Highest power inside the tolerance, in watts; absent where there is no limit. */
  readonly upper?: number;
  /** Whether the measured power lies inside the tolerance, limits included. */
  readonly inside: boolean;
  /** Which part of the reference curve answered. */
  readonly stretch: Stretch;
  readonly working: readonly Step[];
  readonly warnings: readonly Warning[];
}

/** A load that could not be compared. */
export interface SweepGap {
  /** Position of the reading in the sweep, from 0. */
  readonly index: number;
  /** Load, in ohms. */
  readonly load: number;
  /** Code from the list, for programs. */
  readonly code: CalculationErrorCode;
  /** Why, for a person. */
  readonly reason: string;
}

/** A measured sweep against a reference curve. */
export interface SweepComparison {
  /** The loads that were compared, in the order of the sweep. */
  readonly rows: readonly SweepRow[];
  /** The loads that were not. */
  readonly notCompared: readonly SweepGap[];
  /** The row that takes most of the tolerance of its side; absent when nothing was compared. */
  readonly worst?: SweepRow;
  /** `outside`: at least one row is. `incomplete`: none is, but not every load was compared. `inside`: all are. */
  readonly verdict: 'inside' | 'outside' | 'incomplete';
}

/**
 * Compares a measured sweep over loads with a reference curve, in power.
 *
 * @param reference Curve of `loadCurve` or `regimeCurve`
 * @param measured Readings in power (W), current (A rms) or voltage (V rms), each with its load in ohms; in any order
 * @param tolerance Fractions of the reference power: 0.2 is ±20 % in power
 * @returns Deviation at each load, the worst, the verdict, and the loads that could not be compared with the reason
 * @throws CalculationError `wrong-type`, `wrong-count`, `not-a-number`, `not-positive`, `negative`, `not-a-fraction`
 * @source Definition
 * @example
 * ```ts
 * import { compareSweep, regimeCurve } from 'esu-limits';
 * const reference = regimeCurve({ power: 100, currentLimit: 1, voltageLimit: 400 });
 * const { rows, verdict } = compareSweep(reference, [{ load: 50, power: 48 }, { load: 400, current: 0.45 }], 0.2);
 * rows.map(({ deviation }) => deviation); // → [-0.04, -0.19]
 * verdict; // → "inside"
 * ```
 */
export function compareSweep(
  reference: LoadCurve | RegimeCurve,
  measured: readonly SweepReading[],
  tolerance: SweepTolerance,
): SweepComparison {
  if (!Array.isArray(measured)) fail('wrong-type', 'measured', measured, 'must be an array of readings');
  if (measured.length === 0) fail('wrong-count', 'measured', measured, 'must be one reading or more');
  const { below, above } = typeof tolerance === 'number' ? { below: tolerance, above: tolerance } : (tolerance ?? {});
  if (below === undefined && above === undefined) {
    fail('wrong-count', 'tolerance', tolerance, 'must state below, above or both');
  }
  if (below !== undefined) requireFraction(below, 'tolerance.below');
  if (above !== undefined) requireFraction(above, 'tolerance.above');

  const rows: SweepRow[] = [];
  const notCompared: SweepGap[] = [];
  let worst: SweepRow | undefined;
  let worstShare = -1;
  measured.forEach((reading, index) => {
    atPath(`measured[${index}]`, () => {
      const load = requirePositive(reading?.load, 'load');
      const [quantity, second] = quantities.filter((name) => reading[name] !== undefined);
      if (second !== undefined) fail('wrong-count', second, reading[second], `must be absent beside ${quantity}`);
      const gap = (code: CalculationErrorCode, reason: string): void => {
        notCompared.push({ index, load, code, reason });
      };
      if (quantity === undefined) return gap('reading-missing', 'nothing was read at this load');
      requireNonNegative(reading[quantity]!, quantity);
      const label = 'measured power';
      const { value, working } = explainConversion(
        reading[quantity]!,
        { from: quantity, to: 'power', load },
        { label },
      );
      let read: CurveReading;
      try {
        read = explainReading(reference, load);
      } catch (error) {
        if (!(error instanceof CalculationError && error.code === 'load-outside-curve')) throw error;
        return gap(error.code, `the load ${error.requirement}`);
      }
      const { power, stretch, warnings } = read;
      const deviation = (value - power) / power;
      const lower = below === undefined ? undefined : power - power * below;
      const upper = above === undefined ? undefined : power + power * above;
      const row: SweepRow = {
        index,
        load,
        reference: power,
        measured: value,
        deviation,
        ...(lower === undefined ? {} : { lower }),
        ...(upper === undefined ? {} : { upper }),
        inside: !(value < lower!) && !(value > upper!),
        stretch,
        working: [
          ...read.working.slice(0, -2),
          ...working,
          step(sweepDeviationFormula, 'relative deviation', { P: value, P_ref: power }, deviation),
        ],
        warnings,
      };
      rows.push(row);
      const allowed = deviation < 0 ? below : above;
      // A side without a limit is never the worst while the other has one.
      const share = deviation === 0 || allowed === undefined ? 0 : Math.abs(deviation) / allowed;
      if (share > worstShare) [worst, worstShare] = [row, share];
    });
  });
  const isOutside = rows.some(({ inside }) => !inside);
  return {
    rows,
    notCompared,
    ...(worst === undefined ? {} : { worst }),
    verdict: isOutside ? 'outside' : notCompared.length > 0 ? 'incomplete' : 'inside',
  };
}

const quantities = ['power', 'current', 'voltage'] as const;
