import type { Columns } from './columns-of.js';
import type { CurvePoint, LoadInterval } from './curve.js';
import type { Interpolant } from './interpolant.js';

/** The point of the largest power; of several, the one at the lowest load. Each stretch is monotone, so it is a knot. */
export function highestPoint({ loads, powers }: Columns): CurvePoint {
  const power = powers.reduce((a, b) => Math.max(a, b));
  return { load: loads[powers.indexOf(power)]!, power };
}

/** All loads inside the curve at which it has a power, ascending; flat stretches as intervals. */
export function loadsAtPower(inner: Interpolant, power: number): Required<LoadInterval>[] {
  const { loads, powers } = inner;
  const found: Required<LoadInterval>[] = [];
  powers.forEach((here, i) => {
    const next = powers[i + 1];
    const crosses = here !== power && next !== undefined && next !== power && here < power !== next < power;
    if (here !== power && !crosses) return;
    const load = crosses ? crossing(inner, i, power) : loads[i]!;
    // A flat stretch joins its ends; two crossings may share a number at the bottom of a narrow valley.
    const before = found.at(-1);
    const joins = before !== undefined && (before.to >= load || (!crosses && powers[i - 1] === power));
    if (joins) found.pop();
    found.push({ from: joins ? before.from : load, to: load });
  });
  return found;
}

/** The load of a monotone stretch at which the power is nearest to `power`, by halving down to neighbouring numbers. */
function crossing(inner: Interpolant, i: number, power: number): number {
  let low = inner.loads[i]!;
  let high = inner.loads[i + 1]!;
  const rises = inner.powers[i]! < power;
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) break;
    if (inner.power(i, middle) < power === rises) low = middle;
    else high = middle;
  }
  const off = (load: number): number => Math.abs(inner.power(i, load) - power);
  return off(low) < off(high) ? low : high;
}
