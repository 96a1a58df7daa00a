import { explainConversion, type Quantity } from '../circuit/index.js';
import type { Step } from '../working/index.js';

/** Collects the steps of a longer derivation at one load. */
export interface Notebook {
  readonly working: readonly Step[];
  /** Notes a step and gives its value. */
  readonly add: (made: Step) => number;
  /** Converts a value, notes the step where there is one, and gives the converted value. */
  readonly convert: (value: number, from: Quantity, to: Quantity, subscript: string, label: string) => number;
}

/** An empty notebook for a load, in ohms. */
export function notebook(load: number): Notebook {
  const working: Step[] = [];
  return {
    working,
    add: (made) => {
      working.push(made);
      return made.value;
    },
    convert: (value, from, to, subscript, label) => {
      const explained = explainConversion(value, { from, to, load }, { subscript, label });
      working.push(...explained.working);
      return explained.value;
    },
  };
}
