import type { Findings, Plan, Readings } from '../procedure/index.js';
import { drawSweep } from './picture/draw-sweep.js';
import type { PictureOptions } from './picture/load-curve-picture.js';
import { monitorTracePicture } from './picture/monitor-trace-picture.js';
import { sweepPictures } from './picture/sweep-pictures.js';
import { tracePictures } from './picture/trace-pictures.js';

/**
 * Every sweep and every trace of the return-electrode monitor as SVG: resistances with the thresholds of the sheet, and
 * alarms that must stand beside those that were noted.
 *
 * @param plan Plan with the thresholds of the monitor
 * @param readings Readings with the traces
 * @param findings Findings from both
 * @param options Start of the identifiers inside the pictures; `monitor` unless stated
 * @returns One `svg` element each, sweeps first: no script, no external reference
 * @example
 * ```ts no-run needs a plan, its readings and findings: see examples/workshop
 * import { assessReadings, type Plan, type Readings } from 'esu-limits/procedure';
 * import { monitorPictures } from 'esu-limits/report';
 * declare const plan: Plan;
 * declare const readings: Readings;
 * const [first] = monitorPictures(plan, readings, assessReadings(plan, readings));
 * ```
 */
export function monitorPictures(
  plan: Plan,
  readings: Pick<Readings, 'monitorTraces'>,
  findings: Pick<Findings, 'monitorTrips' | 'monitorTraces'>,
  options: PictureOptions = {},
): readonly string[] {
  const id = options.id ?? 'monitor';
  return [
    ...sweepPictures(plan, findings.monitorTrips).map(drawSweep),
    ...tracePictures(plan, readings.monitorTraces ?? [], findings.monitorTraces).map((picture, i) =>
      monitorTracePicture(picture, { id: `${id}-${i + 1}` }),
    ),
  ];
}
