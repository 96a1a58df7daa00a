import {
  acceptanceBand,
  capability,
  conformanceProbability,
  type DecisionRule,
  enNumber,
  type GlobalRisk,
  globalRisk,
  uncertaintyRatioGuardBand,
  zetaScore,
} from '../../src/decision/index.js';
import { type Check, idOf, rowsOf } from './check.js';
import { managedRiskChecks } from './managed-risk.checks.js';

/** Half a unit of the last of so many decimals. */
const half = (decimals: number): number => 0.5 * 10 ** -decimals;

type Row = readonly [id: string, title: string, published: number, tolerance: number, compute: () => number];

const inDecision = rowsOf('decision');

/** Checks of plain numbers. */
function numbersOf(source: string, standing: Check['standing'], rows: readonly Row[]): Check[] {
  return inDecision(
    source,
    standing,
    rows.map(([id, title, published, tolerance, compute]) => [id, title, published, '1', tolerance, compute]),
  );
}

// Counted from the value or the limit, as the examples of this file are: a decimal such as -5.47 would cost digits.
const zener = () => conformanceProbability({ upper: 0 }, -0.07, 0.05).conforming;
const oil = () => conformanceProbability({ lower: -1.1, upper: 2.7 }, 0, 1.8);

/** Distance of the acceptance limit from the tolerance limit that holds a specific risk, in standard uncertainties. */
const quantile = (risk: number) => () =>
  -acceptanceBand({ upper: 0 }, { kind: 'specific-consumer-risk', risk }, { standardUncertainty: 1 }).upper!;
/** Conformance probability, z of table 1, z to full precision with its decimals. */
const tableOne: readonly (readonly [p: number, risk: number, z: number, full: number, decimals: number])[] = [
  [0.8, 0.2, 0.84, 0.841621233572914, 15],
  [0.9, 0.1, 1.28, 1.2815515655446, 14],
  [0.95, 0.05, 1.64, 1.64485362695147, 14],
  [0.99, 0.01, 2.33, 2.32634787404084, 14],
  [0.999, 0.001, 3.09, 3.09023230616781, 14],
];

const speed = () =>
  acceptanceBand({ upper: 100 }, { kind: 'specific-producer-risk', risk: 0.001 }, { relativeStandardUncertainty: 0.02 })
    .upper!;

// Counted from the nominal 1500 ohm: 1499.8 itself would cost three digits of the limits.
const resistors = { lower: -0.2, upper: 0.2 };
function resistorRisk(standardUncertainty: number, guard: number): GlobalRisk {
  const acceptance = { lower: resistors.lower + guard, upper: resistors.upper - guard };
  const prior = { kind: 'normal', mean: 0, standardDeviation: 0.12 } as const;
  return globalRisk({ band: resistors, acceptance, prior, standardUncertainty });
}
/** Uncertainty, guard band, and to 12 digits consumer's risk, producer's risk, probability of acceptance. */
const resistorRows: readonly (readonly [u: number, w: number, consumer: number, producer: number, accept: number])[] = [
  [0.02, 0, 0.011143497751, 0.0157410874316, 0.899821705774],
  [0.02, 0.02, 0.00244065515448, 0.045842410902, 0.861017539707],
  [0.02, 0.04, 0.000256466522648, 0.0931211792197, 0.811554582757],
  [0.02, -0.04, 0.0473705358337, 0.000309569568339, 0.95148026172],
  [0.04, 0, 0.018942206717, 0.0372078001781, 0.886153701993],
  [0.04, 0.02, 0.00987829152177, 0.0690265104615, 0.845271076515],
  [0.04, 0.04, 0.00433407222182, 0.114656578408, 0.794096789268],
  [0.04, -0.04, 0.0448981652765, 0.0070970318545, 0.942220428876],
];

const bearings = { kind: 'gamma', mean: 1, standardDeviation: 0.5 } as const;
const bearingRisk = (upper: number) =>
  globalRisk({ band: { upper: 2 }, acceptance: { upper }, prior: bearings, standardUncertainty: 0.25 });
