import { fail } from '../../checks/index.js';
import { numberFunction } from '../differentiation/differentiate-model.js';
import type { Model } from '../differentiation/model.js';
import type { Sampler } from './sampler.js';

/** A function that fills an array with the model's values for the trials that the sampler drew last. */
export function trialRunner(model: Model, sampler: Sampler): (target: Float64Array, count: number) => void {
  const { names, columns } = sampler;
  const cursor: Cursor = { columns, trial: 0 };
  // The model sees one object whose members read the current trial: no object is made for a trial.
  const x: Record<string, number> = Object.defineProperty({}, cursorKey, { value: cursor });
  names.forEach((name, i) => {
    const column = columns[i] as Float64Array;
    const get = names.length > sharedReaders ? () => column[cursor.trial] : readerOf(i);
    Object.defineProperty(x, name, { enumerable: true, get });
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

/** The trial that is being evaluated, and the draws of all inputs. */
interface Cursor {
  readonly columns: readonly Float64Array[];
  trial: number;
}

const cursorKey = Symbol('trial');
/** With more inputs than these a getter of its own for each is the faster way, as measured. */
const sharedReaders = 4;
const readers: (() => number | undefined)[] = [];

/**
 * The getter of an input's place. It is the same function in every run, so that objects with the same names have the
 * same shape, and an engine compiles the reads of a model once.
 */
function readerOf(place: number): () => number | undefined {
  readers[place] ??= function (this: { readonly [cursorKey]: Cursor }) {
    const { columns, trial } = this[cursorKey];
    return columns[place]?.[trial];
  } as () => number | undefined;
  return readers[place] as () => number | undefined;
}
