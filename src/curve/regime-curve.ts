import { fail } from '../checks/index.js';
import type { Curve, CurvePoint, Regime } from './curve.js';
import { curveFrom, requireMagnitude } from './curve-from.js';

/** Limits of a generator's regulation: the power limit and one or both of the others. */
export interface RegimeLimits {
  /** Power that the generator does not exceed, in watts. */
  readonly power: number;
  /** Rms current that it does not exceed, in amperes; unlimited unless stated. */
  readonly currentLimit?: number;
  /** Rms voltage that it does not exceed, in volts; unlimited unless stated. */
  readonly voltageLimit?: number;
}

/** The load at which one regime gives way to the next. */
export interface Corner extends CurvePoint {
  /** Regime at lower loads. */
  readonly below: Regime;
  /** Regime at higher loads. */
  readonly above: Regime;
}

/** Power against load of a generator that limits current, power and voltage. */
export interface RegimeCurve extends Curve {
  /** The limits, as given. */
  readonly limits: RegimeLimits;
  /** Where the regimes meet, at ascending loads; one corner where the power limit is never reached. */
  readonly corners: readonly Corner[];
}

/**
 * The three-regime model of a generator: P(R) = min(I²·R, P, V²/R).
 *
 * The corner loads are P/I² and V²/P; where V·I is below P, the power limit is never reached and the one corner is
 * V/I. `maximum` is at the lowest load with full power; without a current limit, at the highest.
 *
 * @param limits Power in watts; rms current in amperes, rms voltage in volts, or both
 * @returns The curve: limits, corners and the functions that read it, for every load greater than 0
 * @throws CalculationError `wrong-count`, `not-a-number`, `not-positive`, `out-of-range`
 * @source Ohm's law and Joule's law
 * @accuracy Two roundings: within 2 units in the last place
 * @example
 * ```ts
 * import { regimeCurve } from 'esu-limits';
 * const curve = regimeCurve({ power: 300, currentLimit: 2, voltageLimit: 600 });
 * curve.powerAt(50); // → 200
 * curve.corners.map(({ load }) => load); // → [75, 1200]
 * curve.maximum; // → { load: 75, power: 300 }
 * curve.loadsAt(150); // → [{ from: 37.5, to: 37.5 }, { from: 2400, to: 2400 }]
 * ```
 */
export function regimeCurve(limits: RegimeLimits): RegimeCurve {
  const { power: P, currentLimit, voltageLimit } = limits;
  requireMagnitude(P, 'power');
  if (currentLimit === undefined && voltageLimit === undefined) {
    fail('wrong-count', 'limits', limits, 'must state currentLimit, voltageLimit or both');
  }
  const I = currentLimit === undefined ? Infinity : requireMagnitude(currentLimit, 'currentLimit');
  const V = voltageLimit === undefined ? Infinity : requireMagnitude(voltageLimit, 'voltageLimit');
  const power = (load: number): number => Math.min(I * I * load, P, (V * V) / load);

  const corners: Corner[] = [];
  if (I * V < P) {
    corners.push({ load: V / I, power: V * I, below: 'constant-current', above: 'constant-voltage' });
  } else {
    if (I < Infinity) corners.push({ load: P / I / I, power: P, below: 'constant-current', above: 'constant-power' });
    if (V < Infinity) corners.push({ load: (V / P) * V, power: P, below: 'constant-power', above: 'constant-voltage' });
  }
  const first = corners[0]!;
  const last = corners.at(-1)!;

  return {
    limits: { ...limits },
    corners,
    maximum: { load: first.load, power: first.power },
    loadsAt: (wanted) => {
      requireMagnitude(wanted, 'power');
      if (wanted > first.power) return [];
      if (wanted === first.power) {
        return [{ from: I < Infinity ? first.load : 0, ...(V < Infinity ? { to: last.load } : {}) }];
      }
      return [wanted / I / I, (V / wanted) * V]
        .filter((load) => load > 0 && load < Infinity)
        .map((load) => ({ from: load, to: load }));
    },
    ...curveFrom({
      lowest: 1e-99,
      highest: 1e99,
      check: requireMagnitude,
      power,
    }),
  };
}
