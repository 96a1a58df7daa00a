import { requirePositive, requirePositiveResult } from '../../checks/index.js';
import { halfPermeability } from './straight-wire-inductance.js';

/** A coil of one even layer, such as a wire-wound resistor. */
export interface Solenoid {
  /** Mean diameter of the turns, in metres, greater than 0. */
  readonly diameter: number;
  /** Length of the winding, in metres, greater than 0. */
  readonly length: number;
  /** Number of turns, greater than 0. */
  readonly turns: number;
}

/**
 * Inductance of a coil of one layer, as a current sheet: why a wire-wound resistor is no load for radio frequency.
 *
 * @param coil Diameter, length, turns
 * @returns Inductance, in henries
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source L. Lorenz (1879), with the coefficient that H. Nagaoka tabulated (1909)
 * @accuracy Within 1e-13 (relative) for lengths of a thousandth to a thousand diameters
 * @example
 * ```ts
 * import { solenoidInductance } from 'esu-limits';
 * (solenoidInductance({ diameter: 5.4e-3, length: 9e-3, turns: 100 }) * 1e6).toFixed(2); // → "25.22"
 * ```
 */
export function solenoidInductance(coil: Solenoid): number {
  return reckonSolenoid(coil).inductance;
}

/** The inductance, and the elliptic integrals that it follows from: (K − E)/k² and E − k. */
export function reckonSolenoid({ diameter, length, turns }: Solenoid): {
  inductance: number;
  difference: number;
  rest: number;
} {
  requirePositive(diameter, 'diameter');
  requirePositive(length, 'length');
  requirePositive(turns, 'turns');
  const sheet = (Math.PI * diameter * halfPermeability * Math.PI * turns * diameter * turns) / (2 * length);
  const diagonal = Math.hypot(diameter, length);
  const k = diameter / diagonal;
  const other = length / diagonal;
  const { second, differenceOverSquare: difference } = ellipticIntegrals(k, other);
  const rest = other > 0.1 ? second - k : aboveOne(other) + (other * other) / (1 + k);
  // The share of the field of an endless coil that a coil of this length has.
  const nagaoka = (4 / (3 * Math.PI * other)) * (other * other * difference + rest);
  return { inductance: requirePositiveResult(sheet * nagaoka, 'inductance'), difference, rest };
}

/** E − 1 near k = 1, where the difference itself would lose its digits (NIST DLMF 19.12.2). */
function aboveOne(other: number): number {
  const square = other * other;
  let factor = square / 2;
  let d = 2 * Math.LN2 - Math.log(other);
  let sum = 0;
  for (let m = 0; m < 12; m++) {
    const pair = (2 * m + 1) * (2 * m + 2);
    sum += factor * (d - 1 / pair);
    factor *= ((m + 0.5) * (m + 1.5) * square) / ((m + 2) * (m + 1));
    d -= 2 / pair;
  }
  return sum;
}

/** The complete elliptic integral E, and (K − E)/k², by the arithmetic–geometric mean. */
function ellipticIntegrals(k: number, other: number): { second: number; differenceOverSquare: number } {
  let a = 1;
  let b = other;
  // Σ 2^(n−1)·c_n² with c_0 = k, divided by k².
  let sum = 0.5;
  for (let power = 1; a - b > 1e-15 * a && power < 1024; power *= 2) {
    const c = (a - b) / 2;
    const mean = (a + b) / 2;
    b = Math.sqrt(a * b);
    a = mean;
    sum += (power * (c / k) * c) / k;
  }
  const first = Math.PI / (2 * a);
  return { second: first * (1 - sum * k * k), differenceOverSquare: first * sum };
}
