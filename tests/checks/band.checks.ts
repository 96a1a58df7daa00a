import {
  convertBand,
  deriveLimits,
  impliedNominal,
  type NominalQuestion,
  type Tolerance,
} from '../../src/band/index.js';
import { currentFromPower } from '../../src/circuit/index.js';
import type { Check } from './check.js';

const trade = { room: 'band', source: 'common practice, no source', standing: 'common practice' } as const;
const derived = { room: 'band', source: 'square root of the factors of power', standing: 'derived' } as const;

/** Tolerance of current by which the first five trade rows are made. */
const tradeTolerance: Tolerance = { relative: { below: 0.135, above: 0.162 } };

/** Rows whose limits follow from power and load, rounded to nearest: the value itself, so no more than rounding noise. */
function reproduced(row: number, power: number, lower: number, upper: number): Check[] {
  const limits = () =>
    deriveLimits({
      power,
      load: 100,
      tolerance: tradeTolerance,
      toleranceIn: 'current',
      resolution: 0.001,
      rounding: 'nearest',
    }).limits;
  const what = `${power} W, 100 ohm, -13.5 %/+16.2 % in current, to the milliampere`;
  return [
    {
      ...trade,
      id: `trade-row-${row}-lower`,
      title: `lower limit: ${what}`,
      published: lower,
      unit: 'A',
      tolerance: 1e-12,
      compute: () => limits().lower!,
    },
    {
      ...trade,
      id: `trade-row-${row}-upper`,
      title: `upper limit: ${what}`,
      published: upper,
      unit: 'A',
      tolerance: 1e-12,
      compute: () => limits().upper!,
    },
  ];
}

const printed = (load: number): NominalQuestion => ({
  quantity: 'current',
  load,
  resolution: 0.001,
  hypothesis: { tolerance: tradeTolerance, in: 'current' },
});
const rowFour = () => impliedNominal({ lower: 1.145, upper: 1.538 }, printed(100));
const rowFive = () => impliedNominal({ lower: 0.547, upper: 0.735 }, printed(500));
const rowSix = () =>
  impliedNominal({ lower: 0.276, upper: 0.357 }, { ...printed(50), hypothesis: 'symmetric-in-current' });
const rowSeven = () => impliedNominal({ lower: 1.94, upper: 2.74 }, printed(50));

export const bandChecks: readonly Check[] = [
  {
    ...derived,
    id: 'twenty-percent-lower',
    title: '-20 % in power as a factor of current',
    published: 0.8944,
    unit: '1',
    tolerance: 0.00005,
    compute: () => convertBand({ lower: 0.8 }, { from: 'power', to: 'current', load: 1 }).lower!,
  },
  {
    ...derived,
    id: 'twenty-percent-upper',
    title: '+20 % in power as a factor of current',
    published: 1.0954,
    unit: '1',
    tolerance: 0.00005,
    compute: () => convertBand({ upper: 1.2 }, { from: 'power', to: 'current', load: 1 }).upper!,
  },
  {
    ...derived,
    id: 'twenty-percent-of-a-point',
    title: 'upper limit of current over expected current, 120 W, 500 ohm, +20 % in power',
    published: 1.0954,
    unit: '1',
    tolerance: 0.00005,
    compute: () => {
      const { expected, limits } = deriveLimits({ power: 120, load: 500, tolerance: { relative: 0.2 } });
      return limits.upper! / expected.current;
    },
  },
  ...reproduced(1, 95, 0.843, 1.133),
  ...reproduced(2, 40, 0.547, 0.735),
  ...reproduced(3, 15, 0.335, 0.45),
  {
    ...trade,
    id: 'trade-row-4-lowest',
    title: 'lowest power that 1145-1538 mA at 100 ohm imply, -13.5 %/+16.2 % in current',
    published: 175.07,
    unit: 'W',
    tolerance: 0.005,
    compute: () => rowFour().interval!.power.lower,
  },
  {
    ...trade,
    id: 'trade-row-4-highest',
    title: 'highest power that 1145-1538 mA at 100 ohm imply, -13.5 %/+16.2 % in current',
    published: 175.3,
    unit: 'W',
    tolerance: 0.005,
    compute: () => rowFour().interval!.power.upper,
  },
  {
    ...trade,
    id: 'trade-row-5-lowest',
    title: 'lowest power that 547-735 mA at 500 ohm imply, -13.5 %/+16.2 % in current',
    published: 199.8,
    unit: 'W',
    tolerance: 0.05,
    compute: () => rowFive().interval!.power.lower,
  },
  {
    ...trade,
    id: 'trade-row-5-highest',
    title: 'highest power that 547-735 mA at 500 ohm imply, -13.5 %/+16.2 % in current',
    published: 200.3,
    unit: 'W',
    tolerance: 0.05,
    compute: () => rowFive().interval!.power.upper,
  },
  {
    ...trade,
    id: 'trade-row-6-tolerance',
    title: 'tolerance in current that 276-357 mA imply, symmetric in current',
    published: 0.128,
    unit: '1',
    tolerance: 0.0005,
    compute: () => rowSix().toleranceInCurrent.below!,
  },
  {
    ...trade,
    id: 'trade-row-7-current',
    title: 'current of 350 W in 50 ohm: not where the limits of 1940-2740 mA lie',
    published: 2.646,
    unit: 'A',
    tolerance: 0.0005,
    compute: () => currentFromPower(350, 50),
  },
  {
    ...trade,
    id: 'trade-row-7-explained',
    title: 'nominals that 1940-2740 mA at 50 ohm allow, -13.5 %/+16.2 % in current: none (0)',
    published: 0,
    unit: '1',
    tolerance: 0,
    compute: () => (rowSeven().consistent ? 1 : 0),
  },
];
