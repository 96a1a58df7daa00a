import type { Prose } from './prose.js';

/** Prose of the formulas of procedure/, by formula identifier. */
export const procedureProse: Readonly<Record<string, Prose>> = {
  'power-of-setting': {
    title: 'Power of a setting in watts',
    meanings: { P: 'power into the rated load', s: 'setting of the control, in watts' },
    note: 'On a control in watts the setting is the power that the output delivers into its rated load.',
  },
  'stated-power': {
    title: 'Power that the sheet states for a point',
    meanings: { P: 'expected power', P_stated: 'power printed in the row or asked for by the test point' },
  },
  'power-scaled-with-setting': {
    title: 'Power at a setting without a curve of its own',
    meanings: {
      P: 'expected power at the setting',
      P_c: 'power of the published curve at the same load',
      s: 'setting',
      s_c: 'setting of the published curve',
    },
    note: 'Holds only where the sheet says that power follows the setting in proportion at every load.',
  },
  'power-carried-to-load': {
    title: 'Power carried from one load to another along a curve',
    meanings: {
      P: 'power at the load of the bench',
      P_a: 'power at the load of the sheet',
      P_ca: 'power that the curve gives at the load of the sheet',
      P_cb: 'power that the curve gives at the load of the bench',
    },
    note: 'Keeps the ratio to the curve: a limit that is 10 % below the curve at one load is 10 % below it at the other.',
  },
  'middle-of-band': {
    title: 'Middle of two limits',
    meanings: { x_n: 'middle', x_l: 'lower limit', x_u: 'upper limit' },
    note: 'Used as nominal only where a row states limits and no expected value.',
  },
  'margin-below-nominal': {
    title: 'Margin of a reading below its nominal',
    meanings: {
      m: 'margin: 0 at nominal, \u22121 at the lower limit',
      x: 'reading',
      x_n: 'nominal',
      x_l: 'lower limit',
    },
  },
  'margin-above-nominal': {
    title: 'Margin of a reading above its nominal',
    meanings: { m: 'margin: 0 at nominal, +1 at the upper limit', x: 'reading', x_n: 'nominal', x_u: 'upper limit' },
  },
  difference: {
    title: 'Difference of two values',
    meanings: { d: 'difference', x: 'value', y: 'value that it is compared with' },
  },
  'relative-difference': {
    title: 'Relative difference of two values',
    meanings: { d_rel: 'relative difference', x: 'value', y: 'value that it is compared with' },
  },
  'source-current-ratio': {
    title: 'Current of a generator into an impedance, over that into a resistance',
    meanings: {
      g: 'current over that into the resistance alone',
      Z: 'magnitude of the impedance that the generator sees',
      R: 'resistance of the load',
      s: 'slope of the power curve, from \u22121 (constant voltage) over 0 (constant power) to 1 (constant current)',
      phi: 'phase of the impedance',
    },
  },
  'reading-ratio-current': {
    title: 'Current that is read over that of an ideal load',
    meanings: {
      f_I: 'ratio of the readings',
      g: 'current of the generator over that into an ideal load',
      k: 'current at the instrument over that of the generator',
    },
  },
  'reading-ratio-voltage': {
    title: 'Voltage that is read over that of an ideal load',
    meanings: {
      f_V: 'ratio of the readings',
      g: 'current of the generator over that into an ideal load',
      k: 'voltage at the instrument over that of the generator',
      Z: 'magnitude of the impedance that the generator sees',
      R: 'resistance of the load',
    },
  },
  'reading-ratio-power': {
    title: 'Power that is read over that of an ideal load',
    meanings: {
      f_P: 'ratio of the readings',
      g: 'current of the generator over that into an ideal load',
      k: 'current at the instrument over that of the generator',
      X: 'resistance that is in series there',
      R: 'resistance of the load',
    },
  },
  'corrected-for-strays': {
    title: 'Value with the strays of load and leads',
    meanings: { x: 'value that is read', f: 'reading over that of an ideal load', x_i: 'value at an ideal load' },
  },
};
