import type { Caution } from '../working/index.js';

/** Cautions of every result for a neutral electrode. */
export const electrodeCautions: readonly Caution[] = [
  {
    id: 'not-for-a-patient',
    text: 'These are figures of electricity and of a test. They say nothing of a patient: choice, place and use of an electrode are for its maker\u2019s instructions and licensed practice.',
    standing: 'common practice',
  },
  {
    id: 'edges',
    text: 'Mean values hide the edges of an electrode, where current and heat crowd: a mean that looks low does not show that no spot is hot.',
    standing: 'common practice',
  },
  {
    id: 'rf-burns',
    text: 'RF burns: touch neither electrode nor leads while the output is active, and try nothing on a person.',
    standing: 'published',
  },
  {
    id: 'no-release',
    text: 'This result does not release an electrode or a generator for clinical use: the maker\u2019s procedure, local codes and licensed practice decide.',
    standing: 'common practice',
  },
];
