import {
  createRandom,
  leastSquares,
  meanAndVariance,
  normalCdf,
  normalQuantile,
  normalSurvival,
  normalUpperQuantile,
  studentTUpperQuantile,
} from '../../src/numeric/index.js';
import { jump } from '../../src/numeric/random/jump.js';
import { nextWord } from '../../src/numeric/random/next-word.js';
import { splitMix64 } from '../../src/numeric/random/split-mix-64.js';
import { exactRegressions, halfUnit, strd, univariateSets } from '../numeric/strd-data.js';
import type { Check } from './check.js';

/** Student's t at the levels of JCGM 100 Table G.2, of which three are the exact 1-, 2- and 3-sigma probabilities. */
const levels = [
  ['68.27 %', normalSurvival(1)],
  ['90 %', 0.05],
  ['95 %', 0.025],
  ['95.45 %', normalSurvival(2)],
  ['99 %', 0.005],
  ['99.73 %', normalSurvival(3)],
] as const;

const tableG2: readonly (readonly [number, Check['standing'], readonly string[]])[] = [
  [1, 'secondary', ['1.84', '6.31', '12.71', '13.97', '63.66', '235.80']],
  [2, 'secondary', ['1.32', '2.92', '4.30', '4.53', '9.92', '19.21']],
  [5, 'secondary', ['1.11', '2.02', '2.57', '2.65', '4.03', '5.51']],
  [10, 'secondary', ['1.05', '1.81', '2.23', '2.28', '3.17', '3.96']],
  [16, 'from memory', ['1.03', '1.75', '2.12', '2.17', '2.92', '3.54']],
  [20, 'secondary', ['1.03', '1.72', '2.09', '2.13', '2.85', '3.42']],
  [50, 'from memory', ['1.01', '1.68', '2.01', '2.05', '2.68', '3.16']],
  [100, 'from memory', ['1.005', '1.660', '1.984', '2.025', '2.626', '3.077']],
  [Number.POSITIVE_INFINITY, 'secondary', ['1.000', '1.645', '1.960', '2.000', '2.576', '3.000']],
];

const studentChecks = tableG2.flatMap(([degrees, standing, row]) =>
  row.map((printed, i): Check => {
    const [level, tail] = levels[i] as (typeof levels)[number];
    const count = Number.isFinite(degrees) ? String(degrees) : 'infinity';
    return {
      id: `gum-g2-${count}-${level.slice(0, -2).replace('.', '-')}`,
      room: 'numeric',
      title: `Student's t, ${count} degrees of freedom, level ${level}`,
      source: 'JCGM 100:2008, Table G.2',
      standing,
      published: Number(printed),
      unit: '1',
      tolerance: halfUnit(printed),
      compute: () => studentTUpperQuantile(tail, degrees),
    };
  }),
);

