import { fail, requirePositive } from '../checks/index.js';
import { type Quantity, quantityUnits, requireQuantity } from '../circuit/index.js';
import {
  geometricMiddleFormula,
  highestBeforeRoundingFormula,
  highestOfBothFormula,
  lowestBeforeRoundingFormula,
  lowestOfBothFormula,
  middleOfLimitsFormula,
} from '../working/formulas/band.js';
import { type Formula, step } from '../working/index.js';
import type { Band } from './band.js';
import { checkTolerance } from './check-tolerance.js';
import { nominalFromLimit } from './nominal-from-limit.js';
import type { KnownTolerance, NominalQuestion } from './nominal-question.js';
import type { Notebook } from './notebook.js';
import { sideRule } from './tolerance-side.js';

/** Nominals that a band allows under a hypothesis, in the quantity of the hypothesis. */
export interface NominalRange {
  readonly in: Quantity;
  readonly nominal: number;
  readonly lowest: number;
  /** Below `lowest` where no nominal explains both limits. */
  readonly highest: number;
}

type End = 'lower' | 'upper';

const symmetricIn: ReadonlyMap<string, Quantity> = /* @__PURE__ */ new Map<string, Quantity>([
  ['symmetric-in-current', 'current'],
  ['symmetric-in-power', 'power'],
  ['symmetric-in-voltage', 'voltage'],
]);

/** Finds the nominals and notes every step. */
export function nominalRange(band: Band, question: NominalQuestion, notes: Notebook): NominalRange {
  const { hypothesis } = question;
  return typeof hypothesis === 'object' && hypothesis !== null
    ? rangeByTolerance(band, question, hypothesis, notes)
    : rangeByMiddle(band, question, hypothesis, notes);
}

/** The printed limit `x`, and the least and the greatest value that rounds to it, in the wanted quantity. */
function limitRange(x: number, end: End, to: Quantity, question: NominalQuestion, notes: Notebook) {
  const { quantity, resolution: q } = question;
  const convert = (value: number, label: string): number => notes.convert(value, quantity, to, end, label);
  const printed = convert(x, `${end} limit of ${to}`);
  if (q === undefined) return { printed, least: printed, greatest: printed };
  const note = (formula: Formula, which: string, value: number): number => {
    const label = `${which} ${end} limit before rounding`;
    return convert(notes.add(step(formula, label, { x, q }, value, { unit: quantityUnits[quantity] })), label);
  };
  return {
    printed,
    least: note(lowestBeforeRoundingFormula, 'least', Math.max(x - q / 2, 0)),
    greatest: note(highestBeforeRoundingFormula, 'greatest', x + q / 2),
  };
}

function rangeByMiddle(band: Band, question: NominalQuestion, hypothesis: string, notes: Notebook): NominalRange {
  const isGeometric = hypothesis === 'geometric';
  const unit = isGeometric ? question.quantity : symmetricIn.get(hypothesis);
  if (unit === undefined) {
    const choices = [...symmetricIn.keys(), 'geometric'].join(', ');
    return fail('unknown-choice', 'hypothesis', hypothesis, `must be one of: ${choices}, or a known tolerance`);
  }
  if (band.lower === undefined || band.upper === undefined) {
    return fail('wrong-count', 'band', band, 'must have both limits for this hypothesis');
  }
  if (isGeometric) requirePositive(band.lower, 'band.lower');
  const lower = limitRange(band.lower, 'lower', unit, question, notes);
  const upper = limitRange(band.upper, 'upper', unit, question, notes);
  const middle = (which: 'printed' | 'least' | 'greatest', label: string): number => {
    const x_l = lower[which];
    const x_u = upper[which];
    const value = isGeometric ? Math.sqrt(x_l * x_u) : (x_l + x_u) / 2;
    const formula = isGeometric ? geometricMiddleFormula : middleOfLimitsFormula;
    return notes.add(step(formula, label, { x_l, x_u }, value, { unit: quantityUnits[unit] }));
  };
  const nominal = requirePositive(middle('printed', 'nominal'), 'nominal');
  return question.resolution === undefined
    ? { in: unit, nominal, lowest: nominal, highest: nominal }
    : { in: unit, nominal, lowest: middle('least', 'lowest nominal'), highest: middle('greatest', 'highest nominal') };
}

function rangeByTolerance(band: Band, question: NominalQuestion, known: KnownTolerance, notes: Notebook): NominalRange {
  const to = requireQuantity(known.in, 'hypothesis.in');
  const { tolerance } = known;
  checkTolerance(tolerance, 'hypothesis.tolerance');
  const unit = { unit: quantityUnits[to] };
  const rangeOf = (end: End) => {
    const limit = band[end];
    const side = end === 'lower' ? 'below' : 'above';
    const rule = sideRule(tolerance, side);
    if (limit === undefined || rule === undefined) return undefined;
    const { least, greatest } = limitRange(limit, end, to, question, notes);
    if (end === 'lower' && tolerance.floor !== undefined && least <= tolerance.floor) {
      fail(
        'out-of-range',
        'band.lower',
        limit,
        'must lie above the floor of the tolerance: at the floor it tells nothing',
      );
    }
    const nominalAt = (x: number, which: string): number =>
      notes.add(nominalFromLimit(x, tolerance, side, rule, `${which}nominal by the ${end} limit`, unit));
    const lowest = nominalAt(least, question.resolution === undefined ? '' : 'lowest ');
    return { lowest, highest: question.resolution === undefined ? lowest : nominalAt(greatest, 'highest ') };
  };
  const below = rangeOf('lower');
  const above = rangeOf('upper');
  const one = below ?? above;
  if (one === undefined) {
    return fail('wrong-count', 'band', band, 'must have a limit on a side that the tolerance states');
  }
  let { lowest, highest } = one;
  if (below !== undefined && above !== undefined) {
    const bounds = (x: number, y: number) => ({ x, y });
    lowest = notes.add(
      step(
        lowestOfBothFormula,
        'lowest nominal by both limits',
        bounds(below.lowest, above.lowest),
        Math.max(below.lowest, above.lowest),
        unit,
      ),
    );
    highest = notes.add(
      step(
        highestOfBothFormula,
        'highest nominal by both limits',
        bounds(below.highest, above.highest),
        Math.min(below.highest, above.highest),
        unit,
      ),
    );
  }
  const middle = { x_l: lowest, x_u: highest };
  const nominal =
    lowest === highest
      ? lowest
      : notes.add(step(middleOfLimitsFormula, 'nominal', middle, (lowest + highest) / 2, unit));
  return { in: to, nominal, lowest, highest };
}
