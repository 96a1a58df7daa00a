import { requirePositive, type Warning } from '../checks/index.js';
import { heatingFactor } from '../circuit/index.js';
import { heatingFactorFormula } from '../working/formulas/circuit-effects.js';
import { type Caution, type SourceId, type Standing, type Step, step } from '../working/index.js';
import { electrodeCautions } from './cautions.js';

/** Figures of the thermal test of a neutral electrode. */
export interface ThermalTestFigures {
  /** Marked patient weights that the figures hold for, in words. */
  readonly markedFor: string;
  /** Rms test current, in amperes. */
  readonly current: number;
  /** Length of the test, in seconds. */
  readonly duration: number;
  /** Highest permitted rise of temperature, in kelvins. */
  readonly maximumRise: number;
  readonly standing: Standing;
  readonly source: SourceId;
}

/** Figures for one marked weight, with what follows from them. */
export interface ThermalTest extends ThermalTestFigures {
  /** Heating factor of the test, in A²·s. */
  readonly heatingFactor: number;
  readonly cautions: readonly Caution[];
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

const common = { duration: 60, maximumRise: 6 } as const;
const recalled = { standing: 'from memory', source: 'iec-60601-2-2-memory' } as const;

/** Thermal tests by the patient weight that an electrode is marked for. */
export const thermalTests: Readonly<Record<'small' | 'medium' | 'large', ThermalTestFigures>> = {
  small: { markedFor: 'below 5 kg', current: 0.35, ...common, ...recalled },
  medium: { markedFor: '5 kg to 15 kg', current: 0.5, ...common, ...recalled },
  large: { markedFor: 'above 15 kg', current: 0.7, ...common, standing: 'published', source: 'aami-hf18' },
};

/**
 * Figures of the thermal test of a neutral electrode, by the patient weight that the electrode is marked for.
 *
 * @param markedWeight Weight that the maker marks the electrode for, in kilograms, greater than 0: not that of a patient
 * @returns Test current, duration, highest rise, heating factor, standing, cautions
 * @throws CalculationError `not-a-number`, `not-positive`
 * @source ANSI/AAMI HF18 as cited in published abstracts; the smaller currents from memory: check your copy of the standard
 * @example
 * ```ts
 * import { thermalTest } from 'esu-limits/electrode';
 * const adult = thermalTest(70);
 * [adult.current, adult.duration, adult.heatingFactor.toFixed(1), adult.standing]; // → [0.7, 60, "29.4", "published"]
 * const small = thermalTest(4);
 * [small.current, small.heatingFactor.toFixed(2), small.standing]; // → [0.35, "7.35", "from memory"]
 * ```
 */
export function thermalTest(markedWeight: number): ThermalTest {
  requirePositive(markedWeight, 'markedWeight');
  const figures = thermalTests[markedWeight < 5 ? 'small' : markedWeight <= 15 ? 'medium' : 'large'];
  const { current, duration, markedFor, standing } = figures;
  const factor = heatingFactor({ current, duration });
  const message = `The test current for electrodes marked for ${markedFor} is from memory: check your copy of the standard.`;
  return {
    ...figures,
    heatingFactor: factor,
    cautions: electrodeCautions,
    warnings: standing === 'from memory' ? [{ code: 'limit-from-memory', message }] : [],
    working: [step(heatingFactorFormula, 'heating factor of the test', { I: current, t: duration }, factor)],
  };
}
