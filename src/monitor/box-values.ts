import { roundBand } from '../band/index.js';
import { fail, requireAscending, requireNonNegative, requirePositive } from '../checks/index.js';
import { checkAccuracy, type ResistanceBox } from './box.js';

/** A box that has values, or an error that names the member. */
export function checkBox(box: ResistanceBox, path = 'box'): ResistanceBox {
  if ('values' in box) {
    if (box.values.length === 0) fail('wrong-count', `${path}.values`, box.values, 'must have at least one resistance');
    box.values.forEach((value, i) => {
      requireNonNegative(value, `${path}.values[${i}]`);
    });
    requireAscending(box.values, `${path}.values`);
  } else {
    requirePositive(box.step, `${path}.step`);
    requirePositive(box.maximum, `${path}.maximum`);
    const minimum = requireNonNegative(box.minimum ?? 0, `${path}.minimum`);
    if (minimum > box.maximum) {
      fail('band-reversed', `${path}.minimum`, minimum, `must not lie above the maximum, ${box.maximum}`);
    }
    if (atOrAbove(box, minimum) === undefined) {
      fail('wrong-count', `${path}.step`, box.step, 'must leave a value between the minimum and the maximum');
    }
  }
  checkAccuracy(box.accuracy, `${path}.accuracy`);
  return box;
}

/** The largest value of the box that is not above a resistance. */
export function atOrBelow(box: ResistanceBox, resistance: number): number | undefined {
  if (resistance < 0) return undefined;
  if ('values' in box) return box.values.filter((value) => value <= resistance * (1 + 1e-12)).at(-1);
  const value = roundBand({ upper: Math.min(resistance, box.maximum) }, box.step).upper as number;
  return value < (box.minimum ?? 0) ? undefined : value;
}

/** The smallest value of the box that is not below a resistance. */
export function atOrAbove(box: ResistanceBox, resistance: number): number | undefined {
  if ('values' in box) return box.values.find((value) => value >= resistance * (1 - 1e-12));
  if (resistance > box.maximum * (1 + 1e-12)) return undefined;
  const value = roundBand({ lower: Math.max(resistance, box.minimum ?? 0) }, box.step).lower as number;
  return value > box.maximum * (1 + 1e-12) ? undefined : value;
}
