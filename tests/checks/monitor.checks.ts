import {
  type DisplayFit,
  displayFit,
  padImpedance,
  placeReading,
  readingRows,
  type SplitPad,
} from '../../src/monitor/index.js';
import { exactRegressions, halfUnit, strd } from '../numeric/strd-data.js';
import { type Check, idOf } from './check.js';

const room = 'monitor';

/** The trade's reading bands, on a display of whole ohms. */
const bands = readingRows({
  rows: [
    { set: 100, tolerance: { absolute: 7 } },
    { set: 50, tolerance: { absolute: 7 } },
    { set: 0, tolerance: { absolute: 4 } },
    { set: 'open', below: 2000 },
  ],
  resolution: 1,
});

const practice = {
  room,
  source: 'common practice, no source',
  standing: 'common practice',
  sourceId: 'common-practice',
  tolerance: 0,
} as const;

const bandChecks = (
  [
    [0, '100 ohm', 'lower', 93],
    [0, '100 ohm', 'upper', 107],
    [1, '50 ohm', 'lower', 43],
    [1, '50 ohm', 'upper', 57],
    [2, '0 ohm', 'lower', 0],
    [2, '0 ohm', 'upper', 4],
  ] as const
).map(
  ([row, what, side, published]): Check => ({
    ...practice,
    id: `monitor-reading-${idOf(bands[row]?.set as number)}-${side}`,
    title: `${side} limit of the display of a monitor at ${what}`,
    published,
    unit: 'ohm',
    compute: () => bands[row]?.limits[side] as number,
  }),
);

/** Displays of an open circuit, and whether the practice accepts them. */
const openChecks = (
  [
    [1999, 1],
    [2000, 0],
    ['over-range', 0],
  ] as const
).map(
  ([displayed, published]): Check => ({
    ...practice,
    id: `monitor-reading-open-${displayed}`,
    title: `an open circuit shown as ${displayed}: 1 accepted, 0 refused (any display below 2000 ohm)`,
    published,
    unit: '1',
    compute: () => Number(placeReading(bands[3]?.limits ?? {}, displayed) === 'inside'),
  }),
);

/** The set Norris of NIST StRD in tenths, which doubles hold exactly, as set and displayed resistances. */
const norris = (): DisplayFit => {
  const { design, observations } = exactRegressions.find(
    ({ name }) => name === 'Norris',
  ) as (typeof exactRegressions)[0];
  return displayFit({
    rows: design.map(([, set], i) => ({ set: set as number, displayed: observations[i] as number })),
    resolution: 1,
  });
};

const norrisValues: readonly (readonly [what: string, row: 0 | 1, 'coefficient' | 'standardError', () => number])[] = [
  ['offset', 0, 'coefficient', () => norris().offset / 10],
  ['offset-standard-error', 0, 'standardError', () => (norris().offsetStandardError as number) / 10],
  ['gain', 1, 'coefficient', () => norris().gain],
  ['gain-standard-error', 1, 'standardError', () => norris().gainStandardError as number],
];

const fitChecks = norrisValues.map(([what, row, member, compute]): Check => {
  const printed = strd.regression.Norris.certified[row]?.[member] as string;
  return {
    id: `monitor-display-norris-${what}`,
    room,
    title: `${what.replaceAll('-', ' ')} of a display, data of Norris`,
    source: 'NIST StRD, linear regression Norris, certified values',
    standing: 'secondary',
    published: Number(printed),
    unit: '1',
    tolerance: halfUnit(printed),
    compute,
  };
});

/** A straight line with equal weights. */
const line = () =>
  displayFit({
    rows: [3.3, 5.6, 7.1, 9.3, 10.7, 12.1].map((displayed, i) => ({ set: i + 1, displayed })),
    resolution: 0.1,
  });

const lineChecks = (
  [
    ['offset', 1.867, () => line().offset],
    ['gain', 1.757, () => line().gain],
  ] as const
).map(
  ([what, published, compute]): Check => ({
    id: `monitor-display-iso28037-${what}`,
    room,
    title: `${what} of a display, data of the example with equal weights`,
    source: 'ISO/TS 28037:2010, 6.3, example 1',
    standing: 'secondary',
    published,
    unit: '1',
    tolerance: 0.0005,
    compute,
  }),
);

const reading = { frequency: 80e3, reads: 'resistance' } as const;
/** A foil of three patches of 1.00, 6.00 and 13.0 ohm that touch side by side, and what is left without the first. */
const patches = { resistance: 1 / (1 + 1 / 6 + 1 / 13), area: (1 / 6 + 1 / 13) / (1 + 1 / 6 + 1 / 13) };

const circuitChecks = (
  [
    [
      'series',
      20,
      0.05,
      'contacts of 6.00 and 13.0 ohm and tissue of 1.00 ohm in series',
      [{ resistance: 6 }, { resistance: 13 }],
      1,
    ],
    [
      'series-parallel',
      5.11,
      0.005,
      'foil that has lost its 1.00 ohm patch of three, in series with 1.00 ohm',
      [patches, { resistance: 1 }],
      0,
    ],
  ] as const
).map(
  ([what, published, tolerance, title, contacts, tissue]): Check => ({
    id: `monitor-pad-${what}`,
    room,
    title,
    source: 'OpenStax, College Physics, section 21.1, resistors in series and parallel, worked examples',
    standing: 'published',
    published,
    unit: 'ohm',
    tolerance,
    compute: () => padImpedance({ contacts, tissue } as SplitPad, reading).seen,
  }),
);

const lostPatch: Check = {
  id: 'monitor-pad-parallel',
  room,
  title: 'contact of a foil that has lost its 1.00 ohm patch of three',
  source: 'OpenStax, College Physics, section 21.1, resistors in series and parallel, worked examples',
  standing: 'published',
  published: 4.11,
  unit: 'ohm',
  tolerance: 0.005,
  compute: () => padImpedance({ contacts: [patches, { resistance: 1 }], tissue: 0 }, reading).contacts[0].resistance,
};

/** Published values of reading bands, straight lines and circuits. */
export const monitorChecks: readonly Check[] = [
  ...bandChecks,
  ...openChecks,
  ...fitChecks,
  ...lineChecks,
  ...circuitChecks,
  lostPatch,
];
