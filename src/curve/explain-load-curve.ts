import { columnsOf } from './columns-of.js';
import type { Explained } from './curve.js';
import { explainAlong, explainInside } from './explain-stretch.js';
import { endOf, type Interpolant, interpolant } from './interpolant.js';
import { kindOfStretch } from './kind-of-stretch.js';
import type { LoadCurve } from './load-curve.js';

/** A sheet of readings asks the same few curves many times: each is prepared once, and goes with its curve. */
const prepared = new WeakMap<LoadCurve, Interpolant>();

function interpolantOf(curve: LoadCurve): Interpolant {
  const known = prepared.get(curve);
  if (known !== undefined) return known;
  const made = interpolant(columnsOf(curve.points), curve.interpolation);
  prepared.set(curve, made);
  return made;
}

/** Stretch, steps and warnings of a power that a load curve has at a load. */
export function explainLoadCurve(curve: LoadCurve, load: number, power: number): Explained {
  const inner = interpolantOf(curve);
  const { from, to } = curve.loads;
  const index = inner.locate(Math.min(Math.max(load, from), to));
  const stretch = { index, from: inner.loads[index]!, to: inner.loads[index + 1]! };
  if (load >= from && load <= to) {
    return {
      stretch: { ...stretch, kind: kindOfStretch(inner, index) },
      working: explainInside(inner, index, load, power),
      warnings: [],
    };
  }
  const message = `${load} ohm lies outside the loads of the points, ${from} to ${to} ohm: the curve was continued (${curve.outside}).`;
  return {
    stretch: { ...stretch, kind: 'outside' },
    working: [explainAlong(inner, load, ...endOf(inner, load, curve.outside === 'end-power'), power)],
    warnings: [{ code: 'load-outside-curve', message }],
  };
}
