import { atPath, requireChoice, requirePositive } from '../checks/index.js';
import { loadImpedance } from '../circuit/index.js';
import { impedanceMagnitudeFormula } from '../working/formulas/circuit.js';
import {
  contactCapacitanceFormula,
  contactResistanceFormula,
  padReactanceFormula,
  padResistanceFormula,
} from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import { finiteResult } from './finite-result.js';
import { type PadReading, requirePad, type SplitPad, type WholeContact } from './pad.js';

/** A part of the circuit in series, in ohms. */
export interface PadPart {
  readonly resistance: number;
  /** Negative: capacitive. */
  readonly reactance: number;
}

/** Impedance of a split electrode at one frequency, in ohms. */
export interface PadImpedance extends PadPart {
  /** What each contact shows in series. */
  readonly contacts: readonly [PadPart, PadPart];
  /** Magnitude. */
  readonly impedance: number;
  /** What the monitor sees of it: magnitude or resistive part. */
  readonly seen: number;
  readonly working: readonly Step[];
}

/**
 * What a monitor sees of a split neutral electrode: two contacts, each a resistance with a capacitance across it, and the
 * tissue in series. A part of the foil that has come off raises the impedance of its contact in proportion.
 *
 * A model with one resistance and one capacitance a contact: a real contact has no sharp values, and they differ with
 * frequency. For what the output meets, ask at its own frequency.
 *
 * @param pad Contacts with the part of each foil in contact, and tissue
 * @param reading Frequency and kind of reading
 * @returns Impedance in parts and as a whole, what the monitor sees, steps
 * @throws CalculationError `wrong-count`, `not-a-number`, `not-positive`, `negative`, `not-a-fraction`, `unknown-choice`,
 * `result-out-of-range`
 * @source Impedance of R and C for a sinusoidal quantity
 * @accuracy Within 8 units in the last place
 * @example
 * ```ts
 * import { padImpedance } from 'esu-limits/monitor';
 * const contact = { resistance: 40, capacitance: 4e-9 };
 * const reading = { frequency: 80e3, reads: 'magnitude' } as const;
 * padImpedance({ contacts: [contact, contact], tissue: 10 }, reading).seen.toFixed(2); // → "89.71"
 * padImpedance({ contacts: [contact, { ...contact, area: 0.5 }], tissue: 10 }, reading).seen.toFixed(2); // → "129.58"
 * ```
 */
export function padImpedance(pad: SplitPad, reading: PadReading): PadImpedance {
  const [first, second] = requirePad(pad);
  requirePositive(reading.frequency, 'frequency');
  requireChoice(reading.reads, 'reads', ['magnitude', 'resistance']);
  const working: Step[] = [];
  const parts = [
    contactPart(first, 'first foil', reading.frequency, working),
    contactPart(second, 'second foil', reading.frequency, working),
  ] as const;
  const [one, two] = parts;
  const R_t = pad.tissue;
  const resistance = one.resistance + two.resistance + R_t;
  const reactance = one.reactance + two.reactance;
  const impedance = Math.hypot(resistance, reactance);
  const resistances = { R_1: one.resistance, R_2: two.resistance, R_t };
  working.push(
    step(padResistanceFormula, 'resistance in series', resistances, resistance),
    step(padReactanceFormula, 'reactance in series', { X_1: one.reactance, X_2: two.reactance }, reactance),
    step(impedanceMagnitudeFormula, 'magnitude of the impedance', { R: resistance, X: reactance }, impedance),
  );
  const seen = reading.reads === 'magnitude' ? impedance : resistance;
  return finiteResult({ resistance, reactance, contacts: parts, impedance, seen, working });
}

/** What a contact shows in series: less area means more resistance and less capacitance. */
function contactPart(contact: WholeContact, foil: string, frequency: number, working: Step[]): PadPart {
  const { resistance: R, capacitance: C, area: a } = contact;
  const [R_a, C_a] = [R / a, C * a];
  working.push(
    step(contactResistanceFormula, `${foil}: contact resistance`, { R, a }, R_a),
    step(contactCapacitanceFormula, `${foil}: contact capacitance`, { C, a }, C_a),
  );
  const part = atPath(foil, () => loadImpedance({ resistance: R_a, parallelCapacitance: C_a, frequency }));
  // Magnitude, phase and power factor of the single contact are of no use here.
  working.push(...part.working.slice(0, 4).map((made) => ({ ...made, label: `${foil}: ${made.label}` })));
  return { resistance: part.resistance, reactance: part.reactance };
}
