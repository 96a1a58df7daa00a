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
  'newton-cooling': {
    title: "Newton's law of cooling, with one thermal resistance and one time constant",
    standing: 'derived',
    note: 'A model: a real load has more than one time constant. The maker of the load states what it takes.',
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
