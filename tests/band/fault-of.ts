import { CalculationError, type Fault } from '../../src/checks/index.js';

/** The first fault of the error that `work` ends in. */
export function faultOf(work: () => unknown): Fault {
  try {
    work();
  } catch (error) {
    if (error instanceof CalculationError) return error.faults[0] as Fault;
    throw error;
  }
  throw new Error('no error was thrown');
}
