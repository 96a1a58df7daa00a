import type { Formula } from '../formula.js';

/** Formulas of the room circuit/. */
export const currentFromPowerFormula = {
  id: 'current-from-power',
  symbol: 'I',
  expression: 'sqrt(P / R)',
  unit: 'A',
  inputs: { P: 'W', R: 'ohm' },
  source: 'ohm-joule',
} as const satisfies Formula;
