import type { Sides, Tolerance } from './tolerance.js';

/** One side of a tolerance: below or above the nominal. */
export type Side = keyof Sides;

/** What a part of a tolerance says of one side: nothing where that side is unlimited. */
export function sideOf(part: number | Sides | undefined, side: Side): number | undefined {
  return typeof part === 'object' ? part[side] : part;
}

/** How far a limit lies from its nominal where an absolute part has a say. */
export function joinedTolerance(nominal: number, relative: number, absolute: number, combine: Tolerance['combine']) {
  const part = relative * Math.abs(nominal);
  return combine === 'sum' ? part + absolute : Math.max(part, absolute);
}

/** The limit of one side, before a floor; nothing where that side is unlimited. */
export function limitOf(nominal: number, tolerance: Tolerance, side: Side): number | undefined {
  const relative = sideOf(tolerance.relative, side);
  const absolute = sideOf(tolerance.absolute, side);
  const sign = side === 'below' ? -1 : 1;
  if (absolute !== undefined) {
    return nominal + sign * joinedTolerance(nominal, relative ?? 0, absolute, tolerance.combine);
  }
  // N·(1 − r) and not N − r·N: the difference of two near numbers would lose the digits of a small limit.
  return relative === undefined ? undefined : nominal * (1 + sign * (nominal < 0 ? -relative : relative));
}
