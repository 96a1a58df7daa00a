import { permittedActivation, requiredPause } from '../circuit/index.js';
import type { LoadHeat } from './bench.js';
import type { Activation } from './plan.js';

/** Activation and pause that keep a load below its highest rise, where nothing shorter is stated. */
export function heatedActivation(heat: LoadHeat, power: number, stated: Activation): Activation {
  const { duration } = permittedActivation({ ...heat, power });
  if (duration === undefined) return stated;
  // Half of what a cold load takes: the whole would leave no finite pause.
  const longest = Math.min(stated.longest ?? Number.POSITIVE_INFINITY, duration / 2);
  const { pause } = requiredPause({ ...heat, power, duration: longest });
  return { longest, pause: Math.max(stated.pause ?? 0, pause) };
}
