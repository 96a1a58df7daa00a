import type { StatedTolerance } from '../../procedure/index.js';
import { formatTolerance } from '../../units/index.js';

/** A tolerance in words: `±20 % in power`, `−13.5 %/+16.2 % in current`. */
export function toleranceText({ in: quantity, ...tolerance }: StatedTolerance): string {
  const unit = { power: 'W', current: 'A', voltage: 'V' } as const;
  return `${formatTolerance(tolerance, { unit: unit[quantity] }).replace(/-(?=\d)/g, '\u2212')} in ${quantity}`;
}
