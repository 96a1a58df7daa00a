import type { Prose } from './prose.js';

const limits = {
  T_L: 'lower tolerance limit',
  T_U: 'upper tolerance limit',
  A_L: 'lower acceptance limit',
  A_U: 'upper acceptance limit',
  w: 'guard band, positive inward',
  U: 'expanded uncertainty of the measurement',
  TUR: 'test uncertainty ratio',
};

/** Prose of the formulas of decision/, by formula identifier. */
export const decisionProse: Readonly<Record<string, Prose>> = {
  'guard-band': {
    title: 'Guard band of guarded acceptance',
    meanings: { w: limits.w, r: 'guard band as a multiple of the expanded uncertainty', U: limits.U },
    note: 'Where the uncertainty is proportional to the value, U and w are fractions of the value.',
  },
  'guard-band-outward': {
    title: 'Guard band of guarded rejection',
    meanings: { w: limits.w, r: 'guard band as a multiple of the expanded uncertainty', U: limits.U },
    note: 'Negative: the acceptance limits lie outside the tolerance, so that only a proven fault is rejected.',
  },
  'guard-band-of-risk': {
    title: 'Guard band that holds a stated specific risk',
    meanings: {
      w: limits.w,
      z: 'standard uncertainties between tolerance limit and acceptance limit, positive inward',
      u: 'standard uncertainty of the measurement',
    },
    note: 'With one limit z is a quantile. With two limits both tails together have the stated risk.',
  },
  'acceptance-lower': {
    title: 'Lower acceptance limit',
    meanings: { A_L: limits.A_L, T_L: limits.T_L, w: limits.w },
  },
  'acceptance-upper': {
    title: 'Upper acceptance limit',
    meanings: { A_U: limits.A_U, T_U: limits.T_U, w: limits.w },
  },
  'acceptance-lower-relative': {
    title: 'Lower acceptance limit, uncertainty proportional to the value',
    meanings: { A_L: limits.A_L, T_L: limits.T_L, w: 'guard band as a fraction of the acceptance limit' },
  },
  'acceptance-upper-relative': {
    title: 'Upper acceptance limit, uncertainty proportional to the value',
    meanings: { A_U: limits.A_U, T_U: limits.T_U, w: 'guard band as a fraction of the acceptance limit' },
    note: 'The uncertainty is that of a reading at the acceptance limit, not at the tolerance limit.',
  },
  'test-uncertainty-ratio': {
    title: 'Test uncertainty ratio',
    meanings: { TUR: limits.TUR, T_L: limits.T_L, T_U: limits.T_U, U: 'expanded uncertainty at 95 %' },
    note: 'The span of the tolerance counts, wherever the nominal lies in it. Other texts give the name to a ratio of standard deviations.',
  },
  'test-uncertainty-ratio-one-sided': {
    title: 'Test uncertainty ratio of a single limit',
    meanings: {
      TUR: limits.TUR,
      T: 'the tolerance limit',
      N: 'nominal value',
      U: 'expanded uncertainty at 95 %',
    },
    note: 'The standard defines the ratio for two limits. With one, the distance from the nominal takes the place of half the span.',
  },
  'managed-risk-multiplier': {
    title: 'Multiplier of the managed-risk guard band',
    meanings: { M: 'guard band as a multiple of the expanded uncertainty', TUR: limits.TUR },
    note: 'Made so that the global risk of a false accept stays below 2 % for every centred normal prior. Negative above a ratio of 4.59, where no guard band is needed.',
  },
  'guard-band-of-multiplier': {
    title: 'Managed-risk guard band',
    meanings: { w: limits.w, M: 'multiplier of the formula', U: limits.U },
    note: 'A negative multiplier would put the acceptance limit outside the tolerance: it counts as 0.',
  },
  'guard-band-root-sum-square': {
    title: 'Guard band by the root of the difference of squares',
    meanings: { w: limits.w, TUR: limits.TUR, U: limits.U },
    note: 'The same as an acceptance limit of √(1 − 1/TUR²) times the tolerance, counted from its middle. Below a ratio of 1 nothing can be accepted.',
  },
  'guard-band-relaxed': {
    title: 'Relaxed guard band below a ratio of 4',
    meanings: { w: limits.w, TUR: limits.TUR, U: limits.U },
    note: 'The same as an acceptance limit of 1.25 − 1/TUR times the tolerance, counted from its middle; none above a ratio of 4.',
  },
  'distance-to-lower': {
    title: 'Distance of a value from the lower limit, in standard uncertainties',
    meanings: { z_L: 'distance, positive inside', y: 'measured value', T_L: limits.T_L, u: 'standard uncertainty' },
    note: 'The probability of lying below the limit is the upper tail at this distance.',
  },
  'distance-to-upper': {
    title: 'Distance of a value from the upper limit, in standard uncertainties',
    meanings: { z_U: 'distance, positive inside', y: 'measured value', T_U: limits.T_U, u: 'standard uncertainty' },
    note: 'The probability of lying above the limit is the upper tail at this distance.',
  },
  'en-number': {
    title: 'E_n number of two results',
    meanings: {
      E_n: 'difference as a part of its expanded uncertainty',
      x: 'result, such as the display of the generator',
      X: 'reference, such as the reading of the instrument',
      U_x: 'expanded uncertainty of the result',
      U_X: 'expanded uncertainty of the reference',
    },
    note: 'Expanded uncertainties of one coverage factor, about 2. The two results must not share an error.',
  },
  'zeta-score': {
    title: 'Zeta score of two results',
    meanings: {
      zeta: 'difference in standard uncertainties of it',
      x: 'result, such as the display of the generator',
      X: 'reference, such as the reading of the instrument',
      u_x: 'standard uncertainty of the result',
      u_X: 'standard uncertainty of the reference',
    },
    note: 'The two results must not share an error.',
  },
};
