import { CalculationError, type Fault } from './calculation-error.js';

/** A path inside another: `outputs[0]` and `points[1].load` become `outputs[0].points[1].load`. */
export function joinPath(prefix: string, path: string): string {
  if (path === '' || prefix === '') return prefix + path;
  return path.startsWith('[') ? prefix + path : `${prefix}.${path}`;
}

/** Runs `work`; an error that leaves it names its place inside the larger document. */
export function atPath<T>(prefix: string, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    const faults: Fault[] = error.faults.map((fault) => ({ ...fault, path: joinPath(prefix, fault.path) }));
    throw new CalculationError(faults[0] as Fault, faults.slice(1));
  }
}
