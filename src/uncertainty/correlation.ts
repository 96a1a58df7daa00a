import { CalculationError, fail, requireFinite } from '../checks/index.js';
import { choleskyFactor } from '../numeric/index.js';

/** The correlation coefficient of two inputs, by their names. */
export interface Correlation {
  readonly between: readonly [string, string];
  /** From −1 to 1. */
  readonly coefficient: number;
}

/** A full correlation matrix over named inputs. */
export interface CorrelationMatrix {
  readonly names: readonly string[];
  readonly rows: readonly (readonly number[])[];
}

/**
 * The correlation matrix of inputs in a given order, from pairs.
 * Pairs that are not named are uncorrelated. The matrix must be one that random quantities can have.
 *
 * @throws CalculationError `unknown-choice`, `duplicate`, `out-of-range`, `not-positive-semidefinite`
 */
export function correlationMatrix(names: readonly string[], pairs: readonly Correlation[]): CorrelationMatrix {
  const rows = names.map((_, i) => names.map((_, j) => (i === j ? 1 : 0)));
  const seen = new Set<string>();
  pairs.forEach(({ between, coefficient }, k) => {
    const [i, j] = between.map((name) => names.indexOf(name)) as [number, number];
    const path = `correlations[${k}]`;
    if (i < 0 || j < 0)
      fail('unknown-choice', `${path}.between`, between.join(', '), `must be inputs: ${names.join(', ')}`);
    if (i === j) fail('out-of-range', `${path}.between`, between.join(', '), 'must be two different inputs');
    const key = `${Math.min(i, j)},${Math.max(i, j)}`;
    if (seen.has(key)) fail('duplicate', `${path}.between`, between.join(', '), 'must name each pair once');
    seen.add(key);
    requireFinite(coefficient, `${path}.coefficient`);
    if (coefficient < -1 || coefficient > 1) {
      fail('out-of-range', `${path}.coefficient`, coefficient, 'must be from -1 to 1');
    }
    (rows[i] as number[])[j] = coefficient;
    (rows[j] as number[])[i] = coefficient;
  });
  if (pairs.length > 0) requireSemidefinite(rows);
  return { names, rows };
}

function requireSemidefinite(rows: readonly (readonly number[])[]): void {
  try {
    choleskyFactor(rows, 'correlations');
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    throw new CalculationError({ ...error.faults[0], path: 'correlations' } as CalculationError['faults'][number]);
  }
}
