import type { Tolerance } from '../band/index.js';
import type { Quantity } from '../circuit/index.js';
import type { Interpolation, OutsideRule } from '../curve/index.js';
import type { LeakageArrangementId, LeakageLoading, LeakagePlace, StatedLeakageLimit } from '../leakage/index.js';
import type { Monitor } from '../monitor/index.js';
import type { RuleChoice } from './standard-rules.js';

/**
 * What the maker of a generator publishes, as far as a verification needs it.
 * All numbers in SI units; relative values as fractions.
 */
export interface Specification {
  readonly schema: 'esu-limits/specification';
  readonly version: 1;
  /** Free text, printed on every sheet: for an example, that it is invented. */
  readonly note?: string;
  /** Where these data were read: document, edition, page. */
  readonly source?: string;
  readonly generator: Generator;
  /** Rules of the standard that apply; none applies unless it is chosen here. */
  readonly rules?: readonly RuleChoice[];
  readonly outputs: readonly Output[];
  /** The return-electrode monitor. */
  readonly monitor?: MonitorSpecification;
  /** Measurements of HF leakage. */
  readonly leakage?: readonly LeakageTest[];
  /** Cautions of the maker, printed before the library's own. */
  readonly cautions?: readonly string[];
}

/** The unit under test. */
export interface Generator {
  readonly name: string;
  readonly identification?: string;
  readonly serialNumber?: string;
}

/** A setting: a number is watts on a scale in watts, a text is the name of a numbered or named level. */
export type Setting = number | string;

/** What the control of an output shows. */
export type SettingScale = WattScale | LevelScale;

/** A control in watts: the setting is the power that the output delivers into its rated load. */
export interface WattScale {
  readonly kind: 'watt';
  /** Lowest setting, in watts. */
  readonly minimum: number;
  /** Highest setting, in watts. */
  readonly maximum: number;
  /** Step of the control, in watts; chosen settings are whole steps. */
  readonly step?: number;
}

/** A control with numbered or named levels, and no wattage. */
export interface LevelScale {
  readonly kind: 'level';
  /** Names from the lowest to the highest level. */
  readonly levels: readonly string[];
}

/** One output in one mode. */
export interface Output {
  /** Short, unique in the sheet: part of every point's identifier. */
  readonly id: string;
  readonly name: string;
  readonly circuit: 'monopolar' | 'bipolar';
  /** How the load is connected, as the sheet words it. */
  readonly connection: string;
  readonly scale: SettingScale;
  /** Rated output power, in watts. */
  readonly ratedPower: number;
  /** Rated load, in ohms. */
  readonly ratedLoad: number;
  /** Crest factor of the waveform, peak over rms. */
  readonly crestFactor?: number;
  /** At which load the crest factor is stated. */
  readonly crestFactorAt?: 'rated load' | 'open circuit';
  /** Shape of the waveform: the crest factor follows from it where none is stated. */
  readonly waveform?: OutputWaveform;
  /** Stated maximum output voltage of the mode, in volts peak. */
  readonly maximumPeakVoltage?: number;
  /** Carrier frequency, in hertz. */
  readonly carrierFrequency?: number;
  /** Longest activation and shortest pause after it. */
  readonly duty?: Duty;
  /** Limits of the generator's own regulation, where the sheet gives these and no curve. */
  readonly regimes?: Regimes;
  /** Published power-against-load curves, one for each setting that the sheet shows. */
  readonly curves?: readonly PublishedCurve[];
  /**
   * What to expect at a setting that has no curve of its own.
   * `refuse` (default): nothing. `proportional`: the power of the next higher published setting,
   * scaled by the ratio of the settings at every load.
   */
  readonly otherSettings?: 'refuse' | 'proportional';
  /** Rows of a limit table that the maker publishes. */
  readonly rows?: readonly PublishedRow[];
  /** The maker's tolerance on the output. */
  readonly tolerance?: StatedTolerance;
  /** The maker's tolerance of the generator's own display against an instrument. */
  readonly displayTolerance?: StatedTolerance;
  /** Explicit test points: when given, no points are chosen automatically. */
  readonly points?: readonly TestPoint[];
  /** Settings to choose from in place of maximum, half and one low. */
  readonly settings?: readonly Setting[];
  /** Loads to choose in place of the rated load and the usual test loads, in ohms. */
  readonly loads?: readonly number[];
}

