import { studentTSurvival } from './student-t-survival.js';

/** Probability that Student's t is at most t, with full relative accuracy in the lower tail. */
export function studentTCdf(t: number, degreesOfFreedom: number): number {
  return studentTSurvival(-t, degreesOfFreedom);
}
