import { CalculationError, type Fault } from '../../src/checks/index.js';

/** Every fault of the coded error that some work ends in; none if it does not. */
export function faultsOf(work: () => unknown): readonly Fault[] {
  try {
    work();
  } catch (error) {
    if (error instanceof CalculationError) return error.faults;
    throw error;
  }
  return [];
}
