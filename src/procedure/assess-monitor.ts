import { type Band, contains } from '../band/index.js';
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
  if (displayed === 'over-range') {
    // Over-range is above every value that the display can show: it meets a lower limit and breaks an upper one.
    const ok = limits.upper === undefined;
    const message = `over-range against ${against}: ${ok ? 'inside' : 'above the upper limit'}.`;
    return { ...common, displayed, verdict: ok ? 'pass' : 'fail', message };
  }
  const ok = contains(limits, displayed);
  const where = ok
    ? 'inside'
    : limits.lower !== undefined && displayed < limits.lower
      ? 'below the lower limit'
      : 'above the upper limit';
  return {
    ...common,
    displayed,
    verdict: ok ? 'pass' : 'fail',
    message: `${formatQuantity(displayed, 'ohm')} against ${against}: ${where}.`,
  };
}
