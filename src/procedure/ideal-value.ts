import type { Band } from '../band/index.js';
import { convertQuantity, type Quantity } from '../circuit/index.js';
import type { PlanPoint } from './plan.js';

/**
 * A value as an ideal load without leads would have given it: where the plan corrects for strays, the correction is
 * taken off; elsewhere it is the value itself.
 *
 * @param point A point of a plan
 * @param quantity Quantity of the value
 * @param value What was read, in SI units
 * @returns The value at an ideal load
 */
export function idealValue({ effect }: PlanPoint, quantity: Quantity, value: number): number {
  return effect?.applied === true ? value / effect.ratios[quantity] : value;
}

/** Limits of a point as an ideal load would have them. */
export function idealLimits(point: PlanPoint): Band {
  const { lower, upper } = point.limits;
  return {
    ...(lower === undefined ? {} : { lower: idealValue(point, point.reads, lower) }),
    ...(upper === undefined ? {} : { upper: idealValue(point, point.reads, upper) }),
  };
}

/** A value of one quantity in another, at the load of the point, with its strays where the plan corrects for them. */
export function valueAs(point: PlanPoint, value: number, from: Quantity, to: Quantity, load: number): number {
  if (from === to) return value;
  const ideal = convertQuantity(idealValue(point, from, value), { from, to, load });
  return point.effect?.applied === true ? ideal * point.effect.ratios[to] : ideal;
}
