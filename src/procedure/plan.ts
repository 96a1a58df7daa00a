import type { Band } from '../band/index.js';
import type { Warning } from '../checks/index.js';
import type { Quantity } from '../circuit/index.js';
import type {
  LeakageArrangementId,
  LeakageElectrode,
  LeakageLimitBasis,
  LeakageLoading,
  LeakagePlace,
} from '../leakage/index.js';
import type { AlarmChallenge, SweepChallenge, ThresholdPlan } from '../monitor/index.js';
import type { ExpandedUncertainty, ReadingBudget } from '../uncertainty/index.js';
import type { Caution, Step } from '../working/index.js';
import type { Bench } from './bench.js';
import type { PlanDecisionRule } from './decision-rule.js';
import type { MonitorRow, Setting, Specification } from './specification.js';
import type { RuleId, StandardRule } from './standard-rules.js';

/** How a plan is made. */
export interface PlanOptions {
  /** Direction in which limits are rounded to the instrument's resolution; `inward` unless stated. */
  readonly rounding?: 'inward' | 'nearest';
  /** Which limits govern where a published row and a derived band exist; `published` unless stated. */
  readonly govern?: 'published' | 'derived' | 'tighter';
  /** The low setting, as a fraction of the highest; 0.2 unless stated. */
  readonly lowSetting?: number;
  /** A passing reading at or beyond this margin is called close to its limit; 0.8 unless stated. */
  readonly closeToLimit?: number;
  /** How uncertainty enters a verdict; that of the bench unless stated, and `simple-acceptance` where it has none. */
  readonly decisionRule?: PlanDecisionRule;
  /**
   * An effect of strays below this part of the distance from the expected value to the nearer limit is left
   * uncorrected; 0.1 unless stated.
   */
  readonly negligibleEffect?: number;
}

/** Test points with expected values, limits, working and cautions: everything needed at the bench. */
export interface Plan {
  readonly schema: 'esu-limits/plan';
  readonly version: 1;
  readonly library: { readonly name: 'esu-limits'; readonly version: string };
  /** The specification and the bench that the plan was made from, whole. */
  readonly specification: Specification;
  readonly bench: Bench;
  readonly options: Required<PlanOptions>;
  /** In the order of work: connections are changed least, then loads, then settings from low to high. */
  readonly points: readonly PlanPoint[];
  readonly rules: readonly PlanRule[];
  readonly monitor: readonly PlanMonitorRow[];
  /** How the thresholds of the monitor are challenged; absent where the sheet states none, or the bench has no box. */
  readonly monitorThresholds?: PlanMonitorThresholds;
  readonly leakage: readonly PlanLeakage[];
  readonly cautions: readonly Caution[];
  /** Matters that concern no single point. */
  readonly warnings: readonly Warning[];
  readonly benchTime: BenchTime;
}

/** One test point. */
export interface PlanPoint {
  /** Stable: output, setting and wanted load, such as `cut/120W/500ohm`. */
  readonly id: string;
  /** Place in the order of work, from 1. */
  readonly number: number;
  /** Identifier and name of the output. */
  readonly output: string;
  readonly outputName: string;
  readonly connection: string;
  /** Name of the leads to use, where the bench has leads for the circuit. */
  readonly lead?: string;
  readonly setting: Setting;
  /** The setting as text: `120 W`, or the level's name. */
  readonly settingText: string;
  /** Load that the sheet asks for, in ohms. */
  readonly wantedLoad: number;
  /** Load on the bench; absent when none serves. */
  readonly load?: PointLoad;
  /** What to expect; absent when nothing published says so at the load of the bench. */
  readonly expected?: Expected;
  /** Quantity in which the instrument is read, and in which the limits are. */
  readonly reads: Quantity;
  /** Range of the instrument to use; absent when none is large enough. */
  readonly range?: { readonly maximum: number; readonly resolution: number };
  /** Limits that govern, in the quantity that is read, rounded to the instrument's resolution. */
  readonly limits: Band;
  /** Where the governing limits come from. */
  readonly limitsFrom: LimitOrigin;
  /** Limits of the published row, at the load of the bench, rounded; where there is a row. */
  readonly publishedLimits?: Band;
  /** Limits derived from expected value and tolerance, rounded; where there is a tolerance. */
  readonly derivedLimits?: Band;
  /** Value at margin 0, in the quantity that is read. */
  readonly nominal?: number;
  /** False when a check below failed or the point lacks a load: do not activate as planned. */
  readonly feasible: boolean;
  readonly feasibility: readonly FeasibilityCheck[];
  readonly activation: Activation;
  /** What strays of load and leads do here; absent where they are not stated. */
  readonly effect?: BenchEffect;
  /** How well the bench measures here; absent where the bench states no accuracy for the quantity. */
  readonly measurement?: PointMeasurement;
  readonly warnings: readonly Warning[];
  /** Every step from the sheet to the limits. */
  readonly working: readonly Step[];
}

