import type { Band } from '../../band/index.js';
import { bandAround } from '../../band/index.js';
import type { Monitor, MonitorLimit } from '../../monitor/index.js';
import type { MonitorTrace, Plan, TraceFindings } from '../../procedure/index.js';
import { valueText } from '../numbers/value-text.js';
import type { TracePicture, TraceSpan, TraceThreshold } from './trace-picture.js';

/** The traces of a record, each with the thresholds of the monitor, its alarms and those that were noted. */
export function tracePictures(
  plan: Plan,
  traces: readonly MonitorTrace[],
  findings: readonly TraceFindings[],
): readonly TracePicture[] {
  const model = plan.specification.monitor?.model;
  if (model === undefined) return [];
  return findings.flatMap((finding) => {
    const trace = traces[finding.number - 1];
    return trace === undefined ? [] : [pictureOf(plan, model, trace, finding)];
  });
}

const reasons = {
  'above-upper': 'upper',
  'below-lower': 'lower',
  rise: 'rise',
  'not-yet-accepted': 'start',
} as const;

function pictureOf(plan: Plan, model: Monitor, trace: MonitorTrace, finding: TraceFindings): TracePicture {
  const { number, name, phase, expected } = finding;
  const series = trace.of === 'set' ? ((plan.bench.fixture ?? model.series)?.resistance ?? 0) : 0;
  const end = trace.end ?? (trace.time.at(-1) as number);
  const noted = trace.alarms.map(({ from, to }): TraceSpan => ({ from, to: to ?? end }));
  const must = expected.alarms.map(({ since, from, to, reason }): TraceSpan => {
    return { since, from, to: to ?? end, label: reasons[reason] };
  });
  const late = must.flatMap((span): TraceSpan[] => {
    const answer = noted.find(({ from, to }) => to >= (span.since ?? span.from) && from < span.to);
    const until = answer?.from ?? span.to;
    if (!(until > span.from)) return [];
    const label = answer === undefined ? 'no alarm' : `${valueText(until - span.from, 'time', 3)} late`;
    return [{ from: span.from, to: until, label }];
  });
  const what = trace.of === 'set' ? 'resistance set on the box' : 'resistance that the monitor displayed';
  const title = `${name ?? `Trace ${number}`}, ${what}, ${phase.replace('-', ' ')}`;
  return {
    title,
    description: describe(expected.alarms, must, noted, late),
    time: trace.time,
    resistance: trace.resistance.map((value) => (value === 'open' ? Number.POSITIVE_INFINITY : value)),
    end,
    thresholds: thresholdsOf(model, finding, series, end),
    expected: must,
    noted,
    late,
  };
}

function thresholdsOf(model: Monitor, { expected }: TraceFindings, series: number, end: number): TraceThreshold[] {
  const { lower, upper, rise } = model;
  const made: TraceThreshold[] = [];
  if (upper !== undefined) made.push(thresholdOf('upper limit', upper, series));
  if (lower !== undefined) made.push(thresholdOf('lower limit', lower, series));
  if (rise === undefined) return made;
  const risen = (baseline: number, spread = 0): number =>
    Math.max(baseline, rise.floor ?? 0) * (1 + rise.fraction + spread) - series;
  const riseAt = (baseline: number, place: { readonly from?: number; readonly to?: number }): TraceThreshold => ({
    label: 'rise limit',
    value: risen(baseline),
    ...(rise.tolerance === undefined
      ? {}
      : { lower: risen(baseline, -rise.tolerance), upper: risen(baseline, rise.tolerance) }),
    ...place,
  });
  const alarms = expected.alarms.filter(({ reason, baseline }) => reason === 'rise' && baseline !== null);
  made.push(...alarms.map(({ baseline, since, to }) => riseAt(baseline as number, { from: since, to: to ?? end })));
  if (alarms.length === 0 && expected.baseline !== null) made.push(riseAt(expected.baseline, {}));
  return made;
}

function thresholdOf(label: string, { resistance, tolerance }: MonitorLimit, series: number): TraceThreshold {
  const { lower, upper }: Band = tolerance === undefined ? {} : bandAround(resistance, tolerance);
  return {
    label,
    value: resistance - series,
    ...(lower === undefined ? {} : { lower: lower - series }),
    ...(upper === undefined ? {} : { upper: upper - series }),
  };
}

function describe(
  alarms: TraceFindings['expected']['alarms'],
  must: readonly TraceSpan[],
  noted: readonly TraceSpan[],
  late: readonly TraceSpan[],
): string {
  const at = ({ from, to }: TraceSpan): string => `from ${valueText(from, 'time')} to ${valueText(to, 'time')}`;
  return [
    ...must.map((span, i) => `An alarm must stand ${at(span)}: ${(alarms[i]?.reason ?? '').replaceAll('-', ' ')}.`),
    ...noted.map((span) => `An alarm was noted ${at(span)}.`),
    ...late.map((span) => `${span.label ?? ''} ${at(span)}.`),
  ].join(' ');
}
