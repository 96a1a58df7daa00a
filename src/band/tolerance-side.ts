import type { Sides, Tolerance } from './tolerance.js';

/** One side of a tolerance: below or above the nominal. */
export type Side = keyof Sides;

/** How the parts of one side make its limit. */
export type SideKind = 'relative' | 'absolute' | 'sum' | 'greater';

/** One side of a checked tolerance, ready to be applied. */
export interface SideRule {
  readonly kind: SideKind;
  /** 1 − r below, 1 + r above. */
  readonly factor: number;
  /** −a below, +a above. */
  readonly offset: number;
}

/** What a part of a tolerance says of one side: nothing where that side is unlimited. */
export function sideOf(part: number | Sides | undefined, side: Side): number | undefined {
  return typeof part === 'object' ? part[side] : part;
}

/** The parts that a tolerance states for one side, by their symbols in a formula. */
export function partsOf(tolerance: Tolerance, side: Side): Record<string, number> {
  const r = sideOf(tolerance.relative, side);
  const a = sideOf(tolerance.absolute, side);
  return { ...(r === undefined ? {} : { r }), ...(a === undefined ? {} : { a }) };
}

/** The rule of one side of a checked tolerance; nothing where that side is unlimited. */
export function sideRule({ relative, absolute, combine }: Tolerance, side: Side): SideRule | undefined {
  const r = sideOf(relative, side);
  const a = sideOf(absolute, side);
  if (r === undefined && a === undefined) return undefined;
  const sign = side === 'below' ? -1 : 1;
  const kind = a === undefined ? 'relative' : r === undefined ? 'absolute' : (combine as 'sum' | 'greater');
  return { kind, factor: 1 + sign * (r ?? 0), offset: sign * (a ?? 0) };
}

/**
 * The limit that a rule sets, before a floor.
 * N·(1 − r) and not N − r·N: the difference of two near numbers would lose the digits of a small limit.
 */
export function limitBy({ kind, factor, offset }: SideRule, nominal: number): number {
  if (kind !== 'greater') return nominal * factor + offset;
  return offset < 0 || factor < 1
    ? Math.min(nominal * factor, nominal + offset)
    : Math.max(nominal * factor, nominal + offset);
}
