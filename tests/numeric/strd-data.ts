import fixture from './fixtures/strd.json' with { type: 'json' };

/**
 * The first digits of π, by Machin's formula.
 *
 * The StRD set PiDigits has 3 where π has 8, at digit 957 counting the leading 3: `published` puts that in.
 */
export function piDigits(count: number, published: boolean): number[] {
  const unit = 10n ** BigInt(count + 10);
  const arctan = (inverse: bigint): bigint => {
    let power = unit / inverse;
    let sum = power;
    for (let n = 3n; power !== 0n; n += 2n) {
      power /= -(inverse * inverse);
      sum += power / n;
    }
    return sum;
  };
  const digits = [...String(4n * (4n * arctan(5n) - arctan(239n)))].slice(0, count).map(Number);
  if (published) digits[956] = 3;
  return digits;
}

/** One value, and then two in turn, 1001 values in all: the sets NumAcc2 and NumAcc4. */
const alternating = (first: number, low: number, high: number): number[] => [
  first,
  ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? low : high)),
];

/** A univariate set whose values are whole numbers of a unit, so that a double holds them exactly. */
export interface UnivariateSet {
  readonly name: keyof typeof fixture.univariate;
  readonly data: readonly number[];
  /** What one of the whole numbers stands for is 1 over this. */
  readonly perUnit: number;
}

const whole = (data: readonly number[], perUnit: number): number[] => data.map((value) => Math.round(value * perUnit));

export const univariateSets: readonly UnivariateSet[] = [
  { name: 'Lottery', data: fixture.univariate.Lottery.data, perUnit: 1 },
  { name: 'Mavro', data: whole(fixture.univariate.Mavro.data, 1e4), perUnit: 1e4 },
  { name: 'Michelso', data: whole(fixture.univariate.Michelso.data, 100), perUnit: 100 },
  { name: 'NumAcc1', data: [10_000_001, 10_000_003, 10_000_002], perUnit: 1 },
  { name: 'NumAcc2', data: alternating(12, 11, 13), perUnit: 10 },
  { name: 'NumAcc4', data: alternating(100_000_002, 100_000_001, 100_000_003), perUnit: 10 },
  { name: 'PiDigits', data: piDigits(5000, true), perUnit: 1 },
];

/** A regression set: the model's columns and the observations, scaled to whole numbers where they are decimals. */
export interface RegressionSet {
  readonly name: keyof typeof fixture.regression;
  readonly design: number[][];
  readonly observations: number[];
  /** What each coefficient is to be multiplied by, and then divided by, because of the scaling. */
  readonly factors: readonly (readonly [times: number, over: number])[];
}

const rowsOf = (name: keyof typeof fixture.regression): readonly number[][] => fixture.regression[name].rows;

/** The sets as they stand, in doubles. */
export const plainRegressions: readonly RegressionSet[] = [
  set('Norris', (x) => [1, x], 2),
  set('Pontius', (x) => [1, x, x * x], 3),
  set('NoInt1', (x) => [x], 1),
  set('Longley', (...x) => [1, ...x], 7),
  set('Filip', (x) => Array.from({ length: 11 }, (_, k) => x ** k), 11),
];

function set(name: RegressionSet['name'], columns: (...x: number[]) => number[], width: number): RegressionSet {
  return {
    name,
    design: rowsOf(name).map(([, ...x]) => columns(...x)),
    observations: rowsOf(name).map(([y]) => y as number),
    factors: Array<readonly [number, number]>(width).fill([1, 1]),
  };
}

/** The sets that can be scaled to whole numbers, which doubles hold exactly: what differs then is the calculation alone. */
export const exactRegressions: readonly RegressionSet[] = [
  {
    name: 'Norris',
    design: rowsOf('Norris').map(([, x]) => [1, Math.round((x as number) * 10)]),
    observations: rowsOf('Norris').map(([y]) => Math.round((y as number) * 10)),
    factors: [
      [1, 10],
      [1, 1],
    ],
  },
  {
    name: 'Pontius',
    design: rowsOf('Pontius').map(([, x]) => [1, x as number, (x as number) ** 2]),
    observations: rowsOf('Pontius').map(([y]) => Math.round((y as number) * 1e5)),
    factors: [
      [1, 1e5],
      [1, 1e5],
      [1, 1e5],
    ],
  },
  plainRegressions[2] as RegressionSet,
  {
    name: 'Longley',
    design: rowsOf('Longley').map(([, deflator, ...rest]) => [1, Math.round((deflator as number) * 10), ...rest]),
    observations: rowsOf('Longley').map(([y]) => y as number),
    factors: [1, 10, 1, 1, 1, 1, 1].map((times) => [times, 1] as const),
  },
];

/** Half a unit of the last of the digits printed. */
export function halfUnit(printed: string): number {
  const [mantissa, exponent = '0'] = printed.toLowerCase().split('e') as [string, string?];
  const decimals = mantissa.split('.')[1]?.length ?? 0;
  return Number(`5e${Number(exponent) - decimals - 1}`);
}

export { fixture as strd };
