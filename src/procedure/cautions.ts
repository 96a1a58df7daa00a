import type { Caution } from '../working/index.js';

/** Cautions that the trade publishes for people who test such equipment. The maker's come first. */
export const cautions: readonly Caution[] = [
  {
    id: 'trained-people',
    text: 'HF surgical outputs can injure or kill. Only trained people test them, to the maker\u2019s instructions and the local rules, which come before this sheet.',
    standing: 'published',
  },
  {
    id: 'rf-burns',
    text: 'RF burns: do not touch the load, the leads or the output while it is active. Keep others away. Work on a surface that does not conduct.',
    standing: 'published',
  },
  {
    id: 'connect-output-off',
    text: 'Connect and disconnect only with the output off. Do not activate into an open circuit unless the procedure asks for it: the voltage is highest there.',
    standing: 'published',
  },
  {
    id: 'low-output',
    text: 'When an output is low, check the connections and the neutral electrode first. Do not raise the setting to make up for it.',
    standing: 'published',
  },
  {
    id: 'hot-loads',
    text: 'Loads run hot. Keep to their rating and to the activation times and pauses of this sheet.',
    standing: 'common practice',
  },
  {
    id: 'atmosphere',
    text: 'No flammable or oxidising atmosphere at the bench.',
    standing: 'published',
  },
  {
    id: 'no-release',
    text: 'A result of this library does not release equipment for clinical use: the maker\u2019s procedure, local codes and licensed practice decide.',
    standing: 'common practice',
  },
];