/** What the strays of load and leads do to a reading. */
export interface BenchEffect {
  /** Reading over that of an ideal load, for each quantity. */
  readonly ratios: Readonly<Record<Quantity, number>>;
  /** Impedance that the generator sees, in ohms, and its phase, in radians. */
  readonly impedance: number;
  readonly phase: number;
  /** Whether expected value and limits are corrected for it. */
  readonly applied: boolean;
  /** The same in a sentence for the bench. */
  readonly statement: string;
}

/** How well the bench measures at a point, in the quantity that is read. */
export interface PointMeasurement {
  /** Budget of a reading at the nominal. */
  readonly budget: ReadingBudget;
  /** Expanded uncertainty at the nominal, with its coverage factor and probability. */
  readonly expanded: ExpandedUncertainty;
  /** Expanded uncertainty of a reading at the lower and at the upper limit. */
  readonly atLower?: number;
  readonly atUpper?: number;
  /** How the output follows the load here: d ln P / d ln R; 0, constant power, where nothing published says so. */
  readonly slope: number;
  /** Span of the limits over twice the expanded uncertainty at the nominal; absent where that is 0 or there is no span. */
  readonly testUncertaintyRatio?: number;
  /**
   * Limits inside which a reading is accepted by the rule of the plan; `null` where none can be. Absent where the rule
   * cannot be applied: a warning says why.
   */
  readonly acceptance?: Band | null;
  /** Only of the rule `non-binary`: readings outside fail. */
  readonly failing?: Band;
  /** What the acceptance limits stand on. */
  readonly assumptions: readonly string[];
  /** The same in a sentence for the bench: U, what dominates it, how it compares with the limits. */
  readonly statement: string;
}

/** Where limits come from. `none`: neither a row nor a tolerance nor a rule sets any. */
export type LimitOrigin = 'published row' | 'tolerance' | 'standard' | 'none';

/** The bench load of a point and what it costs to use it in place of the wanted one. */
export interface PointLoad {
  readonly id: string;
  readonly resistance: number;
  /** Relative difference of resistance from the wanted load. */
  readonly difference: number;
  /** Relative change of the expected power that comes with the difference. */
  readonly powerChange: number;
}

/** Expected values at a point, rms unless the name says peak. */
export interface Expected {
  readonly power: number;
  readonly current: number;
  readonly voltage: number;
  readonly peakVoltage?: number;
  readonly peakCurrent?: number;
  /** Where the expected power comes from. */
  readonly from: ExpectedOrigin;
}

/** Where an expected power comes from. */
export type ExpectedOrigin =
  | 'test point'
  | 'published row'
  | 'middle of the published row'
  | 'published curve'
  | 'scaled curve'
  | 'rating'
  | 'regimes';

/** One question of feasibility: can instrument, load and leads take this point? */
export interface FeasibilityCheck {
  readonly check:
    | 'instrument range'
    | 'instrument peak voltage'
    | 'instrument crest factor'
    | 'instrument frequency'
    | 'load power'
    | 'load peak voltage'
    | 'lead peak voltage';
  readonly ok: boolean;
  /** What occurs, in SI units. */
  readonly value: number;
  /** What is permitted, in SI units. */
  readonly limit: number;
  /** What is wrong, with the numbers; only where the check failed. */
  readonly message?: string;
}

/** How long to activate, and how long to wait after it, in seconds; absent where nothing is stated. */
export interface Activation {
  readonly longest?: number;
  readonly pause?: number;
}

