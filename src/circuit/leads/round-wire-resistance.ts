import { requirePositive, requirePositiveResult } from '../../checks/index.js';
import { add, type Complex, complex, divide, multiply } from '../complex.js';
import { type ConductorAtFrequency, skinDepth } from './skin-depth.js';

/** A round wire at a frequency, alone. */
export interface RoundWire extends ConductorAtFrequency {
  /** In metres, greater than 0. */
  readonly diameter: number;
  /** In metres, greater than 0. */
  readonly length: number;
}

/** Resistance of a round wire. */
export interface WireResistance {
  /** At the frequency, in ohms. */
  readonly resistance: number;
  /** For direct current, in ohms. */
  readonly directCurrentResistance: number;
  /** The one over the other, 1 or more. */
  readonly ratio: number;
}

/**
 * Resistance of a round wire at radio frequency, by the exact distribution of the current over its section.
 *
 * @param wire Resistivity, frequency, diameter, length
 * @returns Resistance at the frequency and for direct current, in ohms, and their ratio
 * @throws CalculationError `not-a-number`, `not-positive`, `result-out-of-range`
 * @source Impedance of a round wire by Bessel functions, Z' = ρm·I₀(ma)/(2πa·I₁(ma)), m = (1 + j)/δ
 * @accuracy Ratio within 1e-13 (relative) against 30 digits, for radii up to 10⁴ skin depths
 * @example
 * ```ts
 * import { roundWireResistance } from 'esu-limits';
 * const wire = { resistivity: 1.68e-8, frequency: 500e3, diameter: 1e-3, length: 2 };
 * roundWireResistance(wire).ratio.toFixed(4); // → "2.9765"
 * ```
 */
export function roundWireResistance(wire: RoundWire): WireResistance {
  return reckonRoundWire(wire).seen;
}

/** The resistances, and what they follow from: radius, skin depth, and I₀(z)/I₁(z) with z = (1 + j)·a/δ. */
export function reckonRoundWire(wire: RoundWire): {
  seen: WireResistance;
  a: number;
  delta: number;
  quotient: Complex;
} {
  const a = requirePositive(wire.diameter, 'diameter') / 2;
  const length = requirePositive(wire.length, 'length');
  const delta = skinDepth(wire);
  const directCurrentResistance = requirePositiveResult(
    ((wire.resistivity / a / a) * length) / Math.PI,
    'directCurrentResistance',
  );
  const depths = a / delta;
  const quotient = besselQuotient(complex(depths, depths));
  // Z'/R' = (z/2)·I₀(z)/I₁(z)
  const ratio = Math.max((depths / 2) * (quotient.re - quotient.im), 1);
  const resistance = requirePositiveResult(directCurrentResistance * ratio, 'resistance');
  return { seen: { resistance, directCurrentResistance, ratio }, a, delta, quotient };
}

/** I₀(z)/I₁(z) by the continued fraction of neighbouring orders, from far behind; for large |z| by its asymptotic series. */
function besselQuotient(z: Complex): Complex {
  const size = Math.hypot(z.re, z.im);
  if (size > 500) {
    // 1 + 1/(2z) + 3/(8z²) + 3/(8z³) + 63/(128z⁴): what follows is below 1e-13.
    const inverse = divide(complex(1), z);
    let sum = complex(63 / 128);
    for (const coefficient of [3 / 8, 3 / 8, 1 / 2, 1]) sum = add(complex(coefficient), multiply(inverse, sum));
    return sum;
  }
  // I(n−1)/I(n) = 2n/z + 1/(I(n)/I(n+1))
  const start = Math.ceil(size) + 60;
  const double = divide(complex(2), z);
  let quotient = multiply(double, complex(start + 1));
  for (let n = start; n >= 1; n--) quotient = add(multiply(double, complex(n)), divide(complex(1), quotient));
  return quotient;
}
