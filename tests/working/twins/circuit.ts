import { currentFromPower } from '../../../src/circuit/index.js';
import type { Twins } from './twin.js';

export const twins: Twins = {
  'current-from-power': { fast: ({ P, R }) => currentFromPower(P!, R!) },
};