/** One measurement of HF leakage, planned: of one electrode, in one state of the output. */
export interface PlanLeakage {
  /**
   * `leakage/` and the identifier of the test; of an isolated or bipolar output electrode and state of the output too,
   * such as `leakage/cut/active/rated-load`.
   */
  readonly id: string;
  /** Identifier of the test; absent in plans of before electrodes were planned one by one: it follows `leakage/` there. */
  readonly test?: string;
  /** From where the measuring resistor goes to earth; absent in the same plans. */
  readonly measuredFrom?: LeakageElectrode;
  /** What is between the electrodes meanwhile; absent where the arrangement has one load only. */
  readonly loading?: LeakageLoading;
  /** Place among the leakage measurements, from 1. */
  readonly number: number;
  readonly output: string;
  readonly outputName: string;
  readonly setting: Setting;
  readonly settingText: string;
  readonly arrangement: LeakageArrangementId;
  readonly measuredAt: LeakagePlace;
  readonly connection: string;
  /** What is connected and read. */
  readonly instruction: string;
  /** Measuring resistor of the bench; absent when none serves. */
  readonly resistor?: { readonly id: string; readonly resistance: number };
  /** Quantity in which the instrument is read. */
  readonly reads: Quantity;
  /** Range of the instrument to use; absent when none is large enough. */
  readonly range?: { readonly maximum: number; readonly resolution: number };
  /** Highest leakage, in amperes rms in the measuring resistor of the limit, and where it comes from. */
  readonly limit: {
    readonly current: number;
    readonly measuringResistance: number;
    readonly basis: LeakageLimitBasis;
  };
  /** The same as the highest reading, in the quantity that is read and with the resistor of the bench, rounded down. */
  readonly highestReading?: number;
  /** Expanded uncertainty of the leakage at its limit, in amperes; absent where the bench states no accuracy. */
  readonly atLimit?: number;
  /** Leakages that the rule of the plan accepts, in amperes; as for a point. */
  readonly acceptance?: Band | null;
  /** Only of the rule `non-binary`: leakages outside fail. */
  readonly failing?: Band;
  /** Highest reading that the rule accepts, in the quantity that is read; absent where it accepts none, or cannot be applied. */
  readonly highestAccepted?: number;
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/** A rule of the standard as it applies to one output. */
export interface PlanRule {
  readonly rule: RuleId;
  readonly output: string;
  readonly outputName: string;
  readonly definition: StandardRule;
  /** The parameters that apply: the rule's own, or the user's in their place. */
  readonly parameters: Readonly<Record<string, number>>;
  /** Points at which readings are needed. */
  readonly points: readonly string[];
  /** What to do at the bench, in a sentence. */
  readonly instruction: string;
}

/** A resistance-reading row of the monitor, numbered. */
export interface PlanMonitorRow extends MonitorRow {
  readonly number: number;
  readonly connection: string;
}

/** The challenges of a monitor's thresholds. */
export interface PlanMonitorThresholds {
  readonly connection: string;
  readonly challenges: readonly PlanChallenge[];
  /** What the box can prove of each threshold, with its working. */
  readonly thresholds: readonly ThresholdPlan[];
  /** What to mind at the bench. */
  readonly cautions: readonly string[];
  readonly warnings: readonly Warning[];
}

/** One challenge, numbered. */
export type PlanChallenge = PlanAlarmChallenge | PlanSweepChallenge;

/** Place of a challenge in the plan, and what to do. */
export interface NumberedChallenge {
  /** `monitor/` and its number. */
  readonly id: string;
  readonly number: number;
  /** What to do, in a sentence. */
  readonly instruction: string;
}

/** A resistance to set, and what the monitor must do. */
export interface PlanAlarmChallenge extends AlarmChallenge, NumberedChallenge {}

/** Resistances to set one after the other. */
export interface PlanSweepChallenge extends SweepChallenge, NumberedChallenge {
  /** What a trip point found by it is worth; absent where it finds the release, or the sheet states no tolerance. */
  readonly finds?: SweepAcceptance;
}

/** How well a planned sweep finds a trip point, in ohms as the monitor sees it. */
export interface SweepAcceptance {
  readonly expandedUncertainty: number;
  /** Permitted trip points. */
  readonly limits: Band;
  /** Trip points that the rule of the plan accepts; as for a point. */
  readonly acceptance?: Band | null;
  /** Only of the rule `non-binary`: trip points outside fail. */
  readonly failing?: Band;
}

/** Estimated time at the bench, in seconds, with its parts. */
export interface BenchTime {
  readonly total: number;
  readonly parts: readonly { readonly what: string; readonly count: number; readonly each: number }[];
}