const bearingLimit = () =>
  acceptanceBand(
    { upper: 2 },
    { kind: 'global-consumer-risk', risk: 0.001, prior: bearings },
    { standardUncertainty: 0.25 },
  ).upper!;

/** Risk of a false accept at the acceptance limit of a guard band of r·U. */
const riskAtLimit = (r: number, coverageFactor: number) => () => {
  const rule: DecisionRule =
    r < 0 ? { kind: 'guarded-rejection', ratio: -r } : { kind: 'guarded-acceptance', ratio: r };
  const { upper } = acceptanceBand({ upper: 0 }, rule, { standardUncertainty: 1, coverageFactor });
  return conformanceProbability({ upper: 0 }, upper!, 1).nonconforming;
};
/** The factor that is usually printed as 1.96. */
const exact = 1.959963984540054;
const ilacRows: readonly (readonly [k: number, r: number, risk: number, tolerance: number])[] = [
  [2, 3, 9.8658765e-10, 5e-18],
  [2, 1.5, 0.001349898, half(9)],
  [2, 1, 0.022750132, half(9)],
  [2, 0.83, 0.048457226, half(9)],
  [2, 0, 0.5, 1e-16],
  [2, -1, 0.97724987, half(8)],
  [exact, 3, 2.0526718e-9, 5e-17],
  [exact, 1.5, 0.0016413474, half(10)],
  [exact, 1, 0.025, 1e-16],
  [exact, 0.83, 0.051892966, half(9)],
  [exact, 0, 0.5, 1e-16],
];

const calculator = 'Manual and tests of a public uncertainty calculator';
const difference = { value: 10.05, reference: 10 };
// The decimals 10.05 and 0.05 are no binary fractions: their difference is off by 1.4e-14 of itself.
const ofDecimals = 2e-14;

