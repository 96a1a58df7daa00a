import { displayFit } from '../monitor/index.js';
import type { MonitorDisplayHint } from './findings.js';
import type { Plan } from './plan.js';
import type { MonitorReading, Phase } from './readings.js';

/** What the errors of the display have in common in one state of the unit; undefined where too little was read. */
export function monitorDisplayHint(
  plan: Plan,
  readings: readonly MonitorReading[],
  phase: Phase,
): MonitorDisplayHint | undefined {
  const resolution = plan.specification.monitor?.model?.display?.resolution;
  const rows = readings.flatMap(({ set, displayed, phase: when }) =>
    when === phase && typeof set === 'number' && typeof displayed === 'number' ? [{ set, displayed }] : [],
  );
  if (resolution === undefined || new Set(rows.map(({ set }) => set)).size < 2) return undefined;
  const box = plan.bench.resistanceBox;
  const fit = displayFit({ rows, resolution, ...(box === undefined ? {} : { accuracy: box.accuracy }) });
  const { gain, offset, fault, message, working } = fit;
  return { phase, gain, offset, fault, message, working };
}
