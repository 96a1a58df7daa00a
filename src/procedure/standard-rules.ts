import type { SourceId, Standing } from '../working/index.js';

/** Identifier of a rule of IEC 60601-2-2 that the library can apply. */
export type RuleId = 'output-accuracy' | 'output-monotone' | 'peak-voltage' | 'supply-interruption';

/** A rule of the standard, as data. */
export interface StandardRule {
  readonly title: string;
  readonly source: SourceId;
  /** Clause of the edition that the source names. */
  readonly clause: string;
  readonly standing: Standing;
  /** What the clause asks, in our words. */
  readonly text: string;
  /** Numbers of the rule, by name; a choice may give others. */
  readonly parameters: Readonly<Record<string, number>>;
}

/** A rule that is chosen, with other parameters where the user knows better. */
export interface RuleChoice {
  readonly rule: RuleId;
  /** Parameters in place of the rule's own, by the same names. */
  readonly parameters?: Readonly<Record<string, number>>;
}

/** Rules of IEC 60601-2-2 for RF output. None applies unless it is chosen. */
export const standardRules: Readonly<Record<RuleId, StandardRule>> = {
  'output-accuracy': {
    title: 'Accuracy of the output power',
    source: 'iec-60601-2-2',
    clause: '201.12.1.101',
    standing: 'published',
    text: 'Above 10 % of the rated output power, the power at a load and a setting does not deviate from the published diagram by more than 20 %.',
    parameters: { below: 0.2, above: 0.2, fromFraction: 0.1 },
  },
  'output-monotone': {
    title: 'Output does not rise when the setting is lowered',
    source: 'iec-60601-2-2',
    clause: '201.12.1.102',
    standing: 'published',
    text: 'The output power does not increase when the output control is turned down.',
    parameters: {},
  },
  'peak-voltage': {
    title: 'Maximum output voltage',
    source: 'iec-60601-2-2',
    clause: '201.12.1.103',
    standing: 'published',
    text: 'The peak output voltage of a mode does not exceed the value that the maker states.',
    parameters: {},
  },
  'supply-interruption': {
    title: 'After an interruption of the supply',
    source: 'iec-60601-2-2',
    clause: '201.11.8',
    standing: 'published',
    text: 'When the supply is interrupted and restored, the output power at a setting does not rise by more than 20 % and the mode does not change.',
    parameters: { above: 0.2 },
  },
};
