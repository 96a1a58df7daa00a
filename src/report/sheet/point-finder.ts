import type { Plan, PlanPoint } from '../../procedure/index.js';

/** Finds a point of a plan by its identifier, else by its number. */
export function pointFinder(plan: Plan): (reference: string) => PlanPoint | undefined {
  const byId = new Map(plan.points.map((point) => [point.id, point]));
  const byNumber = new Map(plan.points.map((point) => [String(point.number), point]));
  return (reference) => byId.get(reference) ?? byNumber.get(reference);
}
