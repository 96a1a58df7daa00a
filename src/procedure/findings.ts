import type { Band } from '../band/index.js';
import type { Warning } from '../checks/index.js';
import type { Quantity } from '../circuit/index.js';
import type { Conformance } from '../decision/index.js';
import type { AlarmReason, DisplayFit, HysteresisFound, MonitorStates, MonitorSweep } from '../monitor/index.js';
import type { ExpandedUncertainty } from '../uncertainty/index.js';
import type { Step } from '../working/index.js';
import type { ChallengeReading, MonitorReading, Phase, Reading } from './readings.js';
import type { RuleId } from './standard-rules.js';

/** Verdict of one row. */
export type Verdict = 'pass' | 'fail' | 'not judged';

/** Verdict of the whole: `incomplete` when nothing fails and something that is needed is not judged. */
export type OverallVerdict = 'pass' | 'fail' | 'incomplete';

/** Plan and readings compared. */
export interface Findings {
  readonly schema: 'esu-limits/findings';
  readonly version: 1;
  readonly library: { readonly name: 'esu-limits'; readonly version: string };
  /** In the order of the plan; a point without a reading has a row that says so. */
  readonly points: readonly PointFinding[];
  readonly rules: readonly RuleFinding[];
  readonly monitor: readonly MonitorFinding[];
  /** What the errors of the monitor's display have in common, for each state of the unit: a hint, never a verdict. */
  readonly monitorDisplay: readonly MonitorDisplayHint[];
  /** Single challenges of the monitor's thresholds. */
  readonly monitorChallenges: readonly ChallengeFinding[];
  /** Trip points and response times from its sweeps, for each state of the unit. */
  readonly monitorTrips: readonly TripFindings[];
  /** Traces of the resistance against time: alarms of the model beside those that were noted. */
  readonly monitorTraces: readonly TraceFindings[];
  readonly leakage: readonly LeakageRow[];
  /** Readings that belong to no point of the plan. */
  readonly extra: readonly Reading[];
  readonly extraMonitor: readonly MonitorReading[];
  /** What was written down for challenges that the plan does not have. */
  readonly extraChallenges: readonly ChallengeReading[];
  /** The state in which the unit came; absent when nothing was read as found. */
  readonly asFound?: Summary;
  /** The state in which it leaves: the as-left reading of each point where there is one, else the as-found. */
  readonly final: Summary;
  readonly warnings: readonly Warning[];
}

/** Counts and verdict of one state of the unit. */
export interface Summary {
  readonly verdict: OverallVerdict;
  readonly pass: number;
  readonly fail: number;
  readonly notJudged: number;
  /** Points that pass but lie close to a limit. */
  readonly closeToLimit: number;
}

/** Why a row has its verdict: for programs. */
export type ReasonCode =
  | 'inside'
  | 'close-to-limit'
  | 'below-lower'
  | 'above-upper'
  /** Inside the limits, but not by the guard band: the rule does not accept it. */
  | 'in-guard-band'
  /** Outside the limits, but not by the guard band: the rule does not reject it. */
  | 'outside-in-guard-band'
  | 'conditional-pass'
  | 'conditional-fail'
  /** The decision rule of the plan cannot be applied here. */
  | 'no-decision'
  | 'no-reading'
  /** An alarm that nothing on the trace accounts for. */
  | 'false-alarm'
  /** An alarm that ended while the resistance was still beyond its limit. */
  | 'early-release'
  | 'no-limits'
  | 'not-plausible'
  | 'nothing-to-compare';

