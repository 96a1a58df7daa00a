import { requireChoice, requirePositive, requirePositiveResult } from '../../checks/index.js';

/** μ0/2π, in henries per metre: the value before 2019, from which today's differs by less than 1e-9. */
export const halfPermeability = 2e-7;

/** A straight round wire. */
export interface StraightWire {
  /** In metres, greater than 0. */
  readonly length: number;
  /** In metres, greater than 0. */
  readonly diameter: number;
  /**
   * Where the current flows: all over the section (`uniform`), as at low frequency, or at its `surface`, as at radio
   * frequencies, which is taken unless stated.
   */
  readonly current?: 'surface' | 'uniform';
}

/**
 * Inductance of a straight round wire alone, its return far away.
 *
 * @param wire Length, diameter, where the current flows
 * @returns Inductance, in henries
 * @throws CalculationError `not-a-number`, `not-positive`, `unknown-choice`, `result-out-of-range`
 * @source E. B. Rosa, The self and mutual inductances of linear conductors, Bulletin of the Bureau of Standards 4 (1908)
 * @accuracy Within 1e-14 (relative) for lengths of a diameter and more
 * @example
 * ```ts
 * import { straightWireInductance } from 'esu-limits';
 * (straightWireInductance({ length: 1, diameter: 1e-3 }) * 1e6).toFixed(4); // → "1.4589"
 * ```
 */
export function straightWireInductance({ length, diameter, current = 'surface' }: StraightWire): number {
  const l = requirePositive(length, 'length');
  const r = requirePositive(diameter, 'diameter') / 2;
  requireChoice(current, 'current', ['surface', 'uniform']);
  // √(l² + r²) − r without the difference: l²/(√(l² + r²) + r).
  const external = l * Math.asinh(l / r) - (l / (Math.hypot(l, r) + r)) * l;
  const internal = current === 'uniform' ? l / 4 : 0;
  return requirePositiveResult(halfPermeability * (external + internal), 'inductance');
}
