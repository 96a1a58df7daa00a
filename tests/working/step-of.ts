import type fc from 'fast-check';
import type { Step } from '../../src/working/index.js';
import type { Twin } from './twins/twin.js';

/** A formula fed with the very inputs that a working states: twin and formula agree on the same step. */
export function stepOf(formula: string, results: fc.Arbitrary<{ readonly working: readonly Step[] }>): Twin {
  const known = new Map<string, number>();
  return {
    inputs: results
      .map(({ working }) => working.find((step) => step.formula === formula))
      .filter((step) => step !== undefined)
      .map(({ inputs, value }) => {
        known.set(JSON.stringify(inputs), value);
        return inputs;
      }),
    fast: (inputs) => {
      const value = known.get(JSON.stringify(inputs));
      if (value === undefined) throw new Error(`No working has led to ${JSON.stringify(inputs)}.`);
      return value;
    },
  };
}
