import { requirePositive } from '../checks/index.js';
import { type Quantity, requireQuantity } from '../circuit/index.js';
import { toleranceAboveFormula, toleranceBelowFormula } from '../working/formulas/band.js';
import { type Step, step } from '../working/index.js';
import type { Band } from './band.js';
import { checkQuantityBand } from './convert-band.js';
import type { NominalQuestion } from './nominal-question.js';
import { nominalRange } from './nominal-range.js';
import { notebook } from './notebook.js';
import type { Sides } from './tolerance.js';

/** A nominal that explains a band, and what the band then allows. */
export interface ImpliedNominal {
  /** Power in watts, rms current in amperes, rms voltage in volts. */
  readonly nominal: Readonly<Record<Quantity, number>>;
  /** Relative tolerance of the printed limits around that nominal, in current; negative where it lies outside them. */
  readonly toleranceInCurrent: Sides;
  /** The same in power. */
  readonly toleranceInPower: Sides;
  /** Whether one nominal explains both limits. */
  readonly consistent: boolean;
  /** All nominals that the printed limits allow: with a resolution, and where there are any. */
  readonly interval?: Readonly<Record<Quantity, Required<Band>>>;
  /** Where no nominal explains both limits: how far apart the nearest two are, in the quantity of the hypothesis. */
  readonly gap?: number;
  readonly working: readonly Step[];
}

/** Relative distance within which two nominals are one: the rounding of the arithmetic. */
const sameNominal = 1e-12;

/**
 * The nominal that a given band implies under a stated hypothesis, and the tolerance that the band then has.
 * A known tolerance can contradict the limits: then `consistent` is false, and the nominal is the middle of the gap.
 *
 * @param band Band as published, limits 0 or more; both sides for the symmetric and geometric hypotheses
 * @param question Quantity and load of the band, hypothesis, resolution of the printed limits
 * @returns Nominal, interval of nominals, implied tolerances, working
 * @throws CalculationError `wrong-count` (a limit is missing), `limit-negative`, `band-reversed`, `unknown-choice`,
 * `not-positive`, `not-a-number`, `out-of-range`, and those of a bad tolerance
 * @source Definition of the tolerance; Ohm's law and Joule's law
 * @accuracy Within 4 units in the last place of the nominal
 * @example
 * ```ts
 * import { impliedNominal } from 'esu-limits';
 * const band = { lower: 0.4, upper: 0.6 };
 * const { nominal } = impliedNominal(band, { quantity: 'current', load: 500, hypothesis: 'symmetric-in-current' });
 * nominal; // → { "power": 125, "current": 0.5, "voltage": 250 }
 * ```
 */
export function impliedNominal(band: Band, question: NominalQuestion): ImpliedNominal {
  const quantity = requireQuantity(question.quantity, 'quantity');
  const notes = notebook(requirePositive(question.load, 'load'));
  if (question.resolution !== undefined) requirePositive(question.resolution, 'resolution');
  const { lower, upper } = checkQuantityBand(band);
  const range = nominalRange(band, question, notes);
  const { lowest, highest } = range;
  const isConsistent = lowest - highest <= sameNominal * lowest;

  const inAll = (value: number, which: string): Record<Quantity, number> => {
    const convert = (to: Quantity): number => notes.convert(value, range.in, to, which, `${which} ${to}`);
    return { power: convert('power'), current: convert('current'), voltage: convert('voltage') };
  };
  const nominal = inAll(range.nominal, 'nominal');
  const impliedTolerance = (x: number, end: 'lower' | 'upper', to: Quantity): number => {
    const N = nominal[to];
    const limit = notes.convert(x, quantity, to, end, `${end} limit of ${to}`);
    const [formula, side, r] =
      end === 'lower'
        ? [toleranceBelowFormula, 'below', (N - limit) / N]
        : [toleranceAboveFormula, 'above', (limit - N) / N];
    const label = `implied tolerance ${side} nominal, in ${to}`;
    return notes.add(step(formula, label, { N, x: limit }, r, { symbol: `r_${side}` }));
  };
  const sidesIn = (to: Quantity): Sides => ({
    ...(lower === undefined ? {} : { below: impliedTolerance(lower, 'lower', to) }),
    ...(upper === undefined ? {} : { above: impliedTolerance(upper, 'upper', to) }),
  });
  const toleranceInCurrent = sidesIn('current');
  const toleranceInPower = sidesIn('power');
  const found = { nominal, toleranceInCurrent, toleranceInPower, consistent: isConsistent };
  if (!isConsistent) return { ...found, gap: lowest - highest, working: notes.working };
  if (question.resolution === undefined) return { ...found, working: notes.working };
  const least = inAll(lowest, 'lowest');
  const greatest = inAll(Math.max(lowest, highest), 'highest');
  const between = (to: Quantity): Required<Band> => ({ lower: least[to], upper: greatest[to] });
  const interval = { power: between('power'), current: between('current'), voltage: between('voltage') };
  return { ...found, interval, working: notes.working };
}
