import { fail, type Warning } from '../checks/index.js';
import { columnsOf } from './columns-of.js';
import type { CurvePoint, Regime } from './curve.js';
import type { RegimeLimits } from './regime-curve.js';

/** A point of the data with what the fit says of it. */
export interface FittedPoint extends CurvePoint {
  /** Regime in which the fit places the point. */
  readonly regime: Regime;
  /** Power of the fitted model at the load, in watts; absent where the regime is not determined. */
  readonly fitted?: number;
  /** Natural logarithm of power over fitted power: near 0 the relative deviation; absent with `fitted`. */
  readonly residual?: number;
}

/** A regime that the points do not determine. */
export interface UndeterminedRegime {
  readonly regime: Regime;
  /** Why, for a person. */
  readonly reason: string;
  /** What the points do say of its limit if they lie on the model: at least this, in amperes, watts or volts rms. */
  readonly atLeast: number;
}

/** The three-regime model fitted to points. */
export interface RegimeFit {
  /** The limits that the points determine; `regimeCurve` takes them where `power` and one other are among them. */
  readonly limits: Partial<RegimeLimits>;
  /** The regimes that they do not determine. */
  readonly undetermined: readonly UndeterminedRegime[];
  /** Every point, at ascending loads. */
  readonly points: readonly FittedPoint[];
  /** Root mean square of the residuals, with the degrees of freedom that the fit left; 0 when it left none. */
  readonly scatter: number;
  readonly warnings: readonly Warning[];
}

/** One way to share the points out among the regimes. */
interface Split {
  /** Logarithms of I², P and V²; infinite for a regime without points. */
  readonly levels: readonly number[];
  /** Number of regimes that have points. */
  readonly used: number;
  /** Sum of the squared residuals. */
  readonly squares: number;
  readonly score: number;
}

const regimes = ['constant-current', 'constant-power', 'constant-voltage'] as const;
const names = ['currentLimit', 'power', 'voltageLimit'] as const;
/** Exponent of the load in each regime. */
const slopes = [1, 0, -1] as const;
/** Whether the lower and the upper corner lie at a point. */
const ties = [
  [false, false],
  [true, false],
  [false, true],
  [true, true],
] as const;

/**
 * Fits the three-regime model, min(I²·R, P, V²/R), to points by least squares in the logarithm of power.
 *
 * Every way to share the points out among the regimes is tried, also with a corner at a point, so that the smallest
 * sum of squares is found without a starting value. A further regime is accepted only where it lowers the sum by
 * more than chance would (an F test at about 1 %). A limit is given only when two points or more lie on its regime,
 * within three times the scatter; otherwise the regime is listed as undetermined, and points in it are not judged.
 *
 * @param points Points with loads in ohms, rising strictly, and powers in watts; 2 to 200
 * @returns The limits that the points determine, the regimes that they do not, residuals, scatter
 * @throws CalculationError `wrong-type`, `wrong-count`, `not-a-number`, `not-positive`, `out-of-range`, `not-ascending`
 * @source Ohm's law and Joule's law; least squares in log–log coordinates
 * @accuracy Points that lie on the model give its limits back within 1e-14
 * @example
 * ```ts
 * import { fitRegimes } from 'esu-limits';
 * const fit = fitRegimes([
 *   { load: 20, power: 80 },
 *   { load: 40, power: 160 },
 *   { load: 100, power: 200 },
 *   { load: 200, power: 200 },
 *   { load: 500, power: 200 },
 * ]);
 * fit.limits.currentLimit?.toFixed(9); // → "2.000000000"
 * fit.undetermined[0]?.regime; // → "constant-voltage"
 * ```
 */
