import { fail, requireChoice, requireFraction, requirePositive, requireResult, type Warning } from '../checks/index.js';
import { convertQuantity, explainConversion } from '../circuit/index.js';
import { formatQuantity } from '../units/index.js';
import { leakageLimitFromPowerFormula } from '../working/formulas/leakage.js';
import { type Standing, type Step, step } from '../working/index.js';
import {
  type KnownLeakageLimit,
  type LeakageArrangement,
  type LeakageArrangementId,
  type LeakagePlace,
  leakageArrangements,
} from './leakage-arrangements.js';

/** A limit that the caller states: it governs in place of the one that is known here. */
export interface StatedLeakageLimit {
  /** Highest leakage, in amperes rms, greater than 0: this or `shareOfRatedPower`. */
  readonly current?: number;
  /** Highest power in the measuring resistor, as a fraction of the highest rated output power: this or `current`. */
  readonly shareOfRatedPower?: number;
  /** Measuring resistor at which the limit holds, in ohms; that of the arrangement unless stated. */
  readonly measuringResistance?: number;
  /** Where it was read: document, page. */
  readonly statedIn: string;
  readonly clause?: string;
  readonly edition?: string;
  /** How well it is known. */
  readonly standing?: Standing;
}

/** Which limit is asked for. */
export interface LeakageLimitQuestion {
  readonly arrangement: LeakageArrangementId;
  /** Where it is measured; there is no default, as the limits differ. */
  readonly measuredAt: LeakagePlace;
  /** Highest rated output power, in watts, greater than 0: needed where the limit is a share of it. */
  readonly ratedPower?: number;
  /** The caller's own limit. */
  readonly limit?: StatedLeakageLimit;
}

/** Where a limit comes from. */
export interface LeakageLimitBasis {
  readonly statedIn: string;
  readonly clause?: string;
  readonly edition?: string;
  readonly standing?: Standing;
  /** Whether the caller stated it. */
  readonly isStated: boolean;
}

