import type { Bench, Output, Specification } from 'esu-limits/procedure';

const loads = Array.from({ length: 50 }, (_, i) => Number((50 * 1.08 ** i).toPrecision(3)));
const settings = Array.from({ length: 20 }, (_, i) => 15 * (i + 1));

function output(index: number): Output {
  return {
    id: `output-${index}`,
    name: `Invented output ${index}`,
    circuit: index % 2 === 0 ? 'monopolar' : 'bipolar',
    connection: `Socket ${index}`,
    scale: { kind: 'watt', minimum: 1, maximum: 300, step: 1 },
    ratedPower: 300,
    ratedLoad: 500,
    crestFactor: 1.5,
    carrierFrequency: 400_000,
    duty: { on: 10, off: 30 },
    otherSettings: 'proportional',
    curves: [
      {
        setting: 300,
        points: [
          { load: 20, power: 80 },
          { load: 100, power: 250 },
          { load: 300, power: 300 },
          { load: 800, power: 300 },
          { load: 3000, power: 90 },
        ],
      },
    ],
    tolerance: { in: 'power', relative: 0.2 },
    settings,
    loads,
  };
}

/** Ten invented outputs × twenty settings × fifty loads. */
export const specification: Specification = {
  schema: 'esu-limits/specification',
  version: 1,
  note: 'Invented, for a benchmark.',
  generator: { name: 'Invented generator' },
  outputs: Array.from({ length: 10 }, (_, index) => output(index)),
};

/** A bench on which every load stands and every quantity fits. */
export const bench: Bench = {
  schema: 'esu-limits/bench',
  version: 1,
  name: 'Invented bench',
  instrument: {
    name: 'Invented instrument',
    reads: [{ quantity: 'current', ranges: [{ maximum: 10, resolution: 0.001 }] }],
    maximumCrestFactor: 10,
  },
  loads: loads.map((resistance, i) => ({ id: `load-${i}`, resistance, powerRating: 500 })),
};