/** Shape of an output's waveform; its frequency is the carrier. */
export type OutputWaveform =
  | { readonly kind: 'sine' }
  | {
      readonly kind: 'gated-sine';
      /** Share of the time in which the gate is open, above 0 and at most 1. */
      readonly dutyCycle: number;
      /** Bursts a second, in hertz: with it a part of a half-cycle at the end counts. */
      readonly repetitionRate?: number;
    }
  | {
      readonly kind: 'damped-sine';
      /** Time in which the envelope falls to 1/e, in seconds. */
      readonly timeConstant: number;
      /** Bursts a second, in hertz. */
      readonly repetitionRate: number;
      /** What becomes of the rest of a burst when the next begins; `restarts` unless stated. */
      readonly rest?: 'restarts' | 'overlaps';
    };

/** Activation time and pause. */
export interface Duty {
  /** Longest activation, in seconds. */
  readonly on: number;
  /** Shortest pause after it, in seconds. */
  readonly off: number;
}

/** Limits of a generator's regulation at its highest setting. */
export interface Regimes {
  /** Highest rms current, in amperes. */
  readonly currentLimit?: number;
  /** Highest rms voltage, in volts. */
  readonly voltageLimit?: number;
}

/** Power against load at one setting, as published. */
export interface PublishedCurve {
  readonly setting: Setting;
  readonly points: readonly { readonly load: number; readonly power: number }[];
  /** How to read between the points; `log-log` unless stated. */
  readonly interpolation?: Interpolation;
  /** What to do outside the points; `refuse` unless stated. */
  readonly outside?: OutsideRule;
}

/** One row of a published limit table. */
export interface PublishedRow {
  readonly setting: Setting;
  /** Load of the row, in ohms. */
  readonly load: number;
  /** Quantity of the limits. */
  readonly quantity: Quantity;
  /** Expected power of the row, in watts, where the table states it. */
  readonly power?: number;
  /** Lower limit, in the unit of the quantity; absent: unlimited. */
  readonly lower?: number;
  /** Upper limit, in the unit of the quantity; absent: unlimited. */
  readonly upper?: number;
}

/** A tolerance with the quantity in which it is stated. */
export interface StatedTolerance extends Tolerance {
  /** Quantity in which the tolerance holds. */
  readonly in: Quantity;
}

/** A test point that the sheet or the user asks for. */
export interface TestPoint {
  readonly setting: Setting;
  /** Load, in ohms. */
  readonly load: number;
  /** Expected power, in watts, where it is stated. */
  readonly power?: number;
  /** Tolerance of this point, in place of the output's. */
  readonly tolerance?: StatedTolerance;
}

/** One measurement of HF leakage. */
export interface LeakageTest {
  /** Short, unique in the sheet: the point is called `leakage/` and this. */
  readonly id: string;
  /** Identifier of the output that is activated. */
  readonly output: string;
  readonly setting: Setting;
  readonly arrangement: LeakageArrangementId;
  /** Where it is measured; there is no default, as the limits differ. */
  readonly measuredAt: LeakagePlace;
  /**
   * What is between the electrodes while the leakage is read, where the sheet asks for less than the arrangement; only of
   * an isolated or a bipolar output. Each electrode is measured by itself in any case.
   */
  readonly loading?: readonly LeakageLoading[];
  /** How the measuring resistor and the load are connected, as the sheet words it. */
  readonly connection: string;
  /** A limit in place of the one that is known for the arrangement. */
  readonly limit?: StatedLeakageLimit;
}

/** The return-electrode monitor: what its display must show, and where it must alarm. At least one of both. */
export interface MonitorSpecification {
  /** How the resistances are connected. */
  readonly connection: string;
  /** Resistance readings of its display. */
  readonly rows?: readonly MonitorRow[];
  /** Its thresholds: with a resistance box on the bench the plan says how to challenge them. */
  readonly model?: Monitor;
}

/** One resistance to set and the limits of what the display shows. */
export interface MonitorRow {
  /** Resistance to set, in ohms, or an open circuit. */
  readonly set: number | 'open';
  /** Lowest permitted display, in ohms; absent: unlimited. */
  readonly lower?: number;
  /** Highest permitted display, in ohms; absent: unlimited. */
  readonly upper?: number;
}