/** One reading against one point, or a point without reading. */
export interface PointFinding {
  readonly point: string;
  readonly number: number;
  readonly phase: Phase;
  /** The reading as given; absent when there is none. */
  readonly reading?: Reading;
  /** The reading in the quantity of the limits. */
  readonly value?: number;
  readonly quantity: Quantity;
  readonly limits: Band;
  readonly nominal?: number;
  readonly verdict: Verdict;
  readonly reason: ReasonCode;
  /** The reason as a sentence with its numbers. */
  readonly message: string;
  /** 0 at nominal, −1 at the lower limit, +1 at the upper. */
  readonly margin?: number;
  /** Power that the reading implies at the load, in watts. */
  readonly power?: number;
  /** Uncertainty of this reading; absent where the bench states no accuracy for the quantity. */
  readonly expanded?: ExpandedUncertainty;
  /** Whether the quantity lies inside the limits, as probabilities from this reading and its uncertainty. */
  readonly conformance?: Conformance;
  /** Verdict of simple acceptance, where that of the decision rule differs. */
  readonly simpleVerdict?: Verdict;
  /** The generator's display against the instrument. */
  readonly display?: DisplayFinding;
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/** One reading of HF leakage against its limit, or a measurement without reading. */
export interface LeakageRow {
  readonly point: string;
  readonly number: number;
  readonly phase: Phase;
  readonly reading?: Reading;
  /** Leakage in the measuring resistor of the limit, in amperes rms; the highest that it can be. */
  readonly value?: number;
  /** Limit, in amperes rms. */
  readonly limits: Band;
  readonly verdict: Verdict;
  readonly reason: ReasonCode;
  readonly message: string;
  /** Leakage over its limit: 1 is on the limit. */
  readonly margin?: number;
  readonly expanded?: ExpandedUncertainty;
  readonly conformance?: Conformance;
  readonly simpleVerdict?: Verdict;
  /** Leakage over the guidance for contact currents at work: above 1 it is hazardous to touch, also when it passes. */
  readonly overContactGuidance?: number;
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/** The generator's own display against the instrument. */
export interface DisplayFinding {
  readonly quantity: Quantity;
  /** What the display showed. */
  readonly displayed: number;
  /** What the instrument showed, in the same quantity. */
  readonly measured: number;
  /** Displayed minus measured. */
  readonly difference: number;
  /** Difference over measured; absent when nothing was measured. */
  readonly relative?: number;
  /** Limits of the displayed value around the measured; absent when the maker states no tolerance. */
  readonly limits?: Band;
  readonly verdict: Verdict;
  readonly message: string;
}

/** A rule of the standard against the readings that it needs. */
export interface RuleFinding {
  readonly rule: RuleId;
  readonly output: string;
  readonly outputName: string;
  readonly clause: string;
  readonly phase: Phase;
  /** Points of the readings that decided, or that are missing. */
  readonly points: readonly string[];
  readonly verdict: Verdict;
  readonly message: string;
  readonly working: readonly Step[];
}

/** One resistance reading of the monitor. */
export interface MonitorFinding extends JudgedMeasured {
  readonly number: number;
  readonly phase: Phase;
  readonly set: number | 'open';
  readonly displayed?: number | 'over-range';
  readonly limits: Band;
  readonly message: string;
  readonly working: readonly Step[];
}

/** One challenge of the monitor. */
export interface ChallengeFinding extends AlarmReasons {
  readonly challenge: string;
  readonly number: number;
  readonly phase: Phase;
  readonly limit: 'lower' | 'upper' | 'rise' | 'any';
  readonly set: number | 'open';
  readonly baseline?: number;
  readonly mustAlarm: boolean;
  /** Whether it alarmed; absent when nothing was written down. */
  readonly alarm?: boolean;
  readonly responseTime?: number;
  /** The response time by the rule of the plan; absent where none was taken, or none is permitted by the sheet. */
  readonly response?: JudgedMeasured;
  readonly verdict: Verdict;
  readonly message: string;
  readonly note?: string;
  /** Absent where there is none. */
  readonly warnings?: readonly Warning[];
}

/** Why it alarmed: what was noted beside what was to be expected. A difference is a warning, never a verdict. */
export interface AlarmReasons {
  /** The reason that the monitor gave; absent where none was noted. */
  readonly alarmReason?: AlarmReason;
  /** The reason of the stated monitor; absent where it has no alarm, or none is to be compared. */
  readonly expectedReason?: AlarmReason;
}

/** What the sweeps of one state of the unit show. */
export interface TripFindings {
  readonly phase: Phase;
  /** The sweeps as they were written down. */
  readonly sweeps: readonly MonitorSweep[];
  readonly rows: readonly TripFinding[];
  readonly hysteresis: readonly HysteresisFound[];
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/** A value as the rule of the plan judges it. */
export interface JudgedMeasured {
  readonly verdict: Verdict;
  readonly reason: ReasonCode;
  /** 0 where the maker states that it trips, or at no time; −1 at the lower limit, +1 at the upper. */
  readonly margin?: number;
  /** Limits inside which the rule accepts; `null` where it accepts none, absent where it cannot be applied. */
  readonly acceptance?: Band | null;
  /** Only of the rule `non-binary`: values outside fail. */
  readonly failing?: Band;
  /** Absent where nothing says how well the value is known. */
  readonly expanded?: ExpandedUncertainty;
  readonly conformance?: Conformance;
  /** Verdict of simple acceptance, where that of the rule differs. */
  readonly simpleVerdict?: Verdict;
}

/** A trip point, a release point or a response time against what the sheet states; reasons only of alarms on a trace. */
export interface TripFinding extends JudgedMeasured, AlarmReasons {
  readonly phase: Phase;
  readonly what: string;
  readonly unit: 'ohm' | 's';
  /** In ohms as the monitor sees it, or in seconds; absent where nothing tripped. */
  readonly value?: number;
  readonly limits: Band;
  /** Whether the sheet states limits for it: one without leaves nothing open. */
  readonly isStated: boolean;
  readonly message: string;
}

/** One trace: what the stated monitor makes of it, and what was noted. */
export interface TraceFindings {
  /** Place among the traces of the readings, from 1. */
  readonly number: number;
  readonly name?: string;
  readonly phase: Phase;
  /** States and alarms of the stated monitor, without its tolerances. */
  readonly expected: MonitorStates;
  /** One for each alarm of the model, and one for each that was noted without any. */
  readonly rows: readonly TripFinding[];
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/** Gain and offset of the monitor's display, and what they hint at. */
export interface MonitorDisplayHint extends Pick<DisplayFit, 'gain' | 'offset' | 'fault' | 'message' | 'working'> {
  readonly phase: Phase;
}
