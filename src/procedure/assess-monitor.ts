import type { Band } from '../band/index.js';
import { placeReading } from '../monitor/index.js';
import { formatBand, formatQuantity } from '../units/index.js';
import type { MonitorFinding } from './findings.js';
import type { PlanMonitorRow } from './plan.js';
import type { MonitorReading, Phase } from './readings.js';

/** One row of the monitor against its reading, or without one. */
export function assessMonitorRow(
  row: PlanMonitorRow,
  phase: Phase,
  reading: MonitorReading | undefined,
): MonitorFinding {
  const limits: Band = {
    ...(row.lower === undefined ? {} : { lower: row.lower }),
    ...(row.upper === undefined ? {} : { upper: row.upper }),
  };
  const common = { number: row.number, phase, set: row.set, limits };
  if (reading === undefined) return { ...common, verdict: 'not judged', message: 'No reading.' };
  const { displayed } = reading;
  const against = row.lower === undefined && row.upper === undefined ? 'no limits' : formatBand(limits, 'ohm');
  const place = placeReading(limits, displayed);
  const where = { inside: 'inside', below: 'below the lower limit', above: 'above the upper limit' }[place];
  const shown = displayed === 'over-range' ? displayed : formatQuantity(displayed, 'ohm');
  return {
    ...common,
    displayed,
    verdict: place === 'inside' ? 'pass' : 'fail',
    message: `${shown} against ${against}: ${where}.`,
  };
}
