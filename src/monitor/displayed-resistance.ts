import { roundBand } from '../band/index.js';
import { fail, requireNonNegative } from '../checks/index.js';
import { checkMonitor } from './check-monitor.js';
import type { Monitor } from './monitor.js';

/**
 * What the display of a monitor without error shows for a resistance: with lead and fixture, rounded to its step.
 *
 * @param monitor The monitor, with a display
 * @param resistance What is connected, in ohms, or an open circuit
 * @returns The display, in ohms, or `over-range`
 * @throws CalculationError as `checkMonitor`; `missing-member` (no display), `negative`
 * @source Definition of rounding
 * @example
 * ```ts
 * import { displayedResistance } from 'esu-limits/monitor';
 * const display = { resolution: 1, maximum: 999, open: 'over-range' } as const;
 * const monitor = { kind: 'continuity', upper: { resistance: 20 }, series: { resistance: 0.4 }, display } as const;
 * displayedResistance(monitor, 10.2); // → 11
 * displayedResistance(monitor, 999.2); // → "over-range"
 * ```
 */
export function displayedResistance(monitor: Monitor, resistance: number | 'open'): number | 'over-range' {
  const { display, series } = checkMonitor(monitor);
  if (display === undefined) return fail('missing-member', 'monitor.display', display, 'must be given');
  if (resistance === 'open') return display.open;
  const seen = requireNonNegative(resistance, 'resistance') + (series?.resistance ?? 0);
  const shown = roundBand({ lower: seen }, display.resolution, 'nearest').lower as number;
  return shown > display.maximum ? display.open : shown;
}
