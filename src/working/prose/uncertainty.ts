import type { Prose } from './prose.js';

const matrix = {
  V_11: 'variance of the first output',
  V_12: 'covariance of both outputs',
  V_22: 'variance of the second output',
};
const ellipse = {
  k: 'coverage factor',
  p: 'coverage probability',
  nu: 'effective degrees of freedom of the covariance matrix',
  a: 'half the long axis',
};

/** Prose of the formulas of uncertainty/, by formula identifier. */
export const uncertaintyProse: Readonly<Record<string, Prose>> = {
  'covariance-spread': {
    title: 'Variances of the entries of a covariance matrix, added up',
    meanings: { w: 'sum over the entries, times the degrees of freedom', ...matrix },
    note: 'Both outputs in one unit. For one output its second variance is 0, and w is twice the variance squared.',
  },
  'joint-degrees-sum': {
    title: 'Sum over the independent sources',
    meanings: {
      S: 'sum with this source',
      S_0: 'sum of the sources before it',
      w: 'that of the contribution of this source',
      nu: 'degrees of freedom of this source',
    },
    note: 'A source with infinite degrees of freedom adds nothing.',
  },
  'joint-degrees': {
    title: 'Effective degrees of freedom of a covariance matrix',
    meanings: {
      nu_eff: 'effective degrees of freedom of both outputs together',
      W: 'w of the whole covariance matrix',
      S: 'sum over the sources',
    },
    note: 'For one output this is the Welch\u2013Satterthwaite formula.',
  },
  'ellipse-factor': {
    title: 'Coverage factor of two outputs, finite degrees of freedom',
    meanings: { k: ellipse.k, p: ellipse.p, nu: ellipse.nu },
    note: "Hotelling's T\u00b2, k\u00b2 = 2\u03bd/(\u03bd \u2212 1)\u00b7F: with two degrees in its numerator F has a closed form.",
  },
  'ellipse-factor-normal': {
    title: 'Coverage factor of two outputs, infinite degrees of freedom',
    meanings: { k: ellipse.k, p: ellipse.p },
    note: 'The root of \u03c7\u00b2 with two degrees of freedom: 2.45 for 95 %, where one output has 1.96.',
  },
  'ellipse-major': {
    title: 'Half the long axis of an elliptical coverage region',
    meanings: { a: ellipse.a, k: ellipse.k, ...matrix },
  },
  'ellipse-minor': {
    title: 'Half the short axis of an elliptical coverage region',
    meanings: { b: 'half the short axis', a: ellipse.a, k: ellipse.k, ...matrix },
  },
  'ellipse-angle': {
    title: 'Direction of the long axis of an elliptical coverage region',
    meanings: { theta: 'from the axis of the first output to the long axis', ...matrix },
  },
};
