import { atPath, requireNonNegative, requirePositive } from '../checks/index.js';
import { formatQuantity } from '../units/index.js';
import type { Caution, Step } from '../working/index.js';
import { leakageCautions } from './cautions.js';
import { type LeadCapacitance, type LeadOnMetal, leadCapacitance } from './lead-capacitance.js';
import { strayFromLeakage } from './stray-from-leakage.js';

/** A leakage that is to be explained. */
export interface LeakageHintInput {
  /** Leakage in the measuring resistor with the leads as they lay, in amperes rms, 0 or more. */
  readonly current: number;
  /** Its limit, in amperes rms, greater than 0. */
  readonly limit: number;
  /** Rms voltage to earth of the conductor that couples, in volts, greater than 0. */
  readonly voltage: number;
  /** Carrier frequency, in hertz, greater than 0. */
  readonly frequency: number;
  /** In ohms, greater than 0; 200 unless stated. */
  readonly measuringResistance?: number;
  /** A lead that lies on metal, where its build is known. */
  readonly lead?: LeadOnMetal;
  /** Leakage with the leads lifted clear of metal, in amperes rms, where that was measured. */
  readonly liftedCurrent?: number;
}

/**
 * What a leakage points to.
 *
 * - `within-limit`: nothing to look for
 * - `lift-and-repeat`: a lead that lies on metal could give it
 * - `lead`: with the leads lifted it is within the limit
 * - `lead-and-fault`: the leads add to it, and without them it is still beyond the limit
 * - `look-for-fault`: the leads do not explain it
 */
export type LeakageHintWord = 'within-limit' | 'lift-and-repeat' | 'lead' | 'lead-and-fault' | 'look-for-fault';

/** Where to look first: a hint, never a verdict. */
export interface LeakageHint {
  readonly hint: LeakageHintWord;
  /** The hint in words, with its figures. */
  readonly text: string;
  /** Stray capacitance that would give the leakage, in farads; absent where none could, or nothing leaks. */
  readonly strayCapacitance?: number;
  /** Stray capacitance that would bring the leakage to its limit, in farads; absent where none could. */
  readonly strayAtLimit?: number;
  /** Bounds of the lead's capacitance, in farads, where its build is stated. */
  readonly leadCapacitance?: { readonly lower: number; readonly upper: number };
  readonly assumptions: readonly string[];
  readonly cautions: readonly Caution[];
  readonly working: readonly Step[];
}

/**
 * Tells by figures whether a leakage beyond its limit may come from a lead that lies on metal, or points to a fault.
 *
 * @param input Leakage, limit, output voltage, carrier; the lead's build and the leakage with lifted leads where known
 * @returns Hint, the capacitances behind it, assumptions, cautions and steps
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `out-of-range`, `result-out-of-range`
 * @source Ohm's law for R and C in series; electrostatics of a cylinder over a plane
 * @example
 * ```ts
 * import { leakageHint } from 'esu-limits/leakage';
 * const found = { current: 0.18, limit: 0.15, voltage: 300, frequency: 500e3 };
 * const lead = { length: 3, conductorDiameter: 1e-3, insulationDiameter: 3e-3, relativePermittivity: 3 };
 * leakageHint({ ...found, lead }).hint; // → "lift-and-repeat"
 * leakageHint({ ...found, lead: { ...lead, length: 0.3 } }).hint; // → "look-for-fault"
 * leakageHint({ ...found, liftedCurrent: 0.11 }).hint; // → "lead"
 * ```
 */
