import type { AlarmReason } from 'esu-limits/monitor';
import type { Phase, Signature } from 'esu-limits/procedure';

/**
 * Everything that a person has typed, as it was typed. Plain data: it is kept in the browser's own storage, and all
 * that the page shows is worked out from it anew.
 */
export interface Entries {
  /** JSON text of the specification; empty: none yet. */
  readonly specification: string;
  /** JSON text of the bench; empty: none yet. */
  readonly bench: string;
  readonly readings: readonly TypedReading[];
  readonly monitor: readonly TypedDisplay[];
  readonly challenges: readonly TypedChallenge[];
  /** JSON text of the list of traces of the monitor against time; empty: none. */
  readonly traces: string;
  /** State of the unit that is being read. */
  readonly phase: Phase;
  /** Units that the person states for numbers typed without one; empty: such a number is refused. */
  readonly units: { readonly reading: string; readonly display: string };
  readonly signature: TypedSignature;
  /** A sheet of readings as CSV that waits to be taken over. */
  readonly csv: string;
  /** A trace of the monitor as CSV that waits to be taken over. */
  readonly traceCsv: string;
}

/** Which reading: a point of the plan in one state of the unit, plain or after an interruption of the supply. */
export interface ReadingPlace {
  readonly point: string;
  readonly phase: Phase;
  readonly afterInterruption: boolean;
  /** Counts repeated readings of the same point, from 0. */
  readonly repeat: number;
}

/** A reading as typed. */
export interface TypedReading extends ReadingPlace {
  readonly reading: string;
  readonly display: string;
  readonly peakVoltage: string;
  readonly modeUnchanged: '' | 'yes' | 'no';
  readonly note: string;
}

/** Members of a reading that are typed. */
export type ReadingField = 'reading' | 'display' | 'peakVoltage' | 'modeUnchanged' | 'note';

/** What the monitor's display showed at a resistance, as typed. */
export interface TypedDisplay {
  /** Resistance that was set, in ohms, or an open circuit. */
  readonly set: number | 'open';
  readonly phase: Phase;
  readonly displayed: string;
}

/** What the monitor did at a challenge, as typed. */
export interface TypedChallenge {
  /** Number of the challenge in the plan. */
  readonly challenge: number;
  /** Of a sweep: the resistance that was set, in ohms. */
  readonly set?: number;
  readonly phase: Phase;
  readonly alarm: '' | 'yes' | 'no';
  readonly responseTime: string;
  /** The reason that the monitor gave for the alarm. */
  readonly alarmReason: '' | AlarmReason;
  readonly note: string;
}

/** Who answers for the record, as typed. */
export interface TypedSignature {
  readonly occasion: '' | NonNullable<Signature['occasion']>;
  readonly by: string;
  readonly date: string;
  readonly remarks: string;
}

export const noEntries: Entries = {
  specification: '',
  bench: '',
  readings: [],
  monitor: [],
  challenges: [],
  traces: '',
  phase: 'as-found',
  units: { reading: '', display: '' },
  signature: { occasion: '', by: '', date: '', remarks: '' },
  csv: '',
  traceCsv: '',
};

/** Whether anything at all was typed. */
export function isEmpty(entries: Entries): boolean {
  return JSON.stringify({ ...entries, phase: noEntries.phase }) === JSON.stringify(noEntries);
}
