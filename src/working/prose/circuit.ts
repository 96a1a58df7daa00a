import type { Prose } from './prose.js';

/** Prose of the formulas of circuit/, by formula identifier. */
export const circuitProse: Readonly<Record<string, Prose>> = {
  'current-from-power': {
    title: 'Current in a load from its power',
    meanings: { I: 'rms current in the load', P: 'power in the load', R: 'resistance of the load' },
  },
};
