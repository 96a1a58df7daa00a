import { requireFraction, requirePositive } from '../checks/index.js';

/** A duty cycle, which is above 0 and at most 1, or an error. */
export function requireDutyCycle(value: number): number {
  requireFraction(value, 'dutyCycle');
  return requirePositive(value, 'dutyCycle');
}
