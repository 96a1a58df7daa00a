import type { Plan, TripFindings } from '../../procedure/index.js';
import { valueText } from '../numbers/value-text.js';
import type { SweepPicture } from './sweep-picture.js';

/** The sweeps of a record, each with the band in which the monitor may trip. */
export function sweepPictures(plan: Plan, trips: readonly TripFindings[]): readonly SweepPicture[] {
  const thresholds = plan.monitorThresholds?.thresholds ?? [];
  const model = plan.specification.monitor?.model;
  const series = (plan.bench.fixture ?? model?.series)?.resistance ?? 0;
  return trips.flatMap(({ sweeps, phase }) =>
    sweeps.map(({ steps, baseline, responseTime }): SweepPicture => {
      const isUp = (steps.at(-1)?.set ?? 0) > (steps[0]?.set ?? 0);
      const nearest = thresholds
        .filter((plan) => (baseline === undefined ? plan.limit !== 'rise' : plan.baseline === baseline))
        .map((plan) => ({ plan, reach: distance(plan.trip, steps, series) }))
        .sort((a, b) => a.reach - b.reach)[0]?.plan;
      const lower = nearest?.trip.lower ?? nearest?.trip.upper;
      const upper = nearest?.trip.upper ?? nearest?.trip.lower;
      const from = baseline === undefined ? '' : ` from ${valueText(baseline, 'resistance')}`;
      return {
        title: `${nearest?.limit === 'rise' ? 'Rise' : nearest?.limit === 'lower' ? 'Lower limit' : 'Upper limit'}${from}, ${isUp ? 'upwards' : 'downwards'}, ${phase.replace('-', ' ')}`,
        steps,
        ...(lower === undefined || upper === undefined
          ? {}
          : { threshold: { lower: lower - series, upper: upper - series, label: 'may trip here' } }),
        ...(responseTime === undefined
          ? {}
          : {
              response: {
                time: responseTime,
                ...(model?.alarmDelay === undefined ? {} : { permitted: model.alarmDelay }),
              },
            }),
      };
    }),
  );
}

/** How far the middle of a sweep lies from a band. */
function distance(
  { lower, upper }: { readonly lower?: number; readonly upper?: number },
  steps: SweepPicture['steps'],
  series: number,
): number {
  const middle = ((steps[0]?.set ?? 0) + (steps.at(-1)?.set ?? 0)) / 2 + series;
  const place = ((lower ?? upper ?? 0) + (upper ?? lower ?? 0)) / 2;
  return Math.abs(middle - place);
}