export function leakageHint(input: LeakageHintInput): LeakageHint {
  const { voltage, frequency, measuringResistance = 200 } = input;
  const current = requireNonNegative(input.current, 'current');
  const limit = requirePositive(input.limit, 'limit');
  requirePositive(voltage, 'voltage');
  requirePositive(frequency, 'frequency');
  requirePositive(measuringResistance, 'measuringResistance');
  if (input.liftedCurrent !== undefined) requireNonNegative(input.liftedCurrent, 'liftedCurrent');
  const strayFor = (I: number) =>
    I > 0 && voltage / I > measuringResistance
      ? strayFromLeakage({ voltage, current: I, frequency, measuringResistance })
      : undefined;
  const stray = strayFor(current);
  const atLimit = strayFor(limit);
  const { lead: stated } = input;
  const lead = stated === undefined ? undefined : atPath('lead', () => leadCapacitance(stated));
  const { hint, text } = hintOf({ ...input, current, limit, measuringResistance }, stray?.capacitance, lead);
  return {
    hint,
    text,
    ...(stray === undefined ? {} : { strayCapacitance: stray.capacitance }),
    ...(atLimit === undefined ? {} : { strayAtLimit: atLimit.capacitance }),
    ...(lead === undefined ? {} : { leadCapacitance: { lower: lead.lower, upper: lead.upper } }),
    assumptions: lead === undefined ? circuitAssumptions : [...circuitAssumptions, leadAssumption],
    cautions: leakageCautions,
    working: [...(stray?.working ?? []), ...(atLimit?.working ?? []), ...(lead?.working ?? [])],
  };
}

const circuitAssumptions = [
  'The output is a sinusoid at the carrier: harmonics pass a capacitance more easily, and then less of it is enough.',
  'The conductor that couples has the stated voltage to earth.',
] as const;

const leadAssumption =
  'One lead lies straight along flat earthed metal: a coil, more metal or a second lead have a larger capacitance.';

interface Words {
  readonly hint: LeakageHintWord;
  readonly text: string;
}

/** The leakage with lifted leads goes before every estimate. */
function hintOf(
  { current, limit, liftedCurrent, voltage, measuringResistance }: LeakageHintInput & { measuringResistance: number },
  stray: number | undefined,
  lead: LeadCapacitance | undefined,
): Words {
  if (current <= limit) {
    const text = `${amperes(current)} is within the limit of ${amperes(limit)}. It is still hazardous to touch.`;
    return { hint: 'within-limit', text };
  }
  if (liftedCurrent !== undefined) return hintOfLifting(current, limit, liftedCurrent);
  if (stray === undefined) {
    const text = `No capacitance gives ${amperes(current)}: the measuring resistor alone lets ${amperes(voltage / measuringResistance)} through. Look for a path that conducts, or check the voltage.`;
    return { hint: 'look-for-fault', text };
  }
  const needed = `A stray capacitance of ${farads(stray)} would give ${amperes(current)}.`;
  if (lead === undefined) {
    const text = `${needed} Lift the leads clear of all metal and of each other and repeat before looking for a fault.`;
    return { hint: 'lift-and-repeat', text };
  }
  const has = `A lead lying on metal as described has ${farads(lead.lower)} to ${farads(lead.upper)}`;
  if (stray > lead.upper) {
    return { hint: 'look-for-fault', text: `${needed} ${has}: it does not explain the leakage. Look for a fault.` };
  }
  const reach = stray <= lead.lower ? 'it alone could give the leakage' : 'it could give the leakage';
  return { hint: 'lift-and-repeat', text: `${needed} ${has}: ${reach}. Lift it clear of all metal and repeat.` };
}

function hintOfLifting(current: number, limit: number, lifted: number): Words {
  if (lifted >= current) {
    const text = `Lifting the leads lowered nothing: ${amperes(lifted)} after ${amperes(current)}. Look for a fault.`;
    return { hint: 'look-for-fault', text };
  }
  const fell = `Lifting the leads brought ${amperes(current)} down to ${amperes(lifted)}`;
  if (lifted <= limit) {
    const text = `${fell}, within the limit of ${amperes(limit)}: how the leads lay made the difference. Lay them as the procedure asks and measure again.`;
    return { hint: 'lead', text };
  }
  const text = `${fell}, which is still beyond the limit of ${amperes(limit)}: the leads add to it, and there is a fault to look for.`;
  return { hint: 'lead-and-fault', text };
}

function amperes(current: number): string {
  return formatQuantity(current, 'A', { digits: 3, rounding: 'nearest' });
}

function farads(capacitance: number): string {
  return formatQuantity(capacitance, 'F', { digits: 3, rounding: 'nearest' });
}
