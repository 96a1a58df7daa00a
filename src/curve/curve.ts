import type { Warning } from '../checks/index.js';
import type { Step } from '../working/index.js';

/** A point of a curve of power against load. */
export interface CurvePoint {
  /** Load, in ohms, greater than 0. */
  readonly load: number;
  /** Power in that load, in watts, greater than 0. */
  readonly power: number;
}

/** The three regimes of a generator's regulation. */
export type Regime = 'constant-current' | 'constant-power' | 'constant-voltage';

/** The part of a curve that answers for a load. */
export interface Stretch {
  /** Position of the stretch in the curve, from 0 at the lowest loads. */
  readonly index: number;
  /** Its lowest load, in ohms; 0 where a regime has no lower end. */
  readonly from: number;
  /** Its highest load, in ohms; absent where a regime has no upper end. */
  readonly to?: number;
  /**
   * What is constant in it. `between`: none of the three. `outside`: the load lies beyond the published
   * points, and this end stretch was continued as asked by name.
   */
  readonly kind: Regime | 'between' | 'outside';
}

/** What a curve says at a load, with the steps that lead there: the result of `explainReading`. */
export interface CurveReading {
  /** Load, in ohms. */
  readonly load: number;
  /** Power, in watts. */
  readonly power: number;
  /** Rms current, in amperes. */
  readonly current: number;
  /** Rms voltage, in volts. */
  readonly voltage: number;
  /** Which part of the curve answered. */
  readonly stretch: Stretch;
  /** The steps from the published values to the three numbers. */
  readonly working: readonly Step[];
  /** Matters that are not fatal. */
  readonly warnings: readonly Warning[];
}

/** Of a reading: what the kind of curve decides. */
export type Explained = Pick<CurveReading, 'stretch' | 'working' | 'warnings'>;

/** Loads from one to another, both included; a single load has both ends equal. */
export interface LoadInterval {
  /** Lowest load, in ohms; 0 where there is no lower end. */
  readonly from: number;
  /** Highest load, in ohms; absent where there is no upper end. */
  readonly to?: number;
}

/** Power against load, however it is described: the functions that read it. */
export interface Curve {
  /** Power at a load in ohms, in watts. */
  readonly powerAt: (load: number) => number;
  /** Rms current at a load in ohms, in amperes. */
  readonly currentAt: (load: number) => number;
  /** Rms voltage at a load in ohms, in volts. */
  readonly voltageAt: (load: number) => number;
  /**
   * Power at each of many loads, in watts. All loads are checked before the first power is written;
   * an error names the first bad row. `out`, of the same length, is filled and returned when given.
   */
  readonly powersAt: (loads: Float64Array, out?: Float64Array) => Float64Array;
  /** The largest power, in watts, and the lowest load in ohms at which it is reached. */
  readonly maximum: CurvePoint;
  /** All loads at which the curve has this power in watts, ascending; an interval where it is flat. */
  readonly loadsAt: (power: number) => readonly LoadInterval[];
}
