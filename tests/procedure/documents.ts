import type { Monitor } from '../../src/monitor/index.js';
import {
  type Bench,
  type Output,
  type Plan,
  planVerification,
  type Reading,
  type Readings,
  type Specification,
} from '../../src/procedure/index.js';

/** A watt-scaled monopolar output with a rating and nothing else; all figures are invented. */
export const ratedOutput: Output = {
  id: 'cut',
  name: 'Monopolar cut',
  circuit: 'monopolar',
  connection: 'Active output to the load',
  scale: { kind: 'watt', minimum: 5, maximum: 200, step: 5 },
  ratedPower: 200,
  ratedLoad: 400,
  crestFactor: 1.6,
  duty: { on: 10, off: 30 },
  tolerance: { in: 'power', relative: 0.2 },
};

/** The same output with a curve: 1 A up to 200 Ω, 200 W up to 800 Ω, 400 V beyond. */
export const curvedOutput: Output = {
  ...ratedOutput,
  curves: [
    {
      setting: 200,
      points: [
        { load: 50, power: 50 },
        { load: 200, power: 200 },
        { load: 800, power: 200 },
        { load: 3200, power: 50 },
      ],
    },
  ],
  otherSettings: 'proportional',
};

/** A bench with a current meter and the usual loads; all figures are invented. */
export const bench: Bench = {
  schema: 'esu-limits/bench',
  version: 1,
  name: 'Bench of the tests',
  instrument: {
    name: 'HF current meter',
    reads: [
      {
        quantity: 'current',
        ranges: [
          { maximum: 1, resolution: 0.001 },
          { maximum: 5, resolution: 0.01 },
        ],
      },
      { quantity: 'power', ranges: [{ maximum: 500, resolution: 1 }] },
    ],
    maximumPeakVoltage: 2000,
    maximumCrestFactor: 10,
    frequencyRange: { lower: 1e5, upper: 5e6 },
  },
  loads: [100, 200, 400, 500, 1000, 2000].map((resistance) => ({
    id: `L${resistance}`,
    resistance,
    powerRating: 300,
    maximumPeakVoltage: 5000,
  })),
  leads: [{ id: 'm', name: 'Monopolar leads', circuits: ['monopolar'], maximumPeakVoltage: 6000 }],
};

export function specificationOf(...outputs: Output[]): Specification {
  return { schema: 'esu-limits/specification', version: 1, generator: { name: 'Unit of the tests' }, outputs };
}

export function readingsOf(...readings: (Partial<Reading> & Pick<Reading, 'point' | 'value'>)[]): Readings {
  return {
    schema: 'esu-limits/readings',
    version: 1,
    readings: readings.map((reading) => ({ phase: 'as-found', quantity: 'current', ...reading })),
  };
}

/** A contact quality monitor with both limits; all figures are invented. */
export const monitorWithLimits: Monitor = {
  kind: 'contact-quality',
  lower: { resistance: 10, tolerance: { absolute: 3 }, hysteresis: 2 },
  upper: { resistance: 150, tolerance: { absolute: 8 }, hysteresis: 10 },
  alarmDelay: 2,
};

/** The plan of one point and a monitor, at the bench with a resistance box and a watch. */
export function planWithMonitor(model: Monitor, change: Partial<Bench> = {}): Plan {
  return planVerification(
    {
      ...specificationOf({ ...ratedOutput, points: [{ setting: 200, load: 400 }] }),
      monitor: { connection: 'Box between the contacts', model },
    },
    {
      ...bench,
      resistanceBox: { step: 1, maximum: 999, accuracy: { relative: 0.005, absolute: 0.1 } },
      timing: { limits: 0.3 },
      ...change,
    },
  );
}
