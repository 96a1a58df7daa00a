import { fail } from '../../checks/index.js';
import { numberFunction } from '../differentiation/differentiate-model.js';
import type { Model } from '../differentiation/model.js';
import type { Sampler } from './sampler.js';

/** A function that fills an array with the model's values for the trials that the sampler drew last. */
export function trialRunner(model: Model, sampler: Sampler): (target: Float64Array, count: number) => void {
  const { names, columns } = sampler;
  const cursor = { trial: 0 };
  // The model sees one object whose members read the current trial: no object is made for a trial.
  const x = {} as Record<string, number>;
  names.forEach((name, i) => {
    const column = columns[i] as Float64Array;
    Object.defineProperty(x, name, { enumerable: true, get: () => column[cursor.trial] });
  });
  const f = numberFunction(model);
  const refuse = (y: unknown): never => {
    const draw = names.map((name, i) => `${name} = ${columns[i]?.[cursor.trial]}`).join(', ');
    return fail('function-not-finite', 'model', y, `must be a finite number at the draw ${draw}`);
  };
  return (target, count) => {
    try {
      for (cursor.trial = 0; cursor.trial < count; cursor.trial++) {
        const y = f(x);
        if (!(y - y === 0)) refuse(y);
        target[cursor.trial] = y;
      }
    } catch (error) {
      if (error instanceof RangeError && 'code' in error) throw error;
      refuse(String(error));
    }
  };
}
