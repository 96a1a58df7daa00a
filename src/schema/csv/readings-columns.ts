import type { HeaderRules } from './header-rules.js';

/** A column of a sheet of readings. */
export interface ReadingsColumn {
  /** Name in the header; capitals, blanks, hyphens and underscores make no difference. */
  readonly name: string;
  /** What stands in it. */
  readonly holds: string;
}

/** Columns of a sheet of readings that are read. A unit may stand in square brackets after the name: `reading [mA]`. */
export const readingsColumns = [
  {
    name: 'point',
    holds: 'Identifier or number of the point in the plan, the word monitor, or a challenge such as monitor/3.',
  },
  { name: 'set', holds: 'In a row of the monitor: the resistance that was set, or open.' },
  {
    name: 'reading',
    holds: 'What the instrument showed, with its unit; in a row of the monitor, what its display showed.',
  },
  { name: 'display', holds: 'What the display of the generator showed, with its unit.' },
  { name: 'peak voltage', holds: 'Peak voltage, with its unit.' },
  { name: 'response time', holds: 'In a row of a challenge of the monitor: time to its alarm, with its unit.' },
  {
    name: 'alarm reason',
    holds:
      'In a row of a challenge of the monitor: the reason that it gave for an alarm: above-upper, below-lower, rise or not-yet-accepted.',
  },
  { name: 'phase', holds: 'as-found or as-left.' },
  { name: 'after interruption', holds: 'yes when the supply was interrupted and restored just before the reading.' },
  { name: 'mode unchanged', holds: 'yes or no, after an interruption.' },
  { name: 'note', holds: 'Free text.' },
] as const satisfies readonly ReadingsColumn[];

/** Name of a column that is read. */
export type ReadingsColumnName = (typeof readingsColumns)[number]['name'];

/** Columns that a worksheet prints for the technician, and their usual other names; they are not read. */
export const informativeColumns = [
  'number',
  'output',
  'mode',
  'connection',
  'measured from',
  'leads',
  'setting',
  'wanted load',
  'load on the bench',
  'load',
  'expected power',
  'expected peak voltage',
  'longest activation',
  'pause',
  'feasible',
  'warnings',
  'what to do',
  'quantity',
  'unit',
  'expected',
  'nominal',
  'lower limit',
  'upper limit',
  'lower',
  'upper',
  'limits',
  'expanded uncertainty',
  'test uncertainty ratio',
  'accept from',
  'accept to',
] as const;

/** What the header of a sheet of readings may hold. */
export const readingsHeader: HeaderRules<ReadingsColumnName> = {
  names: readingsColumns.map(({ name }) => name),
  informative: informativeColumns,
  required: ['point', 'reading'],
  units: {
    reading: ['power', 'current', 'voltage'],
    display: ['power', 'current', 'voltage'],
    'peak voltage': ['voltage'],
    set: ['resistance'],
  },
  besides: ' or that a worksheet prints',
};
