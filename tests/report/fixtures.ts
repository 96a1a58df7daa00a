import {
  type Bench,
  makeRecord,
  type Plan,
  planVerification,
  type Readings,
  type Specification,
  type VerificationRecord,
} from '../../src/procedure/index.js';

/*
 * Everything here is invented: the equipment workshop of a veterinary teaching hospital, its bench, a generator
 * that does not exist, and its readings.
 */

const activeOfA = 'Active output of channel A to the load, other end of the load to the neutral electrode socket';

export const specification: Specification = {
  schema: 'esu-limits/specification',
  version: 1,
  note: 'Invented: no such generator exists.',
  source: 'Invented data sheet, pages 4 to 7',
  generator: { name: 'Training generator for large animals', identification: 'VT-12', serialNumber: 'invented-7' },
  cautions: ['Let the unit warm up for 10 minutes before the first reading.'],
  rules: [
    { rule: 'output-accuracy' },
    { rule: 'output-monotone' },
    { rule: 'peak-voltage' },
    { rule: 'supply-interruption', parameters: { above: 0.15 } },
  ],
  outputs: [
    {
      id: 'cut',
      name: 'Monopolar cut',
      circuit: 'monopolar',
      connection: activeOfA,
      scale: { kind: 'watt', minimum: 5, maximum: 200, step: 5 },
      ratedPower: 200,
      ratedLoad: 400,
      crestFactor: 1.6,
      crestFactorAt: 'rated load',
      maximumPeakVoltage: 1100,
      carrierFrequency: 430e3,
      duty: { on: 10, off: 30 },
      curves: [
        {
          setting: 200,
          points: [
            { load: 50, power: 61 },
            { load: 200, power: 192 },
            { load: 400, power: 200 },
            { load: 1000, power: 150 },
            { load: 2000, power: 78 },
          ],
        },
      ],
      otherSettings: 'proportional',
      tolerance: { in: 'power', relative: { below: 0.12, above: 0.15 } },
      displayTolerance: { in: 'power', relative: 0.1 },
    },
    {
      id: 'coag',
      name: 'Monopolar coagulation, soft',
      circuit: 'monopolar',
      connection: activeOfA,
      scale: { kind: 'level', levels: ['effect 1', 'effect 2', 'effect 3'] },
      ratedPower: 80,
      ratedLoad: 500,
      crestFactor: 6.4,
      maximumPeakVoltage: 4000,
      rows: [
        { setting: 'effect 1', load: 500, quantity: 'current', lower: 0.18, upper: 0.25 },
        { setting: 'effect 3', load: 500, quantity: 'power', power: 80, lower: 64, upper: 96 },
      ],
    },
    {
      id: 'bipolar',
      name: 'Bipolar',
      circuit: 'bipolar',
      connection: 'Both poles of the bipolar socket to the load',
      scale: { kind: 'watt', minimum: 1, maximum: 60, step: 1 },
      ratedPower: 60,
      ratedLoad: 100,
      crestFactor: 1.5,
      duty: { on: 10, off: 30 },
      regimes: { currentLimit: 1.2, voltageLimit: 120 },
    },
  ],
  monitor: {
    connection: 'Decade box between the two halves of the neutral electrode socket',
    rows: [
      { set: 20, lower: 18, upper: 22 },
      { set: 100, lower: 92, upper: 108 },
      { set: 'open', lower: 250 },
    ],
  },
};

export const bench: Bench = {
  schema: 'esu-limits/bench',
  version: 1,
  note: 'Invented bench.',
  name: 'Equipment workshop of a veterinary teaching hospital (invented)',
  instrument: {
    name: 'True-rms RF ammeter of the workshop',
    identification: 'RF-3',
    calibratedUntil: '2027-03-31',
    reads: [
      {
        quantity: 'current',
        ranges: [
          { maximum: 0.5, resolution: 0.0005 },
          { maximum: 2.5, resolution: 0.001 },
        ],
      },
    ],
    maximumPeakVoltage: 5000,
    maximumCrestFactor: 10,
    frequencyRange: { lower: 1e5, upper: 5e6 },
  },
  loads: [
    { id: 'R50', resistance: 50, powerRating: 250 },
    { id: 'R100', resistance: 100.2, powerRating: 250 },
    { id: 'R200', resistance: 199.4, powerRating: 250 },
    { id: 'R400', resistance: 400, powerRating: 100, overload: { power: 300, on: 10, off: 60 } },
    { id: 'R500', resistance: 500, powerRating: 250 },
    { id: 'R1000', resistance: 1002, powerRating: 150, maximumPeakVoltage: 1000 },
    { id: 'R2000', resistance: 2000, powerRating: 20 },
  ],
  leads: [
    { id: 'm', name: 'Monopolar leads, 1 m', circuits: ['monopolar'], maximumPeakVoltage: 6000 },
    { id: 'b', name: 'Bipolar leads, 1 m', circuits: ['bipolar'] },
  ],
};

export const plan: Plan = planVerification(specification, bench);

/** Readings near the expected values, with a low, a high, a marginal, a missing and a mistyped one, and one put right. */
export function readingsFor(made: Plan): Readings {
  const readings = made.points
    .filter((point) => point.feasible && point.nominal !== undefined)
    .flatMap((point, i): Readings['readings'] => {
      const nominal = point.nominal as number;
      const { lower = nominal * 0.9, upper = nominal * 1.1 } = point.limits;
      const shares = [0.1, -0.3, 0.9, -1.4, 0.45, -0.05, 0.2];
      const share = shares[i % shares.length] as number;
      const read = share < 0 ? nominal + share * (nominal - lower) : nominal + share * (upper - nominal);
      const value = Number(read.toFixed(3));
      const reading = { point: point.id, phase: 'as-found', quantity: 'current', value } as const;
      if (i === 5) return [];
      if (i === 8) return [{ ...reading, value: Number((nominal * 10).toFixed(3)), note: 'Read in haste' }];
      if (i === 3) {
        return [reading, { ...reading, phase: 'as-left', value: Number(nominal.toFixed(3)), note: 'After adjustment' }];
      }
      const load = point.load?.resistance as number;
      const shown = Math.round(value * value * load * (i === 1 ? 1.2 : 1.02));
      return [{ ...reading, display: { quantity: 'power', value: shown } }];
    });
  return {
    schema: 'esu-limits/readings',
    version: 1,
    note: 'Invented readings.',
    by: 'Invented technician',
    date: '2026-11-20',
    readings: [...readings, { point: 'cut/55W/123ohm', phase: 'as-found', quantity: 'current', value: 0.7 }],
    monitor: [
      { set: 20, displayed: 20.4, phase: 'as-found' },
      { set: 100, displayed: 112, phase: 'as-found' },
      { set: 'open', displayed: 'over-range', phase: 'as-found' },
    ],
  };
}

export const record: VerificationRecord = makeRecord(plan, readingsFor(plan), {
  occasion: 'periodic inspection',
  by: 'Invented technician',
  date: '2026-11-20',
  remarks: 'Adjusted once; see the row as left.',
});