/** A limit of HF leakage. */
export interface LeakageLimit {
  readonly arrangement: LeakageArrangementId;
  readonly measuredAt: LeakagePlace;
  /** Highest leakage, in amperes rms. */
  readonly current: number;
  /** Measuring resistor at which it holds, in ohms. */
  readonly measuringResistance: number;
  /** The same as voltage across the measuring resistor, in volts rms. */
  readonly voltage: number;
  /** The same as power in the measuring resistor, in watts. */
  readonly power: number;
  readonly basis: LeakageLimitBasis;
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/** Generators up to this rated power, in watts, are exempt from some clauses (scope of the standard). */
const exemptPower = 50;

/**
 * The limit of HF leakage of an arrangement, with its standing; or the one that the caller states.
 *
 * @param question Arrangement, place, rated power where it is needed, the caller's own limit
 * @returns Highest current, and the voltage and power that it makes in the measuring resistor
 * @throws CalculationError `unknown-choice`, `no-limits` (none is known at this place), `missing-member` (rated power),
 * `wrong-count` (current and share both, or neither), `not-a-number`, `not-positive`, `not-a-fraction`, `result-out-of-range`
 * @source IEC 60601-2-2, HF leakage; from memory: check your copy of the standard
 * @accuracy Within 2 units in the last place
 * @example
 * ```ts
 * import { leakageLimit } from 'esu-limits/leakage';
 * const isolated = leakageLimit({ arrangement: 'isolated', measuredAt: 'leads' });
 * [isolated.current, isolated.voltage, isolated.power]; // → [0.15, 30, 4.5]
 * const bipolar = leakageLimit({ arrangement: 'bipolar', measuredAt: 'leads', ratedPower: 70 });
 * (bipolar.current * 1000).toFixed(2); // → "59.16"
 * bipolar.basis.standing; // → "from memory"
 * ```
 */
export function leakageLimit(question: LeakageLimitQuestion): LeakageLimit {
  const { measuredAt, ratedPower, limit: stated } = question;
  const arrangement = requireArrangement(question.arrangement);
  requireChoice(measuredAt, 'measuredAt', ['leads', 'terminals']);
  if (ratedPower !== undefined) requirePositive(ratedPower, 'ratedPower');
  const known = arrangement.limits[measuredAt];
  const measuringResistance = resistanceOf(stated, arrangement);
  const found =
    stated === undefined
      ? currentOfKnown(known, arrangement.measuringResistance, question)
      : currentOfStated(stated, measuringResistance, question);
  const warnings = [
    ...(stated === undefined ? fromMemory(known) : looserThanKnown(found.current, measuringResistance, question)),
    ...exemption(ratedPower),
  ];
  const conversion = { from: 'current', load: measuringResistance } as const;
  const voltage = explainConversion(
    found.current,
    { ...conversion, to: 'voltage' },
    { subscript: 'max', label: 'highest voltage across the measuring resistor' },
  );
  const power = explainConversion(
    found.current,
    { ...conversion, to: 'power' },
    { subscript: 'max', label: 'highest power in the measuring resistor' },
  );
  return {
    arrangement: question.arrangement,
    measuredAt,
    current: found.current,
    measuringResistance,
    voltage: voltage.value,
    power: power.value,
    basis: basisOf(stated, known),
    warnings,
    working: [...found.working, ...voltage.working, ...power.working],
  };
}

interface FoundCurrent {
  readonly current: number;
  readonly working: readonly Step[];
}

/** The data of an arrangement, or an error that lists those that there are. */
function requireArrangement(id: LeakageArrangementId): LeakageArrangement {
  requireChoice(id, 'arrangement', Object.keys(leakageArrangements) as LeakageArrangementId[]);
  return leakageArrangements[id];
}

function resistanceOf(stated: StatedLeakageLimit | undefined, arrangement: LeakageArrangement): number {
  if (stated?.measuringResistance === undefined) return arrangement.measuringResistance;
  return requirePositive(stated.measuringResistance, 'limit.measuringResistance');
}

function currentOfKnown(
  known: KnownLeakageLimit | undefined,
  R_N: number,
  { measuredAt, ratedPower }: LeakageLimitQuestion,
): FoundCurrent {
  if (known === undefined) {
    return fail(
      'no-limits',
      'measuredAt',
      measuredAt,
      'must be a place for which a limit is known',
      'State the limit of your copy of the standard, or of the maker.',
    );
  }
  if (known.kind === 'current') return { current: known.current, working: [] };
  return currentOfShare(known.share, ratedPower, R_N);
}

function currentOfStated(
  { current, shareOfRatedPower }: StatedLeakageLimit,
  R_N: number,
  { ratedPower }: LeakageLimitQuestion,
): FoundCurrent {
  if ((current === undefined) === (shareOfRatedPower === undefined)) {
    fail(
      'wrong-count',
      'limit',
      current === undefined ? 'neither' : 'both',
      'give exactly one of current and shareOfRatedPower',
    );
  }
  if (current !== undefined) return { current: requirePositive(current, 'limit.current'), working: [] };
  requireFraction(shareOfRatedPower as number, 'limit.shareOfRatedPower');
  requirePositive(shareOfRatedPower as number, 'limit.shareOfRatedPower');
  return currentOfShare(shareOfRatedPower as number, ratedPower, R_N);
}

function currentOfShare(q: number, ratedPower: number | undefined, R_N: number): FoundCurrent {
  if (ratedPower === undefined) {
    return fail('missing-member', 'ratedPower', ratedPower, 'must be given: the limit is a share of the rated power');
  }
  const power = requireResult(q * ratedPower, 'limit');
  const current = convertQuantity(power, { from: 'power', to: 'current', load: R_N });
  const label = 'highest leakage';
  return { current, working: [step(leakageLimitFromPowerFormula, label, { q, P_r: ratedPower, R_N }, current)] };
}

function basisOf(stated: StatedLeakageLimit | undefined, known: KnownLeakageLimit | undefined): LeakageLimitBasis {
  const { clause, edition, standing } = stated ?? (known as KnownLeakageLimit);
  return {
    statedIn: stated?.statedIn ?? 'IEC 60601-2-2',
    ...(clause === undefined ? {} : { clause }),
    ...(edition === undefined ? {} : { edition }),
    ...(standing === undefined ? {} : { standing }),
    isStated: stated !== undefined,
  };
}

function fromMemory(known: KnownLeakageLimit | undefined): Warning[] {
  if (known?.standing !== 'from memory') return [];
  const message = `The limit of IEC 60601-2-2, ${known.clause} (editions ${known.edition}), is from memory: check your copy of the standard.`;
  return [{ code: 'limit-from-memory', message }];
}

function looserThanKnown(current: number, resistance: number, question: LeakageLimitQuestion): Warning[] {
  const { arrangement, measuredAt, ratedPower } = question;
  const known = leakageArrangements[arrangement].limits[measuredAt];
  if (known === undefined || (known.kind !== 'current' && ratedPower === undefined)) return [];
  const nominal = leakageArrangements[arrangement].measuringResistance;
  const knownCurrent = currentOfKnown(known, nominal, question).current;
  if (resistance !== nominal || current <= knownCurrent) return [];
  const message = `The stated limit of ${amperes(current)} is looser than ${amperes(knownCurrent)}, which is known for this arrangement (${known.standing}).`;
  return [{ code: 'limit-looser', message }];
}

function exemption(ratedPower: number | undefined): Warning[] {
  if (ratedPower === undefined || ratedPower > exemptPower) return [];
  const message = `Rated at ${formatQuantity(ratedPower, 'W')}: up to ${exemptPower} W some clauses do not apply. The limit is used all the same.`;
  return [{ code: 'exemption-possible', message }];
}

function amperes(current: number): string {
  return formatQuantity(current, 'A', { digits: 4, rounding: 'nearest' });
}
