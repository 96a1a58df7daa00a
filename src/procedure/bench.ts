import type { Quantity } from '../circuit/index.js';
import type { ResistanceBox, SeriesResistance } from '../monitor/index.js';
import type { AccuracyStatement } from '../uncertainty/index.js';
import type { PlanDecisionRule } from './decision-rule.js';

/** What stands on the bench: instrument, loads, leads. All numbers in SI units. */
export interface Bench {
  readonly schema: 'esu-limits/bench';
  readonly version: 1;
  /** Free text, printed on every sheet: for an example, that it is invented. */
  readonly note?: string;
  /** Name of the workshop or the bench. */
  readonly name: string;
  readonly instrument: Instrument;
  readonly loads: readonly BenchLoad[];
  readonly leads?: readonly Lead[];
  /** What sets resistances for the return-electrode monitor. */
  readonly resistanceBox?: BenchBox;
  /** Lead and fixture between the box and the monitor. */
  readonly fixture?: SeriesResistance;
  /** How well response times of the monitor are taken; without it only simple acceptance judges them. */
  readonly timing?: BenchTiming;
  /** Quantity in which limits are wanted; the first that the instrument reads unless stated. */
  readonly reads?: Quantity;
  readonly substitution?: Substitution;
  readonly times?: BenchTimes;
  /** How uncertainty enters a verdict at this bench; `simple-acceptance` unless stated. */
  readonly decisionRule?: PlanDecisionRule;
}

/** A true-rms instrument. */
export interface Instrument {
  readonly name: string;
  readonly identification?: string;
  /** Date until which its calibration holds, as text. */
  readonly calibratedUntil?: string;
  readonly reads: readonly InstrumentFunction[];
  /** Highest peak voltage at its input, in volts. */
  readonly maximumPeakVoltage?: number;
  /** Highest crest factor at which it reads true rms. */
  readonly maximumCrestFactor?: number;
  /** End of the leads at which it reads: at the `load` unless stated, or at the `generator`. */
  readonly readsAt?: 'load' | 'generator';
  /** Frequency range of its statement, in hertz. */
  readonly frequencyRange?: { readonly lower: number; readonly upper: number };
}

/** A quantity that the instrument reads, with its ranges. */
export interface InstrumentFunction {
  readonly quantity: Quantity;
  readonly ranges: readonly InstrumentRange[];
  /** The maker's statement of accuracy; without it the plan has no uncertainties. */
  readonly accuracy?: AccuracyStatement;
}

/** One range of an instrument function, in the unit of its quantity. */
export interface InstrumentRange {
  /** Largest value that the range shows. */
  readonly maximum: number;
  /** One step of the last digit. */
  readonly resolution: number;
}

/** A non-inductive load. */
export interface BenchLoad {
  readonly id: string;
  /** Resistance, in ohms: the measured value where it is known. */
  readonly resistance: number;
  /** Power that it dissipates without a time limit, in watts. */
  readonly powerRating: number;
  /** Highest peak voltage across it, in volts. */
  readonly maximumPeakVoltage?: number;
  /** A higher power for a limited time. */
  readonly overload?: LoadOverload;
  /** Relative limits of the resistance, where no certificate states more. */
  readonly tolerance?: number;
  /** Expanded uncertainty of the resistance, in ohms, from a certificate. */
  readonly certificate?: LoadCertificate;
  /** Warming in use: temperature coefficient in 1/K, and the highest rise in kelvins. */
  readonly temperature?: { readonly coefficient: number; readonly rise: number };
  /** Relative limits of the effect of strays and leads at the carrier, for the uncertainty. */
  readonly strays?: number;
  /** Inductance in series with the resistance, in henries: with it the plan works out what it does at the carrier. */
  readonly seriesInductance?: number;
  /** Capacitance across the resistance, in farads. */
  readonly parallelCapacitance?: number;
  /** How it warms: the plan then limits activation and pause so that it stays below its highest rise. */
  readonly heat?: LoadHeat;
}

/** How a load warms: one thermal resistance and one time constant. */
export interface LoadHeat {
  /** From the element to the surroundings, in kelvins per watt. */
  readonly thermalResistance: number;
  /** In seconds. */
  readonly timeConstant: number;
  /** Highest permitted temperature above the surroundings, in kelvins. */
  readonly maximumRise: number;
}

/** What a certificate says of a resistance. */
export interface LoadCertificate {
  readonly expandedUncertainty: number;
  /** Coverage factor, or level of confidence as a fraction. */
  readonly coverage: { readonly factor: number } | { readonly level: number };
}

/** What a load takes for a short time. */
export interface LoadOverload {
  /** Power, in watts. */
  readonly power: number;
  /** Longest activation at this power, in seconds. */
  readonly on: number;
  /** Shortest pause after it, in seconds. */
  readonly off: number;
}

/** A set of leads. */
export interface Lead {
  readonly id: string;
  readonly name: string;
  /** The circuits that it serves. */
  readonly circuits: readonly ('monopolar' | 'bipolar')[];
  /** Highest peak voltage, in volts. */
  readonly maximumPeakVoltage?: number;
  /** Length of the pair, one way, in metres. */
  readonly length?: number;
  /** How the pair is built: with its length the plan works out what it does at the carrier. */
  readonly geometry?: LeadGeometry;
}

/** Build of a pair of leads, lengths in metres; or its constants, in henries and farads per metre. */
export type LeadGeometry =
  | {
      readonly kind: 'two-wire';
      /** Distance of the axes. */
      readonly spacing: number;
      readonly diameter: number;
      readonly relativePermittivity?: number;
    }
  | {
      readonly kind: 'coaxial';
      readonly innerDiameter: number;
      readonly outerDiameter: number;
      readonly relativePermittivity?: number;
    }
  | { readonly kind: 'constants'; readonly inductance: number; readonly capacitance: number };

/** A decade or substitution box of the bench. */
export type BenchBox = ResistanceBox & { readonly name?: string };

/** How response times are taken: by hand with a watch, or otherwise. */
export interface BenchTiming {
  /** How far a time may be off, to either side, in seconds: watch and reaction. */
  readonly limits: number;
}

/** When a load of the bench may stand in for a load of the sheet. */
export interface Substitution {
  /** Largest relative difference of resistance that is accepted; 0.1 unless stated. */
  readonly maximumDifference?: number;
  /**
   * Relative difference up to which the published power is taken to hold unchanged
   * where no curve says how it changes; 0.01 unless stated.
   */
  readonly negligible?: number;
}

/** Time that each act takes at this bench, in seconds. The defaults are assumptions: state your own. */
export interface BenchTimes {
  /** Changing the leads or the connection; 120 unless stated. */
  readonly connect?: number;
  /** Changing the load; 30 unless stated. */
  readonly changeLoad?: number;
  /** Changing the setting or the mode; 10 unless stated. */
  readonly changeSetting?: number;
  /** Activating, reading and writing down; 15 unless stated. */
  readonly read?: number;
}