/** Rounded here to 15 figures, which a double can tell apart. */
const normalTable: readonly (readonly [number, string, string])[] = [
  [0.5, '0.691462461274013', '0.308537538725987'],
  [1, '0.841344746068543', '0.158655253931457'],
  [1.5, '0.933192798731142', '0.0668072012688581'],
  [1.645, '0.950015094460879', '0.0499849055391214'],
  [1.96, '0.975002104851780', '0.0249978951482204'],
  [2, '0.977249868051821', '0.0227501319481792'],
  [2.5, '0.993790334674224', '0.006209665325776135'],
  [2.576, '0.995002467684265', '0.00499753231573502'],
  [3, '0.998650101968370', '0.00134989803163009'],
  [4, '0.999968328758167', '3.16712418331199e-5'],
  [5, '0.999999713348428', '2.86651571879194e-7'],
  [6, '0.999999999013412', '9.86587645037698e-10'],
  [8, '0.999999999999999', '6.22096057427178e-16'],
  [10, '1.00000000000000', '7.61985302416053e-24'],
  [20, '1.00000000000000', '2.75362411860623e-89'],
  [37, '1.00000000000000', '5.72557122252458e-300'],
];
/** Probability below; and above it, where that is the one whose digits count. */
const normalQuantiles: readonly (readonly [below: number, above: number | undefined, printed: string])[] = [
  [0.6, 0.4, '0.253347103135800'],
  [0.75, 0.25, '0.674489750196082'],
  [0.8, 0.2, '0.841621233572914'],
  [0.9, 0.1, '1.28155156554460'],
  [0.95, 0.05, '1.64485362695147'],
  [0.975, 0.025, '1.95996398454005'],
  [0.98, 0.02, '2.05374891063182'],
  [0.99, 0.01, '2.32634787404084'],
  [0.995, 0.005, '2.57582930354890'],
  [0.999, 0.001, '3.09023230616781'],
  [0.9995, 0.0005, '3.29052673149190'],
  [0.9999, 0.0001, '3.71901648545568'],
  [0.999999, 0.000001, '4.75342430882290'],
  [1e-6, undefined, '-4.75342430882290'],
  [1e-9, undefined, '-5.99780701500769'],
  [1e-12, undefined, '-7.03448382530113'],
  [1e-20, undefined, '-9.26234008979841'],
  [1e-100, undefined, '-21.2734535609653'],
];
const normalSource = {
  room: 'numeric',
  source: 'Normal distribution at 25 digits, rounded; Abramowitz and Stegun, Table 26.1, agrees',
  standing: 'derived',
  unit: '1',
} as const;

const normalChecks: readonly Check[] = [
  ...normalTable.flatMap(([z, below, above]): Check[] => [
    {
      ...normalSource,
      id: `normal-below-${String(z).replace('.', '-')}`,
      title: `normal probability below ${z}`,
      published: Number(below),
      tolerance: halfUnit(below),
      compute: () => normalCdf(z),
    },
    {
      ...normalSource,
      id: `normal-above-${String(z).replace('.', '-')}`,
      title: `normal probability above ${z}`,
      published: Number(above),
      tolerance: halfUnit(above),
      compute: () => normalSurvival(z),
    },
  ]),
  ...normalQuantiles.map(
    ([below, above, printed]): Check => ({
      ...normalSource,
      id: `normal-quantile-${String(below).replace('.', '-')}`,
      title: `normal quantile of ${below}`,
      published: Number(printed),
      tolerance: halfUnit(printed),
      compute: () => (above === undefined ? normalQuantile(below) : normalUpperQuantile(above)),
    }),
  ),
];

const strdSource = { room: 'numeric', standing: 'secondary', unit: '1' } as const;

const univariateChecks = univariateSets.flatMap(({ name, data, perUnit }): Check[] => {
  const { mean, standardDeviation } = strd.univariate[name];
  const scaled = perUnit === 1 ? '' : `, data in units of 1/${perUnit}`;
  const source = `NIST StRD, univariate ${name}, certified values`;
  // Certified whole numbers are exact; half a unit of their last digit would be no test.
  const tolerance = (printed: string): number =>
    printed.includes('.') && printed.length > 5 ? halfUnit(printed) : 1e-15 * Number(printed);
  return [
    {
      ...strdSource,
      id: `strd-${name.toLowerCase()}-mean`,
      title: `mean of ${name}${scaled}`,
      source,
      published: Number(mean),
      tolerance: tolerance(mean),
      compute: () => meanAndVariance(data).mean / perUnit,
    },
    {
      ...strdSource,
      id: `strd-${name.toLowerCase()}-standard-deviation`,
      title: `standard deviation of ${name}${scaled}`,
      source,
      published: Number(standardDeviation),
      tolerance: tolerance(standardDeviation),
      compute: () => meanAndVariance(data).standardDeviation / perUnit,
    },
  ];
});

