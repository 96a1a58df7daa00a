import type { Band } from '../band/index.js';
import { setAboveFormula, setBelowFormula } from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import type { ResistanceBox } from './box.js';
import { atOrAbove, atOrBelow } from './box-values.js';

/** What a box would have to do that this one does not, in ohms. */
export interface BoxNeed {
  /** Largest step about the threshold. */
  readonly step?: number;
  /** How far a value may be off at most. */
  readonly offBy?: number;
  /** A value that it must reach or go beyond. */
  readonly reach?: number;
}

/** What a box can say of one threshold. */
export interface ThresholdPlan {
  readonly limit: 'lower' | 'upper' | 'rise';
  /** Of a rise: the baseline that is set first, in ohms. */
  readonly baseline?: number;
  /** Permitted trip points, in ohms as the monitor sees them; a single value where the maker states no tolerance. */
  readonly trip: Band;
  /** Value to set at which a good monitor stays silent, in ohms; `null` where the box has none. */
  readonly mustNotAlarm: number | null;
  /** Value to set at which a good monitor alarms, in ohms; `null` where the box has none. */
  readonly mustAlarm: number | null;
  /** Set values, in ohms, strictly between which an alarm or its absence proves nothing. */
  readonly undecided: Band;
  /** Where the trip point lies when both challenges are met, in ohms as the monitor sees it. */
  readonly proven: Band | null;
  /**
   * `verifiable`: both challenges exist, and a sweep can prove a trip point inside its tolerance where one is stated.
   * `roughly`: both exist, and no sweep of this box proves more. `not-verifiable`: one of them is missing.
   */
  readonly status: 'verifiable' | 'roughly' | 'not-verifiable';
  /** Why it is not `verifiable`, in a sentence; empty where it is. */
  readonly reason: string;
  /** What box would do, where this one does not. */
  readonly needed?: BoxNeed;
  readonly working: readonly Step[];
}

/** The bench as the calculation needs it: box, and what lies in series with it. */
export interface Setup {
  readonly box: ResistanceBox;
  /** Lead and fixture, in ohms. */
  readonly series: number;
  /** Fixed part of what a set value may be off, in ohms: box, and lead and fixture. */
  readonly fixed: number;
  /** Part of the value that it may be off, as a fraction. */
  readonly part: number;
}

/** The largest set value that the monitor surely sees at or below a resistance; may be negative. */
export function setBelow({ series, fixed, part }: Setup, seen: number): number {
  return (seen - series - fixed) / (1 + part);
}

/** The smallest set value that the monitor surely sees at or above a resistance. */
export function setAbove({ series, fixed, part }: Setup, seen: number): number {
  return (seen - series + fixed) / (1 - part);
}

/** A threshold to plan for. */
export interface ThresholdQuestion {
  readonly limit: ThresholdPlan['limit'];
  readonly baseline?: number;
  /** Trip points of a good monitor that this set-up can bring about; a side may be absent. */
  readonly trip: Band;
  /** The same less what the set-up of the baseline blurs: a trip point inside is proven; absent where none is stated. */
  readonly tolerance?: Band;
  /** Set values that no other limit of the monitor alarms at. */
  readonly room: Band;
}

