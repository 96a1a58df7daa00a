import type { SourceId, Standing } from '../working/index.js';

/** Identifier of an arrangement for measuring HF leakage. */
export type LeakageArrangementId =
  | 'earth-referenced-load-between-electrodes'
  | 'earth-referenced-load-to-earth'
  | 'isolated'
  | 'bipolar';

/** An electrode, or a pole of a bipolar output, that the measuring resistor goes to earth from. */
export type LeakageElectrode = 'active electrode' | 'neutral electrode' | 'pole 1' | 'pole 2';

/** What is between the electrodes while the leakage is read. */
export type LeakageLoading = (typeof leakageLoadings)[number];

/** Both states of the output in which an arrangement may ask for the leakage. */
export const leakageLoadings = ['rated-load', 'unloaded'] as const;

/** Where the leakage is measured: at the end of the leads with their electrodes, or at the terminals of the generator. */
export type LeakagePlace = 'leads' | 'terminals';

/** A limit of the standard: a current, or a share of the rated power in the measuring resistor. */
export type KnownLeakageLimit = (
  | {
      readonly kind: 'current';
      /** Highest leakage, in amperes rms. */
      readonly current: number;
    }
  | {
      readonly kind: 'share-of-rated-power';
      /** Highest power in the measuring resistor, as a fraction of the highest rated output power. */
      readonly share: number;
    }
) & {
  readonly source: SourceId;
  readonly clause: string;
  readonly edition: string;
  readonly standing: Standing;
};

/** How HF leakage is measured, as data. */
export interface LeakageArrangement {
  readonly title: string;
  readonly circuit: 'monopolar' | 'bipolar';
  /** What is connected, in our words. */
  readonly text: string;
  /** From where the measuring resistor goes to earth: from each of these by itself. */
  readonly measuredFrom: readonly LeakageElectrode[];
  /** Where the load is connected. */
  readonly loadBetween: string;
  /** Load, in ohms, or the rated load of the output. */
  readonly load: number | 'rated load';
  /** Whether the output is also measured with nothing between its electrodes. */
  readonly alsoUnloaded: boolean;
  /** Measuring resistor at which the limits hold, in ohms. */
  readonly measuringResistance: number;
  /** Standing of measuring resistor and load. */
  readonly resistorsStanding: Standing;
  readonly resistorsSource: SourceId;
  /** Standing of the arrangement itself. */
  readonly standing: Standing;
  /** Limits by place; an absent one is not known. */
  readonly limits: Readonly<Partial<Record<LeakagePlace, KnownLeakageLimit>>>;
}

const newer = {
  source: 'iec-60601-2-2-memory',
  clause: '201.8.7.3.101',
  edition: '2009 and 2017',
  standing: 'from memory',
} as const;

const older = {
  source: 'iec-60601-2-2-memory',
  clause: '19.3.101',
  edition: 'before 2009',
  standing: 'from memory',
} as const;

const monopolarLimits = {
  leads: { kind: 'current', current: 0.15, ...newer },
  terminals: { kind: 'current', current: 0.1, ...older },
} as const;

const resistors = {
  measuringResistance: 200,
  resistorsStanding: 'published',
  resistorsSource: 'is-7583',
  standing: 'from memory',
} as const;

/** Arrangements of IEC 60601-2-2, from memory: check your copy of the standard. A caller may state other limits. */
export const leakageArrangements: Readonly<Record<LeakageArrangementId, LeakageArrangement>> = {
  'earth-referenced-load-between-electrodes': {
    title: 'Neutral electrode referenced to earth, load between the electrodes',
    circuit: 'monopolar',
    text: 'The load joins active and neutral electrode. The leakage is read from the neutral electrode through the measuring resistor to earth.',
    measuredFrom: ['neutral electrode'],
    loadBetween: 'active and neutral electrode',
    load: 200,
    alsoUnloaded: false,
    ...resistors,
    limits: monopolarLimits,
  },
  'earth-referenced-load-to-earth': {
    title: 'Neutral electrode referenced to earth, load from the active electrode to earth',
    circuit: 'monopolar',
    text: 'The load joins the active electrode and earth. The leakage is read from the neutral electrode through the measuring resistor to earth.',
    measuredFrom: ['neutral electrode'],
    loadBetween: 'active electrode and earth',
    load: 200,
    alsoUnloaded: false,
    ...resistors,
    limits: monopolarLimits,
  },
  isolated: {
    title: 'Neutral electrode isolated from earth at high frequency',
    circuit: 'monopolar',
    text: 'The leakage is read from each electrode in turn through the measuring resistor to earth, with the output unloaded and at its rated load.',
    measuredFrom: ['active electrode', 'neutral electrode'],
    loadBetween: 'active and neutral electrode',
    load: 'rated load',
    alsoUnloaded: true,
    ...resistors,
    limits: monopolarLimits,
  },
  bipolar: {
    title: 'Bipolar output',
    circuit: 'bipolar',
    text: 'The leakage is read from each pole in turn through the measuring resistor to earth, with the output unloaded and at its rated load.',
    measuredFrom: ['pole 1', 'pole 2'],
    loadBetween: 'the two poles',
    load: 'rated load',
    alsoUnloaded: true,
    ...resistors,
    limits: { leads: { kind: 'share-of-rated-power', share: 0.01, ...newer } },
  },
};
