import fc from 'fast-check';
import { compareSweep, explainReading, loadCurve, regimeCurve } from '../../../src/curve/index.js';
import { cubic, cubicLog, logPosition, position } from '../../../src/curve/interpolant.js';
import { curvePoints, power, valueBetween } from '../../generators.js';
import type { Twins } from './twin.js';

/** Two knots, loads apart by 1 % at least, in the symbols of the formulas. */
const knots = curvePoints({ maximum: 2 }).map(([low, high]) => ({
  R1: low!.load,
  P1: low!.power,
  R2: high!.load,
  P2: high!.power,
}));

/** Positions from both ends. */
const positions = valueBetween(0, 1).map((t) => ({ t, u: 1 - t }));

/** Slopes of a monotone cubic: up to three times the secant, in its direction. */
const slopesFor = (secant: number): fc.Arbitrary<{ m1: number; m2: number }> =>
  fc.tuple(valueBetween(0, 3), valueBetween(0, 3)).map(([a, b]) => ({ m1: a * secant, m2: b * secant }));

const linearCubic = fc
  .tuple(knots, positions)
  .chain(([ends, where]) =>
    slopesFor((ends.P2 - ends.P1) / (ends.R2 - ends.R1)).map((slopes) => ({ ...ends, ...where, ...slopes })),
  );
const logCubic = fc
  .tuple(knots, valueBetween(0, 1))
  .chain(([ends, t]) =>
    slopesFor(Math.log(ends.P2 / ends.P1) / Math.log(ends.R2 / ends.R1)).map((slopes) => ({ ...ends, t, ...slopes })),
  );
const places = fc
  .tuple(knots, valueBetween(0, 1))
  .map(([{ R1, R2 }, share]) => ({ R: R1 + (R2 - R1) * share, Ra: R1, Rb: R2 }));

/** Beyond the upper end of two points whose secant has the slope that the formula is given. */
const beyond = fc.record({
  R1: valueBetween(50, 500),
  P1: power(),
  R: valueBetween(501, 2000),
  m: valueBetween(-1.5, 1.5),
});

export const twins: Twins = {
  'curve-exponent': {
    inputs: knots,
    fast: ({ R1, P1, R2, P2 }) => {
      const curve = loadCurve([
        { load: R1!, power: P1! },
        { load: R2!, power: P2! },
      ]);
      return explainReading(curve, (R1! + R2!) / 2).working[0]!.value;
    },
  },
  'curve-slope': {
    inputs: knots,
    fast: ({ R1, P1, R2, P2 }) => {
      const points = [
        { load: R1!, power: P1! },
        { load: R2!, power: P2! },
      ];
      return explainReading(loadCurve(points, { interpolation: 'linear' }), (R1! + R2!) / 2).working[0]!.value;
    },
  },
  'curve-power-law': {
    inputs: beyond,
    // The point below is placed on the same law, so that the curve continued has the exponent m.
    fast: ({ R, R1, P1, m }) =>
      loadCurve(
        [
          { load: R1! / 2, power: P1! / 2 ** m! },
          { load: R1!, power: P1! },
        ],
        { outside: 'end-stretch' },
      ).powerAt(R!),
  },
  'curve-line': {
    inputs: beyond.map(({ m, ...rest }) => ({ ...rest, m: (Math.abs(m) * rest.P1) / rest.R1 / 2 })),
    fast: ({ R, R1, P1, m }) =>
      loadCurve(
        [
          { load: R1! / 2, power: P1! - (m! * R1!) / 2 },
          { load: R1!, power: P1! },
        ],
        { interpolation: 'linear', outside: 'end-stretch' },
      ).powerAt(R!),
  },
  'curve-position': { inputs: places, fast: ({ R, Ra, Rb }) => position(R!, Ra!, Rb!) },
  'curve-log-position': { inputs: places, fast: ({ R, Ra, Rb }) => logPosition(R!, Ra!, Rb!) },
  'curve-monotone-cubic': {
    inputs: linearCubic,
    fast: ({ R1, P1, m1, R2, P2, m2, t, u }) => cubic(P1!, P2!, R2! - R1!, m1!, m2!, t!, u!),
  },
  'curve-monotone-cubic-log': {
    inputs: logCubic,
    fast: ({ R1, P1, m1, R2, P2, m2, t }) =>
      P1! * Math.exp(cubicLog(Math.log(P2! / P1!), Math.log(R2! / R1!), m1!, m2!, t!)),
  },
  'curve-three-regimes': {
    fast: ({ R, I, P_max, V }) => regimeCurve({ power: P_max!, currentLimit: I!, voltageLimit: V! }).powerAt(R!),
  },
  'curve-current-and-power': {
    fast: ({ R, I, P_max }) => regimeCurve({ power: P_max!, currentLimit: I! }).powerAt(R!),
  },
  'curve-power-and-voltage': {
    fast: ({ R, P_max, V }) => regimeCurve({ power: P_max!, voltageLimit: V! }).powerAt(R!),
  },
  'curve-sweep-deviation': {
    fast: ({ P, P_ref }) => {
      const flat = loadCurve([
        { load: 100, power: P_ref! },
        { load: 500, power: P_ref! },
      ]);
      return compareSweep(flat, [{ load: 200, power: P! }], 1).rows[0]!.deviation;
    },
  },
};
