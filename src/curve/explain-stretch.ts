import {
  cubicFormula,
  cubicLogFormula,
  exponentFormula,
  lineFormula,
  logPositionFormula,
  positionFormula,
  powerLawFormula,
  slopeFormula,
} from '../working/formulas/curve.js';
import { type Step, step } from '../working/index.js';
import { type Interpolant, logPosition, position } from './interpolant.js';

/** The steps from the two points of a stretch to the power at a load between them. */
export function explainInside(inner: Interpolant, i: number, load: number, power: number): Step[] {
  const { logarithmic, loads, powers, slopes } = inner;
  const [R, R1, R2, P1, P2] = [load, loads[i]!, loads[i + 1]!, powers[i]!, powers[i + 1]!];
  if (!inner.cubic) {
    const m = inner.secants[i]!;
    const slope = step(
      logarithmic ? exponentFormula : slopeFormula,
      `slope from ${R1} to ${R2} ohm`,
      { R1, P1, R2, P2 },
      m,
    );
    return [slope, explainAlong(inner, load, P1 < P2 ? i : i + 1, m, power)];
  }
  const label = `power between ${R1} and ${R2} ohm`;
  const knots = { R1, P1, m1: slopes[i]!, R2, P2, m2: slopes[i + 1]! };
  const from = { R, Ra: R1, Rb: R2 };
  if (logarithmic) {
    const t = logPosition(R, R1, R2);
    return [
      step(logPositionFormula, `position from ${R1} ohm`, from, t),
      step(cubicLogFormula, label, { ...knots, t }, power),
    ];
  }
  const t = position(R, R1, R2);
  const u = position(R, R2, R1);
  return [
    step(positionFormula, `position from ${R1} ohm`, from, t),
    step(positionFormula, `position from ${R2} ohm`, { R, Ra: R2, Rb: R1 }, u, { symbol: 'u' }),
    step(cubicFormula, label, { ...knots, t, u }, power),
  ];
}

/** The step from a point along a slope to the power at a load. */
export function explainAlong(inner: Interpolant, load: number, knot: number, m: number, power: number): Step {
  const R1 = inner.loads[knot]!;
  return step(
    inner.logarithmic ? powerLawFormula : lineFormula,
    `power from the point at ${R1} ohm`,
    { R: load, R1, P1: inner.powers[knot]!, m },
    power,
  );
}
