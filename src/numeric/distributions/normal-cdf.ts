import { normalSurvival } from './normal-survival.js';

/** Probability that a standard normal variable is at most z, with full relative accuracy in the lower tail. */
export function normalCdf(z: number): number {
  return normalSurvival(-z);
}
