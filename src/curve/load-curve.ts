import { fail, requireChoice } from '../checks/index.js';
import { columnsOf } from './columns-of.js';
import type { Curve, CurvePoint, LoadInterval } from './curve.js';
import { curveFrom, requireMagnitude } from './curve-from.js';
import { endOf, type Interpolation, interpolant } from './interpolant.js';
import { highestPoint, loadsAtPower } from './loads-at-power.js';

/**
 * What to do with a load outside the points.
 *
 * - `refuse`: an error
 * - `end-power`: the power of the end point is held
 * - `end-stretch`: the end stretch goes on, with the slope that it has at the end point
 */
export type OutsideRule = 'refuse' | 'end-power' | 'end-stretch';

/** How a load curve is read. */
export interface LoadCurveOptions {
  /** Between the points: `log-log` unless stated. */
  readonly interpolation?: Interpolation;
  /** Beyond the points: `refuse` unless stated. */
  readonly outside?: OutsideRule;
}

/** A published curve of power against load. */
export interface LoadCurve extends Curve {
  /** The points, as given. */
  readonly points: readonly CurvePoint[];
  /** How power is read between them. */
  readonly interpolation: Interpolation;
  /** What happens beyond them. */
  readonly outside: OutsideRule;
  /** Lowest and highest load of the points, in ohms. */
  readonly loads: Required<LoadInterval>;
  /** All loads between the end points at which the curve has this power in watts, ascending. */
  readonly loadsAt: (power: number) => readonly Required<LoadInterval>[];
}

/**
 * A curve of power against load through published points.
 *
 * A log–log stretch counts as constant current, power or voltage when its exponent is within 0.02 of 1, 0 or −1.
 * `maximum` and `loadsAt` speak of the loads between the end points, also where the curve is continued beyond them.
 *
 * @param points Points with loads in ohms, rising strictly, and powers in watts, greater than 0; two or more
 * @param options Interpolation between the points and rule beyond them
 * @returns The curve: its data and the functions that read it
 * @throws CalculationError `wrong-type`, `wrong-count`, `not-a-number`, `not-positive`, `out-of-range`,
 *   `not-ascending`, `unknown-choice`; from the reading functions also `load-outside-curve`
 * @source Points: the maker's published data. Cubics: F. N. Fritsch and J. Butland (1984)
 * @accuracy At a knot the published power itself; between, within 4e-15 of the exact interpolant for knots 1 % apart or more
 * @example
 * ```ts
 * import { loadCurve } from 'esu-limits';
 * const curve = loadCurve([
 *   { load: 100, power: 100 },
 *   { load: 300, power: 300 },
 *   { load: 600, power: 300 },
 * ]);
 * curve.powerAt(200); // → 200
 * curve.currentAt(400); // → 0.8660254037844386
 * curve.maximum; // → { load: 300, power: 300 }
 * curve.loadsAt(300); // → [{ from: 300, to: 600 }]
 * ```
 */
export function loadCurve(points: readonly CurvePoint[], options: LoadCurveOptions = {}): LoadCurve {
  const { interpolation = 'log-log', outside = 'refuse' } = options;
  requireChoice(interpolation, 'interpolation', ['log-log', 'monotone-cubic', 'monotone-cubic-log', 'linear']);
  requireChoice(outside, 'outside', ['refuse', 'end-power', 'end-stretch']);
  const inner = interpolant(columnsOf(points), interpolation);
  const { loads, locate, power: powerInside } = inner;
  const last = loads.length - 1;
  const from = loads[0]!;
  const to = loads[last]!;
  const isInside = (load: number): boolean => load >= from && load <= to;
  const power = (load: number): number =>
    isInside(load)
      ? powerInside(locate(load), load)
      : inner.along(...endOf(inner, load, outside === 'end-power'), load);

  return {
    points: points.map(({ load, power }) => ({ load, power })),
    interpolation,
    outside,
    loads: { from, to },
    maximum: highestPoint(inner),
    loadsAt: (wanted) => loadsAtPower(inner, requireMagnitude(wanted, 'power')),
    ...curveFrom({
      lowest: from,
      highest: to,
      power,
      check: (load, path) => {
        requireMagnitude(load, path);
        if (isInside(load)) return;
        const reached = outside === 'refuse' ? 0 : power(load);
        if (reached > 1e-100 && reached < 1e100) return;
        fail(
          'load-outside-curve',
          path,
          load,
          `must be from ${from} to ${to} ohm, the loads of the points`,
          outside === 'refuse'
            ? "To read beyond them, ask for outside: 'end-power' or 'end-stretch'."
            : 'The end stretch, continued, gives no power there.',
        );
      },
    }),
  };
}
