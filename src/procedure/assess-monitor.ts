import type { Band } from '../band/index.js';
import { placeReading } from '../monitor/index.js';
import { type ExpandedUncertainty, expandedUncertainty } from '../uncertainty/index.js';
import { formatBand, formatQuantity } from '../units/index.js';
import type { JudgedMeasured, MonitorFinding } from './findings.js';
import { judgeMeasured } from './judge-measured.js';
import type { Plan, PlanMonitorRow } from './plan.js';
import type { MonitorReading, Phase } from './readings.js';

/** One row of the monitor against its reading, or without one. */
export function assessMonitorRow(
  plan: Plan,
  row: PlanMonitorRow,
  phase: Phase,
  reading: MonitorReading | undefined,
): MonitorFinding {
  const limits: Band = {
    ...(row.lower === undefined ? {} : { lower: row.lower }),
    ...(row.upper === undefined ? {} : { upper: row.upper }),
  };
  const common = { number: row.number, phase, set: row.set, limits };
  if (reading === undefined) {
    return { ...common, verdict: 'not judged', reason: 'no-reading', message: 'No reading.', working: [] };
  }
  const { displayed } = reading;
  const shown = displayed === 'over-range' ? displayed : formatQuantity(displayed, 'ohm');
  if (row.lower === undefined && row.upper === undefined) {
    const message = `${shown}: no limits are stated.`;
    return { ...common, displayed, verdict: 'not judged', reason: 'no-limits', message, working: [] };
  }
  const { set } = row;
  const { judged, because, working } =
    set === 'open' || displayed === 'over-range'
      ? placed(limits, displayed)
      : judgeMeasured(plan, {
          limits,
          nominal: set + seriesOf(plan),
          value: displayed,
          unit: 'ohm',
          ...uncertaintyOf(plan, set),
        });
  const message = `${shown} against ${formatBand(limits, 'ohm')}: ${because}.`;
  return { ...common, displayed, ...judged, message, working };
}

/** An open circuit has no uncertainty, and a display over its range no value: only the place tells. */
function placed(
  limits: Band,
  displayed: number | 'over-range',
): { judged: JudgedMeasured; because: string; working: [] } {
  const place = placeReading(limits, displayed);
  const reason = ({ inside: 'inside', below: 'below-lower', above: 'above-upper' } as const)[place];
  const because = { inside: 'inside', below: 'below the lower limit', above: 'above the upper limit' }[place];
  return { judged: { verdict: place === 'inside' ? 'pass' : 'fail', reason }, because, working: [] };
}

/**
 * How well the resistance is known that the display shows: box, lead and fixture anywhere in their limits. What the
 * display does with it, its rounding too, is what the limits are for.
 */
function uncertaintyOf({ bench, specification }: Plan, set: number): { readonly expanded?: ExpandedUncertainty } {
  const { resistanceBox } = bench;
  if (resistanceBox === undefined) return {};
  const { relative = 0, absolute = 0 } = resistanceBox.accuracy;
  const series = bench.fixture ?? specification.monitor?.model?.series;
  const standardUncertainty = Math.hypot(relative * set + absolute, series?.limits ?? 0) / Math.sqrt(3);
  return { expanded: expandedUncertainty({ standardUncertainty }) };
}

function seriesOf({ bench, specification }: Plan): number {
  return (bench.fixture ?? specification.monitor?.model?.series)?.resistance ?? 0;
}
