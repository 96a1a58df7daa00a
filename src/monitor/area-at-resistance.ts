import { fail, requireChoice, requirePositive } from '../checks/index.js';
import { areaFactorFormula, remainingAreaFormula } from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import { finiteResult } from './finite-result.js';
import type { PadReading, SplitPad } from './pad.js';
import { padImpedance } from './pad-impedance.js';

/** Which foil comes off, and what the monitor then sees. */
export interface AreaQuestion extends PadReading {
  /** What the monitor sees, in ohms: for example its upper limit. */
  readonly seen: number;
  /** The foil that loses contact. */
  readonly foil: 'first' | 'second' | 'both';
}

/** How much of a foil is left when the monitor sees a resistance. */
export interface AreaAtResistance {
  /** Area that is left, as a fraction of the area in contact now; above 1 where the monitor sees more already. */
  readonly remaining: number;
  /** Area that is lost by then, as a fraction of the area in contact now; negative where `remaining` is above 1. */
  readonly lost: number;
  readonly working: readonly Step[];
}

/**
 * How much of the contact of a split electrode is lost when the monitor sees a given resistance.
 *
 * The impedance of a contact goes with the reciprocal of its area: resistance up, capacitance down, their product kept.
 * It says when a monitor would notice, not what is safe for a patient.
 *
 * @param pad The electrode as it is now
 * @param question What the monitor sees then, which foil comes off, frequency and kind of reading
 * @returns Area left and lost, steps
 * @throws CalculationError as `padImpedance`; `out-of-range` (the rest of the circuit alone shows as much)
 * @source Impedance of R and C for a sinusoidal quantity; its reciprocal is proportional to the area
 * @accuracy 12 digits, fewer where `seen` is hardly more than the rest of the circuit shows
 * @example
 * ```ts
 * import { areaAtResistance } from 'esu-limits/monitor';
 * const pad = { contacts: [{ resistance: 20 }, { resistance: 20 }], tissue: 10 } as const;
 * const reading = { frequency: 80e3, reads: 'magnitude', foil: 'first' } as const;
 * areaAtResistance(pad, { ...reading, seen: 110 }).remaining.toFixed(6); // → "0.250000"
 * ```
 */
export function areaAtResistance(pad: SplitPad, question: AreaQuestion): AreaAtResistance {
  const { seen: T, foil, reads } = question;
  const now = padImpedance(pad, question);
  requirePositive(T, 'seen');
  requireChoice(foil, 'foil', ['first', 'second', 'both']);
  const [first, second] = now.contacts;
  const none = { resistance: 0, reactance: 0 };
  const moving = foil === 'both' ? [first, second] : [foil === 'first' ? first : second];
  const kept = foil === 'both' ? none : foil === 'first' ? second : first;
  const isPlain = reads === 'resistance';
  const R_b = moving.reduce((sum, { resistance }) => sum + resistance, 0);
  const X_b = isPlain ? 0 : moving.reduce((sum, { reactance }) => sum + reactance, 0);
  const R_a = pad.tissue + kept.resistance;
  const X_a = isPlain ? 0 : kept.reactance;
  const excess = T * T - R_a * R_a - X_a * X_a;
  if (!(excess > 0)) {
    fail('out-of-range', 'seen', T, `must be more than the rest of the circuit shows, ${Math.hypot(R_a, X_a)} ohm`);
  }
  const mixed = R_a * R_b + X_a * X_b;
  const q = excess / (mixed + Math.sqrt(mixed * mixed + (R_b * R_b + X_b * X_b) * excess));
  const remaining = 1 / q;
  return finiteResult({
    remaining,
    lost: 1 - remaining,
    working: [
      ...now.working,
      step(areaFactorFormula, 'factor by which the impedance of the contact grows', { T, R_a, X_a, R_b, X_b }, q),
      step(remainingAreaFormula, 'area that is left', { q }, remaining),
    ],
  });
}