export function fitRegimes(points: readonly CurvePoint[]): RegimeFit {
  const { loads, powers } = columnsOf(points);
  if (loads.length > 200) fail('wrong-count', 'points', points, 'must be 200 points or fewer');
  const x = loads.map((load) => Math.log(load));
  const y = powers.map((power) => Math.log(power));
  const { levels, used, squares } = bestSplit(x, y);

  const free = loads.length - used;
  const scatter = free > 0 ? Math.sqrt(squares / free) : 0;
  const near = Math.min(0.1, 3 * scatter + 1e-9);
  const lineAt = (k: number, i: number): number => levels[k]! + slopes[k]! * x[i]!;
  const modelAt = (i: number): number => Math.min(lineAt(0, i), lineAt(1, i), lineAt(2, i));
  const support = regimes.map(
    (_, k) =>
      [...y].filter((value, i) => Math.abs(value - lineAt(k, i)) <= near && lineAt(k, i) - modelAt(i) <= near).length,
  );
  const fitted = points.map(({ load, power }, i): FittedPoint => {
    const model = modelAt(i);
    const k = regimes.findIndex((_, index) => lineAt(index, i) === model);
    const point = { load, power, regime: regimes[k]! };
    return support[k]! < 2 ? point : { ...point, fitted: Math.exp(model), residual: y[i]! - model };
  });

  const limits: Record<string, number> = {};
  const undetermined: UndeterminedRegime[] = [];
  regimes.forEach((regime, k) => {
    // The levels are logarithms of I², P and V².
    const root = k === 1 ? 1 : 2;
    if (support[k]! >= 2) limits[names[k]!] = Math.exp(levels[k]! / root);
    else {
      undetermined.push({
        regime,
        reason: `${support[k] === 1 ? 'only one point lies' : 'no point lies'} on it, and two are needed`,
        atLeast: Math.exp(Math.max(...y.map((value, i) => value - slopes[k]! * x[i]!)) / root),
      });
    }
  });
  const worst = Math.expm1(Math.max(...y.map((value, i) => Math.abs(value - modelAt(i)))));
  const message = `A point deviates from the fitted model by ${Math.round(100 * worst)} % in power.`;
  return {
    limits,
    undetermined,
    points: fitted,
    scatter,
    warnings: worst > 0.1 ? [{ code: 'regimes-do-not-fit', message }] : [],
  };
}

/** The best way to share the points out: the first `i` to constant current, from `j` on to constant voltage. */
function bestSplit(x: Float64Array, y: Float64Array): Split {
  const count = x.length;
  const mean = (k: number, from: number, to: number): number => {
    let sum = 0;
    for (let i = from; i < to; i++) sum += y[i]! - slopes[k]! * x[i]!;
    return to > from ? sum / (to - from) : 0;
  };
  let best: Split = { levels: [], used: 0, squares: 0, score: Infinity };
  for (let i = 0; i <= count; i++) {
    for (let j = i; j <= count; j++) {
      const [low, middle, high] = [i, j - i, count - j];
      const used = Number(low > 0) + Number(middle > 0) + Number(high > 0);
      const [a, b, c] = [mean(0, 0, i), mean(1, i, j), mean(2, j, count)];
      // A corner may lie between two points, or, where that lowers the sum, at the point beside it.
      for (const [left, right] of ties) {
        if ((left && low === 0) || (right && high === 0)) continue;
        const xLeft = x[i]!;
        const xRight = x[Math.max(i, j - 1)]!;
        const weightLeft = left ? low : 0;
        const weightRight = right ? high : 0;
        const peak =
          (weightLeft * (a + xLeft) + middle * b + weightRight * (c - xRight)) / (weightLeft + middle + weightRight);
        const levels = [
          low === 0 ? Infinity : left ? peak - xLeft : a,
          middle === 0 ? Infinity : peak,
          high === 0 ? Infinity : right ? peak + xRight : c,
        ];
        let squares = 0;
        for (let k = 0; k < count; k++) {
          squares += (y[k]! - Math.min(levels[0]! + x[k]!, levels[1]!, levels[2]! - x[k]!)) ** 2;
        }
        // A further regime must lower the sum by a factor of exp(7.4/ν), ν the degrees of freedom that it leaves:
        // within a few percent the F test at 1 %; infinite where it leaves none. The addend keeps rounding from counting as an improvement.
        let score = Math.log(squares + count * 1e-26);
        for (let k = 2; k <= used; k++) score += 7.4 / (count - k);
        if (score < best.score) best = { levels, used, squares, score };
      }
    }
  }
  return best;
}
