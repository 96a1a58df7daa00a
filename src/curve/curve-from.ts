import { fail, requirePositive } from '../checks/index.js';
import { currentFromPower, voltageFromPower } from '../circuit/index.js';
import type { Curve } from './curve.js';

/** A positive number far from the ends of the number range, so that no product of a few of them leaves it. */
export function requireMagnitude(value: number, path: string): number {
  requirePositive(value, path);
  return value > 1e-100 && value < 1e100 ? value : fail('out-of-range', path, value, 'must be from 1e-100 to 1e100');
}

/** How a kind of curve answers: what the shared reading functions need to know of it. */
export interface Reader {
  /** Loads from `lowest` to `highest` are known to be good. */
  readonly lowest: number;
  readonly highest: number;
  /** Refuses a load, or lets it pass. */
  readonly check: (load: number, path: string) => void;
  /** Power at a load that passed. */
  readonly power: (load: number) => number;
}

/** The reading functions that every curve has. */
export function curveFrom({ lowest, highest, check, power }: Reader): Omit<Curve, 'maximum' | 'loadsAt'> {
  const powerAt = (load: number): number => {
    if (!(typeof load === 'number' && load >= lowest && load <= highest)) check(load, 'load');
    return power(load);
  };
  return {
    powerAt,
    currentAt: (load) => currentFromPower(powerAt(load), load),
    voltageAt: (load) => voltageFromPower(powerAt(load), load),
    powersAt: (loads, out = new Float64Array(loads.length)) => {
      const { length } = loads;
      if (out.length !== length) fail('wrong-count', 'out', out.length, `must have ${length} rows, as loads`);
      for (let i = 0; i < length; i++) {
        const load = loads[i]!;
        if (!(load >= lowest && load <= highest)) check(load, `loads[${i}]`);
      }
      for (let i = 0; i < length; i++) out[i] = power(loads[i]!);
      return out;
    },
  };
}