/** Published conformance probabilities, acceptance limits, risks and scores. */
export const decisionChecks: readonly Check[] = [
  ...numbersOf('JCGM 106:2012, examples of 7.3 and 7.4', 'from memory', [
    ['jcgm-106-upper', 'Zener breakdown voltage, one limit', 0.92, half(2), zener],
    ['jcgm-106-two-sided', 'engine oil, two limits', 0.66, half(2), () => oil().conforming],
    ['jcgm-106-two-sided-below', 'engine oil, below the lower limit', 0.27, half(2), () => oil().below],
    ['jcgm-106-two-sided-above', 'engine oil, not above the upper limit', 0.93, half(2), () => 1 - oil().above],
  ]),
  ...numbersOf('JCGM 106:2012, examples of 7.3 and 7.4, recomputed to 15 digits', 'derived', [
    ['jcgm-106-upper-full', 'Zener breakdown voltage, one limit', 0.919243340766229, half(15), zener],
    ['jcgm-106-two-sided-full', 'engine oil, two limits', 0.662629786495308, half(15), () => oil().conforming],
    ['jcgm-106-below-full', 'engine oil, below the lower limit', 0.270563012235834, half(15), () => oil().below],
    ['jcgm-106-above-full', 'engine oil, not above it', 0.933192798731142, half(15), () => 1 - oil().above],
  ]),
  ...numbersOf(
    'JCGM 106:2012, table 1',
    'from memory',
    tableOne.map(([p, risk, z]) => [
      `jcgm-106-table-1-${idOf(100 * p)}`,
      `z for a probability of ${p}`,
      z,
      half(2),
      quantile(risk),
    ]),
  ),
  ...numbersOf(
    'JCGM 106:2012, table 1, recomputed to 15 digits',
    'derived',
    tableOne.map(([p, risk, , z, decimals]) => [
      `jcgm-106-table-1-${idOf(100 * p)}-full`,
      `z for a probability of ${p}`,
      z,
      half(decimals),
      quantile(risk),
    ]),
  ),
  ...numbersOf('JCGM 106:2012, 8.3.3, example of a speed limit', 'from memory', [
    ['jcgm-106-speed', 'guarded rejection, uncertainty proportional to the speed, km/h', 107, 0.5, speed],
  ]),
  ...numbersOf('JCGM 106:2012, 8.3.3, example of a speed limit, recomputed to 15 digits', 'derived', [
    [
      'jcgm-106-speed-full',
      'guarded rejection, uncertainty proportional to the speed',
      106.587609485378,
      half(12),
      speed,
    ],
  ]),
  ...numbersOf('JCGM 106:2012, clause 9, example of resistors', 'from memory', [
    [
      'jcgm-106-resistors',
      'conforming before any test',
      0.9,
      half(1),
      () => resistorRisk(0.02, 0).inToleranceProbability,
    ],
  ]),
  ...numbersOf(
    'JCGM 106:2012, clause 9, example of resistors, inputs from memory, recomputed to 12 digits',
    'derived',
    [
      [
        'jcgm-106-resistors-prior',
        'conforming before any test',
        0.904419295454371,
        half(15),
        () => resistorRisk(0.02, 0).inToleranceProbability,
      ],
      ...resistorRows.flatMap(([u, w, consumer, producer, accept], i): Row[] => {
        const title = (what: string) => `u = ${u}, guard band ${w}: ${what}`;
        const row = (name: string, what: string, value: number, member: keyof GlobalRisk): Row => [
          `jcgm-106-resistors-${name}-${i + 1}`,
          title(what),
          value,
          value * 5e-12,
          () => resistorRisk(u, w)[member],
        ];
        return [
          row('consumer', "consumer's risk", consumer, 'consumerRisk'),
          row('producer', "producer's risk", producer, 'producerRisk'),
          row('accept', 'accepted', accept, 'acceptanceProbability'),
        ];
      }),
    ],
  ),
  ...numbersOf(
    `JCGM 106:2012, 9.5.4, example of bearings, as in a notebook of a public uncertainty calculator`,
    'published',
    [
      [
        'jcgm-106-bearings-out',
        'not conforming',
        0.04238011199168,
        half(14),
        () => bearingRisk(2).outOfToleranceProbability,
      ],
      ['jcgm-106-bearings-consumer', "consumer's risk", 0.0080191118843, half(13), () => bearingRisk(2).consumerRisk],
      ['jcgm-106-bearings-limit', "limit for a consumer's risk of 0.001", 1.67, half(2), bearingLimit],
    ],
  ),
  ...numbersOf('JCGM 106:2012, 9.5.4, example of bearings, recomputed to 15 digits', 'derived', [
    [
      'jcgm-106-bearings-out-full',
      'not conforming',
      0.042380111991684,
      half(15),
      () => bearingRisk(2).outOfToleranceProbability,
    ],
    [
      'jcgm-106-bearings-consumer-full',
      "consumer's risk",
      0.00801911188428718,
      half(17),
      () => bearingRisk(2).consumerRisk,
    ],
    [
      'jcgm-106-bearings-producer-full',
      "producer's risk",
      0.0174445692297836,
      half(16),
      () => bearingRisk(2).producerRisk,
    ],
    ['jcgm-106-bearings-limit-full', "limit for a consumer's risk of 0.001", 1.67182877155565, half(14), bearingLimit],
    [
      'jcgm-106-bearings-producer-there',
      "producer's risk at that limit",
      0.0754938761025793,
      half(16),
      () => bearingRisk(bearingLimit()).producerRisk,
    ],
  ]),
  ...numbersOf(calculator, 'published', [
    // Printed with 18 decimals, of which the 15th and later are lost where 1 − P is subtracted.
    [
      'specific-risk',
      'value 9.8 ± 0.1, limits 9 and 10',
      0.02275013194818,
      half(14),
      () => conformanceProbability({ lower: 9, upper: 10 }, 9.8, 0.1).nonconforming,
    ],
    [
      'specific-risk-capability',
      'value 9.8 ± 0.1, limits 9 and 10: C_pk',
      0.66666666666666,
      half(14),
      () => capability({ lower: 9, upper: 10 }, 9.8, 0.1).cpk,
    ],
    ...(
      [
        [10, 0.833333, 0.01242],
        [10.5, 0.416667, 0.10574],
        [12, -0.833333, 0.99379],
      ] as const
    ).flatMap(([mean, cpk, out]): Row[] => [
      [
        `capability-${idOf(mean)}`,
        `mean ${mean}: C_pk`,
        cpk,
        half(6),
        () => capability({ lower: 9, upper: 11 }, mean, 0.4).cpk,
      ],
      [
        `capability-out-${idOf(mean)}`,
        `mean ${mean}: not conforming`,
        out,
        half(5),
        () => conformanceProbability({ lower: 9, upper: 11 }, mean, 0.4).nonconforming,
      ],
    ]),
    ...(
      [
        ['root-sum-square', 0.916515138991168, 15],
        ['whole-below-four', 0.6, 15],
        ['relaxed-below-four', 0.85, 15],
      ] as const
    ).map(
      ([method, fraction, decimals]): Row => [
        `guard-band-${method}`,
        'acceptance as a part of the tolerance at a test uncertainty ratio of 2.5',
        fraction,
        half(decimals),
        () => uncertaintyRatioGuardBand(2.5, method).acceptanceFraction,
      ],
    ),
  ]),
  ...numbersOf('NIST/SEMATECH e-Handbook of Statistical Methods, 6.1.6', 'published', [
    ['nist-capability-cp', 'C_p', 1, half(4), () => capability({ lower: 8, upper: 20 }, 16, 2).cp!],
    ['nist-capability-cpk', 'C_pk', 0.6667, half(4), () => capability({ lower: 8, upper: 20 }, 16, 2).cpk],
    ['nist-capability-cpu', 'C_pu', 0.6667, half(4), () => capability({ lower: 8, upper: 20 }, 16, 2).upper!],
    ['nist-capability-cpl', 'C_pl', 1.3333, half(4), () => capability({ lower: 8, upper: 20 }, 16, 2).lower!],
  ]),
  ...numbersOf(
    'ILAC-G8:09/2019, table 1: risk of a false accept at the acceptance limit, recomputed to 8 digits',
    'derived',
    ilacRows.map(([k, r, risk, tolerance]) => [
      `ilac-g8-k${idOf(k)}-r${idOf(r)}`,
      `guard band ${r} U, k = ${k.toFixed(2)}`,
      risk,
      tolerance,
      riskAtLimit(r, k),
    ]),
  ),
  // The standard's 1.65 is rounded up from 1.645: its digits are no check.
  ...numbersOf('ISO 14253-1:2017, one-sided 95 %, recomputed to 15 digits', 'derived', [
    ['iso-14253-u', 'guard band in standard uncertainties', 1.64485362695147, half(14), quantile(0.05)],
    [
      'iso-14253-expanded',
      'guard band in expanded uncertainties, k = 2',
      0.822426813475736,
      half(15),
      () => quantile(0.05)() / 2,
    ],
  ]),
  ...managedRiskChecks,
  ...numbersOf('ISO 13528 and ISO/IEC 17043, by definition: no published numbers were found', 'derived', [
    [
      'en-number',
      '10.05 ± 0.04 against 10.00 ± 0.03, expanded',
      1,
      ofDecimals,
      () => enNumber({ ...difference, expandedUncertainty: 0.04, referenceExpandedUncertainty: 0.03 }).score,
    ],
    [
      'zeta-score',
      '10.05 ± 0.02 against 10.00 ± 0.015, standard',
      2,
      2 * ofDecimals,
      () => zetaScore({ ...difference, standardUncertainty: 0.02, referenceStandardUncertainty: 0.015 }).score,
    ],
  ]),
];
