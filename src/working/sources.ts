import type { Standing } from './standing.js';

/** An entry of the bibliography. */
export interface Source {
  /** Title, with edition and year where the source has them. */
  readonly title: string;
  /** How the text was known when it was used here. */
  readonly standing: Standing;
  /** Where the text was read, or what a reader should know before relying on it. */
  readonly note?: string;
}

/** The bibliography: every source that a formula, a fact or a check names. */
export const sources = {
  'ohm-joule': {
    title: "Ohm's law and Joule's law",
    standing: 'derived',
    note: 'Rms values of a sinusoidal or any other periodic quantity in a resistor.',
  },
  definition: { title: 'Definition of the quantity', standing: 'derived' },
  'iec-60601-2-2': {
    title:
      'IEC 60601-2-2:2017, Particular requirements for the basic safety and essential performance of high frequency surgical equipment',
    standing: 'published',
    note: 'Clauses read in the public text of GB 9706.202-2021, a modified adoption. Check your copy of the standard.',
  },
  'iec-60601-2-2-memory': {
    title:
      'IEC 60601-2-2, Particular requirements for the basic safety and essential performance of high frequency surgical equipment',
    standing: 'from memory',
    note: 'From memory: check your copy of the standard.',
  },
  'is-7583': {
    title: 'IS 7583:1991, HF surgical equipment, aligned with IEC 601-2-2:1982',
    standing: 'published',
    note: 'Measuring resistor and load of the HF leakage measurement, 200 \u03a9 each.',
  },
  'aami-hf18': {
    title: 'ANSI/AAMI HF18, Electrosurgical devices: thermal performance of neutral electrodes',
    standing: 'published',
    note: 'Figures as cited in published abstracts. Check your copy of the standard.',
  },
  'icnirp-2010': {
    title:
      'ICNIRP, Guidelines for limiting exposure to time-varying electric and magnetic fields (1 Hz to 100 kHz), Health Physics 99 (2010)',
    standing: 'secondary',
    note: 'Reference levels for contact currents, 100 kHz to 10 MHz, as reproduced in a textbook.',
  },
  'fritsch-carlson-1980': {
    title: 'F. N. Fritsch and R. E. Carlson, Monotone piecewise cubic interpolation, SIAM J. Numer. Anal. 17 (1980)',
    standing: 'secondary',
  },
  'fritsch-butland-1984': {
    title:
      'F. N. Fritsch and J. Butland, A method for constructing local monotone piecewise cubic interpolants, SIAM J. Sci. Stat. Comput. 5 (1984)',
    standing: 'secondary',
  },
  'rosa-1908': {
    title:
      'E. B. Rosa, The self and mutual inductances of linear conductors, Bulletin of the Bureau of Standards 4 (1908)',
    standing: 'secondary',
  },
  'lorenz-1879': {
    title: 'L. Lorenz (1879), with the coefficient that H. Nagaoka tabulated (1909)',
    standing: 'secondary',
    note: 'The coefficient is held against elliptic integrals at 40 digits.',
  },
  'round-wire-field': {
    title:
      "Field of a sinusoidal current in a round wire, Z' = \u03c1m\u00b7I\u2080(ma)/(2\u03c0a\u00b7I\u2081(ma)), m = (1 + j)/\u03b4",
    standing: 'derived',
    note: 'For a wire alone: one beside it moves the current to one side.',
  },
  'line-equations': {
    title:
      'Equations of a line of two conductors, V = cosh(\u03b3l)\u00b7V\u2082 + Z\u2080\u00b7sinh(\u03b3l)\u00b7I\u2082',
    standing: 'derived',
    note: 'For a sine. Held against the same equations at 40 digits.',
  },
  'newton-cooling': {
    title: "Newton's law of cooling, with one thermal resistance and one time constant",
    standing: 'derived',
    note: 'A model: a real load has more than one time constant. The maker of the load states what it takes.',
  },
  'jcgm-100': {
    title: 'JCGM 100:2008, Evaluation of measurement data \u2013 Guide to the expression of uncertainty in measurement',
    standing: 'from memory',
    note: 'Free to read at the BIPM. Its examples are reproduced by the published checks.',
  },
  'jcgm-102': {
    title:
      'JCGM 102:2011, Evaluation of measurement data \u2013 Supplement 2 to the GUM: Extension to any number of output quantities',
    standing: 'from memory',
    note: 'Free to read at the BIPM.',
  },
  'willink-hall-2002': {
    title:
      'R. Willink and B. D. Hall, A classical method for uncertainty analysis with multidimensional data, Metrologia 39 (2002) 361',
    standing: 'from memory',
    note: 'Formula of the total-variance method for two outputs. It gives the published values of both examples that were found, one of them to 15 digits.',
  },
  'hotelling-1931': {
    title: "H. Hotelling, The generalization of Student's ratio, Annals of Mathematical Statistics 2 (1931) 360",
    standing: 'from memory',
    note: 'Held by simulated series of readings.',
  },
  'jcgm-106': {
    title:
      'JCGM 106:2012, Evaluation of measurement data \u2013 The role of measurement uncertainty in conformity assessment',
    standing: 'from memory',
    note: 'Free to read at the BIPM. Its examples are reproduced by the published checks.',
  },
  'ilac-g8-2019': {
    title: 'ILAC-G8:09/2019, Guidelines on Decision Rules and Statements of Conformity',
    standing: 'published',
    note: 'Clause 4.2 and table 1 read in public copies of the text.',
  },
  'ncsl-z540-3': {
    title: 'ANSI/NCSL Z540.3-2006, Requirements for the Calibration of Measuring and Test Equipment',
    standing: 'from memory',
    note: 'From memory: check your copy of the standard.',
  },
  'dobbert-2008': {
    title: 'M. Dobbert, A guard-band strategy for managing false-accept risk, NCSL International Workshop (2008)',
    standing: 'secondary',
    note: 'Formula and abstract as quoted elsewhere; its promise is held by a check over all centred normal priors.',
  },
  'guard-band-collection': {
    title: 'Guard bands by test uncertainty ratio, as collected in public uncertainty calculators',
    standing: 'secondary',
  },
  'iso-13528': {
    title: 'ISO 13528, Statistical methods for use in proficiency testing, and ISO/IEC 17043',
    standing: 'secondary',
    note: 'Definitions as quoted in public pages of NIST Dataplot.',
  },
  'common-practice': { title: 'Common practice of the trade, no source', standing: 'common practice' },
  'maker-sheet': {
    title: "The generator maker's published data, as given in the specification",
    standing: 'published',
    note: 'As good as the sheet it was read from.',
  },
} as const satisfies Record<string, Source>;

/** Identifier of a source of the bibliography. */
export type SourceId = keyof typeof sources;
