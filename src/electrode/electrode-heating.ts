import { atPath, fail, requirePositive, requireResult } from '../checks/index.js';
import { type ElectrodeCurrent, heatingFactor } from '../circuit/index.js';
import {
  durationToFigureFormula,
  heatingFactorAddedFormula,
  heatingFactorLeftFormula,
  partOfHeatingFigureFormula,
} from '../working/formulas/electrode.js';
import { type Caution, type Step, step } from '../working/index.js';
import { electrodeCautions } from './cautions.js';

/** Activations through a neutral electrode, and the figure that they are compared with. */
export interface ElectrodeHeatingInput {
  /** Rms currents and durations, in the order in which they were; at least one. */
  readonly activations: readonly ElectrodeCurrent[];
  /** Heating factor to compare with, in A²·s, greater than 0: the maker's, or one of `heatingFigures`. */
  readonly figure: number;
  /** Rms current of a next activation, in amperes, greater than 0, for the duration that is left; none unless stated. */
  readonly nextCurrent?: number;
}

/** Heating factor of a row of activations. */
export interface ElectrodeHeating {
  /** Sum of I²·t, in A²·s. */
  readonly heatingFactor: number;
  /** Sum over figure: 1 is on it. */
  readonly share: number;
  /** What is left up to the figure, in A²·s: 0 where it is reached. */
  readonly remaining: number;
  /** Duration of the next activation that reaches the figure, in seconds; absent where no next current was stated. */
  readonly remainingDuration?: number;
  readonly assumptions: readonly string[];
  readonly cautions: readonly Caution[];
  readonly working: readonly Step[];
}

/**
 * Heating factor of a row of activations through a neutral electrode, against a figure.
 *
 * No cooling between the activations is counted: the sum is never too low. Where a bench test is planned it tells after
 * which activation a figure is reached.
 *
 * @param input Activations, figure, current of a next activation
 * @returns Sum of I²·t, its share of the figure, what is left, cautions and steps
 * @throws CalculationError `wrong-count` (no activation), `not-a-number`, `negative`, `not-positive`, `result-out-of-range`
 * @source Definition of the heating factor
 * @accuracy Within n + 2 units in the last place for n activations
 * @example
 * ```ts
 * import { electrodeHeating, heatingFigures } from 'esu-limits/electrode';
 * const activations = [{ current: 0.5, duration: 30 }, { current: 0.6, duration: 20 }];
 * const figure = heatingFigures['thermal-test'].heatingFactor;
 * const heating = electrodeHeating({ activations, figure, nextCurrent: 0.7 });
 * [heating.heatingFactor.toFixed(1), heating.share.toFixed(3)]; // → ["14.7", "0.500"]
 * heating.remainingDuration?.toFixed(1); // → "30.0"
 * ```
 */
export function electrodeHeating({ activations, figure, nextCurrent }: ElectrodeHeatingInput): ElectrodeHeating {
  if (activations.length === 0) fail('wrong-count', 'activations', activations, 'must hold at least one activation');
  const H_max = requirePositive(figure, 'figure');
  const working: Step[] = [];
  let H = 0;
  activations.forEach((activation, i) => {
    const added = atPath(`activations[${i}]`, () => heatingFactor(activation));
    const inputs = { H_0: H, I: activation.current, t: activation.duration };
    H = requireResult(H + added, 'heatingFactor');
    working.push(step(heatingFactorAddedFormula, `heating factor after activation ${i + 1}`, inputs, H));
  });
  const share = requireResult(H / H_max, 'share');
  const remaining = Math.max(0, H_max - H);
  working.push(step(partOfHeatingFigureFormula, 'heating factor over figure', { H, H_max }, share));
  if (H < H_max) working.push(step(heatingFactorLeftFormula, 'left up to the figure', { H_max, H }, remaining));
  const result = {
    heatingFactor: H,
    share,
    remaining,
    assumptions: ['No cooling between the activations is counted.'],
    cautions: electrodeCautions,
  };
  if (nextCurrent === undefined) return { ...result, working };
  const I = requirePositive(nextCurrent, 'nextCurrent');
  const remainingDuration = requireResult(remaining / I / I, 'remainingDuration');
  const label = 'next activation that reaches the figure';
  const last = step(durationToFigureFormula, label, { H_r: remaining, I }, remainingDuration);
  return { ...result, remainingDuration, working: [...working, last] };
}
