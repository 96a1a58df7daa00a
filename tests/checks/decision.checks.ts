import { conformanceProbability, type GlobalRisk, globalRisk } from '../../src/decision/index.js';
import type { Check } from './check.js';

// Counted from the nominal 1500 ohm: 1499.8 itself would cost three digits of the limits.
const resistors = { lower: -0.2, upper: 0.2 };
function resistorRisk(standardUncertainty: number, guard: number): GlobalRisk {
  const acceptance = { lower: resistors.lower + guard, upper: resistors.upper - guard };
  const prior = { kind: 'normal', mean: 0, standardDeviation: 0.12 } as const;
  return globalRisk({ band: resistors, acceptance, prior, standardUncertainty });
}
/** Consumer's and producer's risk of the resistors: uncertainty, guard band, both risks to 12 digits. */
const resistorRows: readonly (readonly [u: number, w: number, consumer: number, producer: number])[] = [
  [0.02, 0, 0.011143497751, 0.0157410874316],
  [0.02, 0.02, 0.00244065515448, 0.045842410902],
  [0.02, 0.04, 0.000256466522648, 0.0931211792197],
  [0.02, -0.04, 0.0473705358337, 0.000309569568339],
  [0.04, 0, 0.018942206717, 0.0372078001781],
  [0.04, 0.02, 0.00987829152177, 0.0690265104615],
  [0.04, 0.04, 0.00433407222182, 0.114656578408],
  [0.04, -0.04, 0.0448981652765, 0.0070970318545],
];

type Row = readonly [id: string, title: string, published: number, tolerance: number, compute: () => number];
function rowsOf(source: string, standing: Check['standing'], rows: readonly Row[]): Check[] {
  return rows.map(([id, title, published, tolerance, compute]) => ({
    id,
    room: 'decision',
    title,
    source,
    standing,
    published,
    unit: '1',
    tolerance,
    compute,
  }));
}

/** Published conformance probabilities and global risks. */
export const decisionChecks: readonly Check[] = [
  ...rowsOf('JCGM 106:2012, examples of 7.3 and 7.4', 'from memory', [
    [
      'jcgm-106-upper',
      'Zener breakdown voltage, one limit',
      0.92,
      0.005,
      () => conformanceProbability({ upper: -5.4 }, -5.47, 0.05).conforming,
    ],
    [
      'jcgm-106-two-sided',
      'engine oil, two limits',
      0.66,
      0.005,
      () => conformanceProbability({ lower: 12.5, upper: 16.3 }, 13.6, 1.8).conforming,
    ],
  ]),
  ...rowsOf('Manual of a public uncertainty calculator, specific risk', 'published', [
    [
      'specific-risk',
      'value 9.8 ± 0.1, limits 9 and 10',
      0.0227501319481802,
      1.1e-15,
      () => conformanceProbability({ lower: 9, upper: 10 }, 9.8, 0.1).nonconforming,
    ],
  ]),
  ...rowsOf('JCGM 106:2012, clause 9, example of resistors, inputs from memory, recomputed to 12 digits', 'derived', [
    [
      'jcgm-106-resistors-prior',
      'conforming before any test',
      0.904419295454371,
      5e-16,
      () => resistorRisk(0.02, 0).inToleranceProbability,
    ],
    ...resistorRows.flatMap(([u, w, consumer, producer], i): Row[] => [
      [
        `jcgm-106-resistors-consumer-${i + 1}`,
        `u = ${u}, guard band ${w}: consumer's risk`,
        consumer,
        consumer * 5e-12,
        () => resistorRisk(u, w).consumerRisk,
      ],
      [
        `jcgm-106-resistors-producer-${i + 1}`,
        `u = ${u}, guard band ${w}: producer's risk`,
        producer,
        producer * 5e-12,
        () => resistorRisk(u, w).producerRisk,
      ],
    ]),
  ]),
];
