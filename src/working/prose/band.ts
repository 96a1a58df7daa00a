import type { Prose } from './prose.js';

/** Prose of the formulas of band/, by formula identifier. */
export const bandProse: Readonly<Record<string, Prose>> = {
  'limit-below-relative': {
    title: 'Lower limit, relative tolerance',
    meanings: { x_lower: 'lower limit', N: 'nominal value', r: 'tolerance below the nominal, a fraction of it' },
  },
  'limit-below-absolute': {
    title: 'Lower limit, absolute tolerance',
    meanings: { x_lower: 'lower limit', N: 'nominal value', a: 'tolerance below the nominal, in its unit' },
  },
  'limit-below-sum': {
    title: 'Lower limit, sum of a relative and an absolute tolerance',
    meanings: {
      x_lower: 'lower limit',
      N: 'nominal value',
      r: 'tolerance below the nominal, a fraction of it',
      a: 'tolerance below the nominal, in its unit',
    },
  },
  'limit-below-greater': {
    title: 'Lower limit, greater of a relative and an absolute tolerance',
    meanings: {
      x_lower: 'lower limit',
      N: 'nominal value',
      r: 'tolerance below the nominal, a fraction of it',
      a: 'tolerance below the nominal, in its unit',
    },
    note: 'The wider of both limits holds.',
  },
  'limit-above-relative': {
    title: 'Upper limit, relative tolerance',
    meanings: { x_upper: 'upper limit', N: 'nominal value', r: 'tolerance above the nominal, a fraction of it' },
  },
  'limit-above-absolute': {
    title: 'Upper limit, absolute tolerance',
    meanings: { x_upper: 'upper limit', N: 'nominal value', a: 'tolerance above the nominal, in its unit' },
  },
  'limit-above-sum': {
    title: 'Upper limit, sum of a relative and an absolute tolerance',
    meanings: {
      x_upper: 'upper limit',
      N: 'nominal value',
      r: 'tolerance above the nominal, a fraction of it',
      a: 'tolerance above the nominal, in its unit',
    },
  },
  'limit-above-greater': {
    title: 'Upper limit, greater of a relative and an absolute tolerance',
    meanings: {
      x_upper: 'upper limit',
      N: 'nominal value',
      r: 'tolerance above the nominal, a fraction of it',
      a: 'tolerance above the nominal, in its unit',
    },
    note: 'The wider of both limits holds.',
  },
  'limit-at-floor': {
    title: 'Lower limit, raised to a physical floor',
    meanings: { x_lower: 'lower limit', x: 'lower limit by the tolerance', f: 'physical floor' },
    note: 'A resistance, for one, is not negative.',
  },
  'rounded-up': {
    title: 'Limit rounded up to the resolution of an instrument',
    meanings: { x_r: 'rounded limit', x: 'limit', q: 'resolution: one step of the last digit' },
    note: 'A limit within 1e-12 (relative) of a step counts as on it.',
  },
  'rounded-down': {
    title: 'Limit rounded down to the resolution of an instrument',
    meanings: { x_r: 'rounded limit', x: 'limit', q: 'resolution: one step of the last digit' },
    note: 'A limit within 1e-12 (relative) of a step counts as on it.',
  },
  'rounded-to-nearest': {
    title: 'Limit rounded to the nearest step of an instrument',
    meanings: { x_r: 'rounded limit', x: 'limit', q: 'resolution: one step of the last digit' },
    note: 'May loosen the limit by half a step. A tie goes away from 0.',
  },
  'middle-of-limits': {
    title: 'Nominal in the middle of two values',
    meanings: { N: 'nominal value', x_l: 'lower value', x_u: 'upper value' },
  },
  'geometric-middle': {
    title: 'Nominal in the geometric middle of two limits',
    meanings: { N: 'nominal value', x_l: 'lower limit', x_u: 'upper limit' },
    note: 'The same in power, current and voltage.',
  },
  'nominal-from-lower': {
    title: 'Nominal from its lower limit, relative tolerance',
    meanings: { N: 'nominal value', x: 'lower limit', r: 'relative tolerance, a fraction of the nominal' },
  },
  'nominal-from-lower-absolute': {
    title: 'Nominal from its lower limit, absolute tolerance',
    meanings: { N: 'nominal value', x: 'lower limit', a: 'absolute tolerance' },
  },
  'nominal-from-lower-sum': {
    title: 'Nominal from its lower limit, sum of a relative and an absolute tolerance',
    meanings: {
      N: 'nominal value',
      x: 'lower limit',
      a: 'absolute tolerance',
      r: 'relative tolerance, a fraction of the nominal',
    },
  },
  'nominal-from-lower-greater': {
    title: 'Nominal from its lower limit, greater of a relative and an absolute tolerance',
    meanings: {
      N: 'nominal value',
      x: 'lower limit',
      a: 'absolute tolerance',
      r: 'relative tolerance, a fraction of the nominal',
    },
  },
  'nominal-from-upper': {
    title: 'Nominal from its upper limit, relative tolerance',
    meanings: { N: 'nominal value', x: 'upper limit', r: 'relative tolerance, a fraction of the nominal' },
  },
  'nominal-from-upper-absolute': {
    title: 'Nominal from its upper limit, absolute tolerance',
    meanings: { N: 'nominal value', x: 'upper limit', a: 'absolute tolerance' },
  },
  'nominal-from-upper-sum': {
    title: 'Nominal from its upper limit, sum of a relative and an absolute tolerance',
    meanings: {
      N: 'nominal value',
      x: 'upper limit',
      a: 'absolute tolerance',
      r: 'relative tolerance, a fraction of the nominal',
    },
  },
  'nominal-from-upper-greater': {
    title: 'Nominal from its upper limit, greater of a relative and an absolute tolerance',
    meanings: {
      N: 'nominal value',
      x: 'upper limit',
      a: 'absolute tolerance',
      r: 'relative tolerance, a fraction of the nominal',
    },
  },
  'lowest-before-rounding': {
    title: 'Lowest value that rounds to a printed limit',
    meanings: { x_0: 'lowest value before rounding', x: 'printed limit', q: 'step of the last printed digit' },
    note: 'For a quantity that cannot be negative.',
  },
  'highest-before-rounding': {
    title: 'Highest value that rounds to a printed limit',
    meanings: { x_1: 'highest value before rounding', x: 'printed limit', q: 'step of the last printed digit' },
  },
  'lowest-of-both': {
    title: 'Lowest nominal that both limits allow',
    meanings: {
      N_0: 'lowest nominal that both allow',
      x: 'lowest nominal by the lower limit',
      y: 'lowest nominal by the upper limit',
    },
  },
  'highest-of-both': {
    title: 'Highest nominal that both limits allow',
    meanings: {
      N_1: 'highest nominal that both allow',
      x: 'highest nominal by the lower limit',
      y: 'highest nominal by the upper limit',
    },
    note: 'Below the lowest where no nominal explains both limits.',
  },
  'implied-tolerance-below': {
    title: 'Relative tolerance that a lower limit implies',
    meanings: { r: 'tolerance below the nominal, a fraction of it', N: 'nominal value', x: 'lower limit' },
  },
  'implied-tolerance-above': {
    title: 'Relative tolerance that an upper limit implies',
    meanings: { r: 'tolerance above the nominal, a fraction of it', N: 'nominal value', x: 'upper limit' },
  },
};
