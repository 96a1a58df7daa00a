import { atPath, fail, requireNonNegative, requirePositive } from '../checks/index.js';
import { leastSquares } from '../numeric/index.js';
import { displayErrorFormula, displayResidualFormula } from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import { type BoxAccuracy, checkAccuracy, offBy } from './box.js';
import { finiteResult } from './finite-result.js';

/** A resistance that was set and what the display showed, in ohms. */
export interface DisplayReadingPair {
  readonly set: number;
  readonly displayed: number;
}

/** Readings of the display, with what blurs them. */
export interface DisplayFitInput {
  /** At least two rows of different set values; leave open circuits and over-range out. */
  readonly rows: readonly DisplayReadingPair[];
  /** One step of the display, in ohms. */
  readonly resolution: number;
  /** Accuracy of the box; taken as exact unless stated. */
  readonly accuracy?: BoxAccuracy;
}

/** What the errors of the display have in common. */
export type DisplayFault = 'none' | 'constant' | 'factor' | 'constant-or-factor' | 'constant-and-factor' | 'irregular';

/** A straight line through readings of the display, and what it hints at. */
export interface DisplayFit {
  /** Slope: 1 of a display without error. */
  readonly gain: number;
  /** What the line shows at 0, in ohms: 0 of a display without error. */
  readonly offset: number;
  /** Standard errors of both from the residuals; `null` with two rows, which leave none. */
  readonly gainStandardError: number | null;
  readonly offsetStandardError: number | null;
  readonly rows: readonly DisplayFitRow[];
  readonly fault: DisplayFault;
  /** Ohms by which every row is off, where that explains all: lead and fixture, or the zero of the display. */
  readonly constant: number | null;
  /** Factor by which every row is off, where that explains all. */
  readonly factor: number | null;
  /** The hint in a sentence. */
  readonly message: string;
  readonly working: readonly Step[];
}

/** One row of the fit, in ohms. */
export interface DisplayFitRow extends DisplayReadingPair {
  /** Displayed less set. */
  readonly error: number;
  /** Displayed less the line. */
  readonly residual: number;
  /** Half a step of the display and the limits of the box: errors up to this mean nothing. */
  readonly blur: number;
}

/**
 * Gain and offset of a resistance display, and what its errors have in common: a constant (lead and fixture that
 * were not counted, a zero that is off) or a factor.
 *
 * A constant or a factor is hinted at only where one alone explains every row to within half a step of the display and
 * the limits of the box. It is a hint for the search, not a finding.
 *
 * @param input Rows, step of the display, accuracy of the box
 * @returns Line, residuals, hint, steps
 * @throws CalculationError `wrong-count`, `negative`, `not-positive`, `not-a-fraction`, `missing-member`, `singular` (all
 * set values alike), `result-out-of-range`
 * @source Least squares; the hint is arithmetic of limits
 * @accuracy As `leastSquares`: 13 digits of the coefficients on the set Norris of NIST StRD
 * @example
 * ```ts
 * import { displayFit } from 'esu-limits/monitor';
 * const rows = [{ set: 0, displayed: 3 }, { set: 50, displayed: 53 }, { set: 100, displayed: 103 }];
 * const { gain, offset, fault, constant } = displayFit({ rows, resolution: 1 });
 * [gain, offset, fault, constant]; // → [1, 3, "constant", 3]
 * ```
 */
export function displayFit({ rows, resolution, accuracy }: DisplayFitInput): DisplayFit {
  if (rows.length < 2) fail('wrong-count', 'rows', rows, 'must have at least two rows');
  rows.forEach(({ set, displayed }, i) => {
    requireNonNegative(set, `rows[${i}].set`);
    requireNonNegative(displayed, `rows[${i}].displayed`);
  });
  if (rows.every(({ set }) => set === rows[0]?.set)) {
    fail('singular', 'rows', rows, 'must have two different set values: one leaves the slope open');
  }
  requirePositive(resolution, 'resolution');
  if (accuracy !== undefined) checkAccuracy(accuracy, 'accuracy');
  const design = rows.map(({ set }) => [1, set]);
  const shown = rows.map(({ displayed }) => displayed);
  const { coefficients, standardErrors, degreesOfFreedom } = atPath('rows', () => leastSquares(design, shown));
  const [offset, gain] = coefficients as [number, number];
  const fitted = rows.map(({ set, displayed }): DisplayFitRow => {
    const blur = resolution / 2 + (accuracy === undefined ? 0 : offBy(accuracy, set));
    return { set, displayed, error: displayed - set, residual: displayed - (offset + gain * set), blur };
  });
  const errorOf = (i: number | null) => (degreesOfFreedom === 0 ? null : (standardErrors[i as number] as number));
  return finiteResult({
    gain,
    offset,
    gainStandardError: errorOf(1),
    offsetStandardError: errorOf(0),
    rows: fitted,
    ...hintOf(fitted),
    working: fitted.flatMap(({ set: x, displayed: y, error, residual }) => [
      step(displayErrorFormula, `error of the display at ${x} ohm`, { y, x }, error),
      step(displayResidualFormula, `rest after the line at ${x} ohm`, { y, a: offset, g: gain, x }, residual),
    ]),
  });
}

function hintOf(rows: readonly DisplayFitRow[]): Pick<DisplayFit, 'fault' | 'constant' | 'factor' | 'message'> {
  const constant = common(rows.map(({ error, blur }) => [error - blur, error + blur]));
  const factor = common(
    rows.map(({ set, displayed, blur }) => {
      if (set > 0) return [(displayed - blur) / set, (displayed + blur) / set];
      // At 0 a factor changes nothing: a display that is off there rules it out.
      return displayed <= blur ? [0, Number.POSITIVE_INFINITY] : [1, 0];
    }),
  );
  const isClean = rows.every(({ error, blur }) => Math.abs(error) <= blur * (1 + 1e-9));
  const fault = isClean
    ? 'none'
    : constant !== null
      ? factor !== null
        ? 'constant-or-factor'
        : 'constant'
      : factor !== null
        ? 'factor'
        : rows.every(({ residual, blur }) => Math.abs(residual) <= blur * (1 + 1e-9))
          ? 'constant-and-factor'
          : 'irregular';
  const isHinted = fault !== 'none';
  return { fault, constant: isHinted ? constant : null, factor: isHinted ? factor : null, message: messages[fault] };
}

/** The middle of what all ranges have in common, or nothing. */
function common(ranges: readonly (readonly number[])[]): number | null {
  const from = Math.max(...ranges.map(([low]) => low as number));
  const to = Math.min(...ranges.map(([, high]) => high as number));
  const middle = from / 2 + to / 2;
  return from <= to + 1e-9 * Math.abs(to) && Number.isFinite(middle) ? middle : null;
}

const messages: Readonly<Record<DisplayFault, string>> = {
  none: 'Every row is as close as display and box can tell.',
  constant:
    'Every row is off by about the same number of ohms: lead and fixture not counted, or the zero of the display.',
  factor: 'Every row is off by about the same factor: the adjustment of the display.',
  'constant-or-factor':
    'A constant or a factor would explain every row: read at values further apart, 0 ohm among them.',
  'constant-and-factor': 'A constant and a factor together explain every row; neither does alone.',
  irregular: 'No straight line explains every row: repeat the readings, check contacts and the values that were set.',
};
