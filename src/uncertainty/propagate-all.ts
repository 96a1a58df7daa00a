import { fail } from '../checks/index.js';
import { type Correlation, type CorrelationMatrix, correlationMatrix } from './correlation.js';
import { differentiable } from './differentiation/differentiate-model.js';
import type { Model } from './differentiation/model.js';
import { checkInputs, type Propagated, type PropagateOptions, propagateChecked } from './propagate.js';
import type { UncertainInput } from './uncertain-input.js';

/** Several outputs of the same inputs. */
export interface PropagatedTogether {
  /** Each output by name. */
  readonly outputs: Readonly<Record<string, Propagated>>;
  /** Correlation of every pair of outputs; a pair in which one has no uncertainty has none. */
  readonly correlations: readonly Correlation[];
}

/**
 * Propagates uncertainty to several outputs of the same inputs, with the correlation that this makes between them.
 *
 * @param models Measurement models by the name of their output
 * @param inputs Inputs by name
 * @param options As `propagate`
 * @returns Every output with its budget, and the correlation of every pair
 * @throws CalculationError as `propagate`
 * @source JCGM 100:2008, F.1.2.3 and H.2
 * @example
 * ```ts
 * import { normalInput, propagateAll } from 'esu-limits/uncertainty';
 * const inputs = { a: normalInput({ value: 1, standardUncertainty: 1 }), b: normalInput({ value: 2, standardUncertainty: 1 }) };
 * const both = propagateAll({ sum: (x) => x.a + x.b, difference: (x) => x.a - x.b }, inputs);
 * both.correlations[0]?.coefficient.toFixed(6); // → "0.000000"
 * ```
 */
export function propagateAll<N extends string>(
  models: Readonly<Record<string, Model<N>>>,
  inputs: Readonly<Record<N, UncertainInput>>,
  options: PropagateOptions = {},
): PropagatedTogether {
  const names = checkInputs(inputs);
  const outputNames = Object.keys(models);
  if (outputNames.length === 0) fail('wrong-count', 'models', models, 'must hold at least one model');
  const given = options.correlations ?? [];
  const matrix = correlationMatrix(names, given);
  const outputs: Record<string, Propagated> = {};
  for (const output of outputNames) {
    const prepared = differentiable(models[output] as Model, names, inputs);
    outputs[output] = propagateChecked(
      prepared,
      names,
      inputs,
      given.length === 0 ? undefined : matrix,
      given,
      options,
    );
  }
  const correlations: Correlation[] = [];
  outputNames.forEach((first, i) => {
    for (const second of outputNames.slice(i + 1)) {
      const coefficient = correlationOf(outputs[first] as Propagated, outputs[second] as Propagated, matrix);
      if (coefficient !== undefined) correlations.push({ between: [first, second], coefficient });
    }
  });
  return { outputs, correlations };
}

function correlationOf(a: Propagated, b: Propagated, matrix: CorrelationMatrix): number | undefined {
  if (a.standardUncertainty === 0 || b.standardUncertainty === 0) return undefined;
  const x = a.contributions.map((row) => row.contribution / a.standardUncertainty);
  const y = b.contributions.map((row) => row.contribution / b.standardUncertainty);
  let total = 0;
  for (let i = 0; i < x.length; i++) {
    for (let j = 0; j < y.length; j++) {
      total += (x[i] as number) * (y[j] as number) * ((matrix.rows[i] as readonly number[])[j] as number);
    }
  }
  return Math.max(-1, Math.min(1, total));
}
