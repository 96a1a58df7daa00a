import { CalculationError } from '../../src/checks/index.js';

/** Code and path of the error that a call throws; nothing where it throws none. */
export function faultOf(work: () => unknown): readonly [code: string, path: string] | undefined {
  try {
    work();
  } catch (error) {
    if (error instanceof CalculationError) return [error.code, error.path];
    throw error;
  }
  return undefined;
}