const regressionChecks = exactRegressions.flatMap(({ name, design, observations, factors }) =>
  strd.regression[name].certified.flatMap(({ coefficient, standardError }, i): Check[] => {
    const [times, over] = factors[i] as readonly [number, number];
    const source = `NIST StRD, linear regression ${name}, certified values`;
    return [
      {
        ...strdSource,
        id: `strd-${name.toLowerCase()}-coefficient-${i}`,
        title: `coefficient ${i} of ${name}`,
        source,
        published: Number(coefficient),
        tolerance: halfUnit(coefficient),
        compute: () => ((leastSquares(design, observations).coefficients[i] as number) * times) / over,
      },
      {
        ...strdSource,
        id: `strd-${name.toLowerCase()}-standard-error-${i}`,
        title: `standard error ${i} of ${name}`,
        source,
        published: Number(standardError),
        tolerance: halfUnit(standardError),
        compute: () => ((leastSquares(design, observations).standardErrors[i] as number) * times) / over,
      },
    ];
  }),
);

/** Outputs of the generator's authors' own program, as its public descendants test them. */
const fromState1234 = [641, 1573767, 3222811527, 3517856514, 836907274, 4247214768, 3867114732, 1355841295, 495546011];
const fromSeed0 = [1179900579, 1938959192, 3089844957, 3657088315, 1015453891, 479942911, 3433842246, 669252886];
const jumpedState = [2843103750, 2038079848, 1533207345, 44816753];
const splitMixWords = [0x599ed017, 0xfb08fc85, 0x2c73f084, 0x58540fa5];

/** The word of a number from 0, after that many others. */
function wordAt(state: Int32Array, index: number): number {
  for (let i = 0; i < index; i++) nextWord(state);
  return nextWord(state) >>> 0;
}

function exact(
  id: string,
  title: string,
  source: string,
  values: readonly number[],
  at: (i: number) => number,
): Check[] {
  return values.map((published, i) => ({
    id: `${id}-${i + 1}`,
    room: 'numeric',
    title: `${title}, number ${i + 1}`,
    source,
    standing: 'secondary',
    published,
    unit: '1',
    tolerance: 0,
    compute: () => at(i),
  }));
}

const xoshiro = 'xoshiro128++ 1.0 by D. Blackman and S. Vigna, outputs of the reference program';

const generatorChecks: readonly Check[] = [
  ...exact('xoshiro-1234', 'xoshiro128++ from the state 1, 2, 3, 4', xoshiro, fromState1234, (i) =>
    wordAt(Int32Array.of(1, 2, 3, 4), i),
  ),
  ...exact('xoshiro-seed-0', 'xoshiro128++ seeded by SplitMix64 from 0', xoshiro, fromSeed0, (i) =>
    wordAt(createRandom(0).state, i),
  ),
  ...exact('xoshiro-jump', 'state of xoshiro128 after a jump from 1, 2, 3, 4', xoshiro, jumpedState, (i) => {
    const state = Int32Array.of(1, 2, 3, 4);
    jump(state);
    return (state[i] as number) >>> 0;
  }),
  ...exact(
    'splitmix',
    'SplitMix64 from 1234567, half words',
    'SplitMix64, outputs of the reference program for 1234567: 6457827717110365317, 3203168211198807973',
    splitMixWords,
    (i) => {
      const output = splitMix64(1_234_567, 2)[i >> 1] as bigint;
      return Number(i % 2 === 0 ? output >> 32n : output & 0xffffffffn);
    },
  ),
];

/**
 * Coefficient 1 of Pontius is 7.3205916040100251e-7; the digits that NIST prints round it by 4.9e-22, and the double
 * nearest to it differs from them by 5.3e-22, more than half a unit. strd.test.ts holds it by its exact value instead.
 */
const tied = 'strd-pontius-coefficient-1';

/** Published values of distributions, statistics, fits and the random generator. */
export const numericChecks: readonly Check[] = [
  ...studentChecks,
  ...normalChecks,
  ...univariateChecks,
  ...regressionChecks.filter(({ id }) => id !== tied),
  ...generatorChecks,
];
