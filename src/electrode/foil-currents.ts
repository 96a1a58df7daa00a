import { atPath, fail, requirePositive, requirePositiveResult, requireResult } from '../checks/index.js';
import { powerFromCurrentFormula } from '../working/formulas/circuit.js';
import {
  currentConcentrationFormula,
  currentDensityFormula,
  foilCurrentFormula,
  phaseBetweenFoilsFormula,
} from '../working/formulas/electrode.js';
import { type Caution, type Step, step } from '../working/index.js';
import { electrodeCautions } from './cautions.js';
import { type ContactImpedance, contactImpedance, type FoilContact } from './contact-impedance.js';
import { currentDensity } from './current-density.js';

/** A foil of a split neutral electrode. */
export interface Foil extends FoilContact {
  /** Area in contact, in square metres, greater than 0, for the density; none unless stated. */
  readonly area?: number;
}

/** A current that two foils share. */
export interface FoilCurrentsInput {
  /** Rms current of both together, in amperes, greater than 0. */
  readonly current: number;
  /** In hertz, greater than 0. */
  readonly frequency: number;
  readonly foils: readonly [Foil, Foil];
}

/** What one foil carries. */
export interface FoilCurrent {
  /** Rms, in amperes. */
  readonly current: number;
  /** Current over that of both together: where the foils differ in phase the two shares add to more than 1. */
  readonly share: number;
  /** Power in the contact and in what is in series with it, in watts. */
  readonly power: number;
  /** Mean current density, in amperes per square metre; absent where no area was stated. */
  readonly density?: number;
  /** Magnitude of the contact impedance, in ohms. */
  readonly impedance: number;
}

/** How two foils share a current. */
export interface FoilCurrents {
  readonly foils: readonly [FoilCurrent, FoilCurrent];
  /** Phase of the first current ahead of the second, in radians. */
  readonly phaseBetween: number;
  /** Larger current over half of the whole: 1 is shared evenly and in phase, 2 is all on one foil. Heat rises with its square. */
  readonly concentration: number;
  readonly assumptions: readonly string[];
  readonly cautions: readonly Caution[];
  readonly working: readonly Step[];
}

/**
 * How the two foils of a split neutral electrode share the return current, by their contact impedances.
 *
 * @param input Current, frequency, contacts of both foils; their areas for the density
 * @returns Current, share, power and density of each foil, phase between them, concentration, cautions and steps
 * @throws CalculationError `wrong-count` (other than two foils), `missing-member`, `not-a-number`, `not-positive`, `negative`, `result-out-of-range`
 * @source Current divider of two impedances
 * @accuracy Currents within 7 units in the last place, powers within 14
 * @example
 * ```ts
 * import { foilCurrents } from 'esu-limits/electrode';
 * const foil = { resistance: 30, capacitance: 10e-9, seriesResistance: 40, area: 0.006 };
 * const even = foilCurrents({ current: 0.6, frequency: 500e3, foils: [foil, foil] });
 * [even.foils[0].current, even.concentration, even.foils[0].density]; // → [0.3, 1, 50]
 * const worn = { ...foil, resistance: 300, capacitance: 1e-9 };
 * const { foils, concentration } = foilCurrents({ current: 0.6, frequency: 500e3, foils: [foil, worn] });
 * [foils[0].share.toFixed(3), foils[1].share.toFixed(3), concentration.toFixed(3)]; // → ["0.821", "0.191", "1.641"]
 * ```
 */
export function foilCurrents({ current, frequency, foils }: FoilCurrentsInput): FoilCurrents {
  const I = requirePositive(current, 'current');
  requirePositive(frequency, 'frequency');
  if (!Array.isArray(foils) || foils.length !== 2) {
    fail('wrong-count', 'foils', foils, 'must be two: a split electrode has two foils');
  }
  const contacts = [0, 1].map((i) =>
    atPath(`foils[${i}]`, () => contactImpedance(foils[i as 0 | 1], frequency)),
  ) as unknown as readonly [ContactImpedance, ContactImpedance];
  const [first, second] = contacts;
  const both = Math.hypot(first.resistance + second.resistance, first.reactance + second.reactance);
  const sum = requirePositiveResult(both, 'impedance');
  const carried = [0, 1].map((i) => shareOf(i as 0 | 1, I, sum, foils, contacts));
  const [one, two] = carried as [SharedCurrent, SharedCurrent];
  const [R_1, X_1, R_2, X_2] = [first.resistance, first.reactance, second.resistance, second.reactance];
  const phaseBetween = second.phase - first.phase;
  const larger = Math.max(one.result.current, two.result.current);
  const concentration = (2 * larger) / I;
  return {
    foils: [one.result, two.result],
    phaseBetween,
    concentration,
    assumptions: [
      'The current is a sinusoid at the stated frequency.',
      'What the contacts have in common, behind both foils, does not change how they share.',
    ],
    cautions: electrodeCautions,
    working: [
      ...first.working,
      ...second.working,
      ...one.working,
      ...two.working,
      step(phaseBetweenFoilsFormula, 'phase of the first current ahead', { X_1, R_1, X_2, R_2 }, phaseBetween),
      step(currentConcentrationFormula, 'larger current over half of the whole', { I_l: larger, I }, concentration),
    ],
  };
}

interface SharedCurrent {
  readonly result: FoilCurrent;
  readonly working: readonly Step[];
}

function shareOf(
  i: 0 | 1,
  I: number,
  sum: number,
  foils: readonly [Foil, Foil],
  contacts: readonly [ContactImpedance, ContactImpedance],
): SharedCurrent {
  const own = contacts[i];
  const other = contacts[i === 0 ? 1 : 0];
  const name = i === 0 ? 'first foil' : 'second foil';
  const symbol = (letter: string) => ({ symbol: `${letter}_${i + 1}` });
  const share = other.impedance / sum;
  const current = requirePositiveResult(I * share, 'current');
  const R = own.resistance;
  const power = requireResult(current * R * current, 'power');
  const inputs = { I, R_f: R, X_f: own.reactance, R_o: other.resistance, X_o: other.reactance };
  const working = [
    step(foilCurrentFormula, `current of the ${name}`, inputs, current, symbol('I')),
    step(powerFromCurrentFormula, `power of the ${name}`, { I: current, R }, power, symbol('P')),
  ];
  const result = { current, share, power, impedance: own.impedance };
  const { area } = foils[i];
  if (area === undefined) return { result, working };
  const density = atPath(`foils[${i}]`, () => currentDensity({ current, area }));
  const label = `mean current density of the ${name}`;
  const last = step(currentDensityFormula, label, { I: current, A_e: area }, density, symbol('J'));
  return { result: { ...result, density }, working: [...working, last] };
}
