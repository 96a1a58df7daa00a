import type { Quantity } from '../../circuit/index.js';
import type { Plan, PlanPoint } from '../../procedure/index.js';
import { exactText } from '../numbers/fixed-text.js';
import { limitDigits } from '../numbers/limit-digits.js';
import { type PrintKind, type PrintUnit, unitFor } from '../numbers/print-unit.js';

/** Units of the numbers of a plan's points in CSV: one for each quantity, so that a column can be sorted. */
export function csvUnits(plan: Plan): (quantity: Quantity) => PrintUnit {
  const chosen = new Map<Quantity, PrintUnit>();
  return (quantity) => {
    const known = chosen.get(quantity);
    if (known !== undefined) return known;
    const values = plan.points
      .filter((point) => point.reads === quantity)
      .flatMap(({ nominal, limits }) => [nominal, limits.lower, limits.upper].filter((value) => value !== undefined));
    const unit = unitFor(quantity, values);
    chosen.set(quantity, unit);
    return unit;
  };
}

/** A limit as the number that is printed of it: never looser than the limit. */
export function limitNumber(point: PlanPoint, side: 'lower' | 'upper', unit: PrintUnit): number | undefined {
  const limit = point.limits[side];
  return limit === undefined ? undefined : numberOf(limitDigits(limit, side, unit, point.range?.resolution));
}

/** A limit of acceptance as the number that is printed of it; undefined where the rule accepts none, or has none. */
export function acceptanceNumber(point: PlanPoint, side: 'lower' | 'upper', unit: PrintUnit): number | undefined {
  const limit = point.measurement?.acceptance?.[side];
  return limit === undefined ? undefined : numberOf(limitDigits(limit, side, unit, point.range?.resolution));
}

/** A value in a unit, with all its digits. */
export function numberIn(value: number | undefined, unit: PrintUnit): number | undefined {
  return value === undefined ? undefined : numberOf(exactText(value, unit));
}

/** A value in a unit, to six significant digits. */
export function roundedIn(value: number | undefined, unit: PrintUnit): number | undefined {
  return value === undefined ? undefined : Number(numberOf(exactText(value, unit)).toPrecision(6));
}

/** The SI unit itself, without prefix. */
export function plainUnit(kind: PrintKind): PrintUnit {
  return unitFor(kind, []);
}

function numberOf(digits: string): number {
  return Number(digits.replace(/\u2212/g, '-'));
}

/** A unit as CSV writes it: in ASCII, which every program reads. */
export function asciiUnit(unit: PrintUnit): string {
  return unit.symbol.replace('Ω', 'ohm');
}