/** Must-not and must-alarm values of one threshold, and what they prove. */
export function planThreshold(
  setup: Setup,
  { limit, baseline, trip, tolerance, room }: ThresholdQuestion,
): ThresholdPlan {
  const { box, series, fixed, part } = setup;
  const isUpper = limit !== 'lower';
  const { lower: T_L, upper: T_U } = trip;
  const below = T_L === undefined ? undefined : setBelow(setup, T_L);
  const above = T_U === undefined ? undefined : setAbove(setup, T_U);
  // The limit itself is accepted, so that an alarm needs a value beyond it.
  const low = below === undefined ? undefined : atOrBelow(box, isUpper ? below : below * (1 - 1e-9));
  const high = above === undefined ? undefined : atOrAbove(box, isUpper ? above * (1 + 1e-9) : above);
  const inRoom = (value: number | undefined): number | null =>
    value === undefined || value < (room.lower ?? 0) || value > (room.upper ?? Number.POSITIVE_INFINITY) ? null : value;
  const mustNotAlarm = inRoom(isUpper ? low : high);
  // A rise must alarm before the upper limit does; a limit of the window alarms first in any case.
  const mustAlarm = limit === 'rise' ? inRoom(high) : ((isUpper ? high : low) ?? null);
  const [least, most] = isUpper ? [mustNotAlarm, mustAlarm] : [mustAlarm, mustNotAlarm];
  const proven =
    least === null || most === null
      ? null
      : { lower: least * (1 - part) - fixed + series, upper: most * (1 + part) + fixed + series };
  const inputs = { R_s: series, a: fixed, q: part };
  const working = [
    ...(T_L === undefined || below === undefined
      ? []
      : [step(setBelowFormula, `largest value that is surely below ${short(T_L)} ohm`, { T: T_L, ...inputs }, below)]),
    ...(T_U === undefined || above === undefined
      ? []
      : [step(setAboveFormula, `smallest value that is surely above ${short(T_U)} ohm`, { T: T_U, ...inputs }, above)]),
  ];
  return {
    limit,
    ...(baseline === undefined ? {} : { baseline }),
    trip,
    mustNotAlarm,
    mustAlarm,
    undecided: { ...(below === undefined ? {} : { lower: below }), ...(above === undefined ? {} : { upper: above }) },
    proven,
    ...verdictOn(setup, mustNotAlarm, mustAlarm, { limit, trip, room, ...(tolerance ? { tolerance } : {}) }),
    working,
  };
}

/** Whether the box can decide, why not, and what would. */
function verdictOn(
  setup: Setup,
  mustNotAlarm: number | null,
  mustAlarm: number | null,
  { limit, trip, tolerance }: ThresholdQuestion,
): Pick<ThresholdPlan, 'status' | 'reason' | 'needed'> {
  const { lower: T_L, upper: T_U } = trip;
  const missing = (what: string, value: number | undefined): Pick<ThresholdPlan, 'status' | 'reason' | 'needed'> => ({
    status: 'not-verifiable',
    reason: `The box has no value at which a good monitor ${what}.`,
    ...(value === undefined || value < 0 ? {} : { needed: { reach: value } }),
  });
  const isUpper = limit !== 'lower';
  const [silentAt, alarmAt] = isUpper ? [T_L, T_U] : [T_U, T_L];
  const reach = (seen: number, isBelow: boolean) => (isBelow ? setBelow(setup, seen) : setAbove(setup, seen));
  if (mustNotAlarm === null && silentAt !== undefined) return missing('must stay silent', reach(silentAt, isUpper));
  if (mustAlarm === null && alarmAt !== undefined) return missing('must alarm', reach(alarmAt, !isUpper));
  if (tolerance?.lower === undefined || tolerance.upper === undefined) return { status: 'verifiable', reason: '' };
  const width = tolerance.upper - tolerance.lower;
  const off = setup.fixed + setup.part * Math.max(tolerance.upper - setup.series, 0);
  if (width <= 2 * off) {
    return {
      status: 'roughly',
      reason: `The box may be off by ${short(off)} ohm, and the tolerance is only ${short(width)} ohm wide.`,
      needed: { offBy: Math.max(width, 0) / 4, step: Math.max(width, 0) / 4 },
    };
  }
  // Two neighbouring values between which a trip lies inside the tolerance, however far both are off.
  const first = atOrAbove(setup.box, setAbove(setup, tolerance.lower));
  const next = first === undefined ? undefined : atOrAbove(setup.box, first + Math.max(first, 1) * 1e-9);
  const second = 'values' in setup.box || first === undefined ? next : first + setup.box.step;
  if (second !== undefined && second <= setBelow(setup, tolerance.upper)) return { status: 'verifiable', reason: '' };
  const step = (width - 2 * off) / 2;
  return {
    status: 'roughly',
    reason: `The steps of the box are too coarse for a tolerance that is ${short(width)} ohm wide.`,
    needed: { step },
  };
}

/** A number for a sentence. */
export function short(value: number): string {
  return String(Number(value.toPrecision(4)));
}
