import type { Phase } from 'esu-limits/procedure';
import type { Entries, ReadingField, ReadingPlace, TypedChallenge, TypedReading } from './entries.js';

const blankReading = { reading: '', display: '', peakVoltage: '', modeUnchanged: '', note: '' } as const;

/** The reading that was typed at a place; undefined when none was. */
export function readingAt(entries: Entries, place: ReadingPlace): TypedReading | undefined {
  return entries.readings.find((reading) => isAt(reading, place));
}

/** Entries with one member of one reading changed. */
export function editReading(entries: Entries, place: ReadingPlace, field: ReadingField, text: string): Entries {
  const { point, phase, afterInterruption, repeat } = place;
  const known = readingAt(entries, place);
  const changed = {
    ...(known ?? { point, phase, afterInterruption, repeat, ...blankReading }),
    [field]: text,
  } as TypedReading;
  const readings =
    known === undefined
      ? [...entries.readings, changed]
      : entries.readings.map((reading) => (reading === known ? changed : reading));
  return { ...entries, readings };
}

/** How many readings of a place were typed: at least one row is shown. */
export function repeatsAt(entries: Entries, place: Omit<ReadingPlace, 'repeat'>): number {
  const repeats = entries.readings.filter((reading) => isAt(reading, { ...place, repeat: reading.repeat }));
  return Math.max(1, ...repeats.map((reading) => reading.repeat + 1));
}

/** Entries without one reading. */
export function removeReading(entries: Entries, place: ReadingPlace): Entries {
  return { ...entries, readings: entries.readings.filter((reading) => !isAt(reading, place)) };
}

/** What was typed of the monitor's display at a resistance. */
export function displayedAt(entries: Entries, set: number | 'open', phase: Phase): string {
  return entries.monitor.find((row) => row.set === set && row.phase === phase)?.displayed ?? '';
}

/** Entries with what the monitor's display showed at a resistance. */
export function editDisplayed(entries: Entries, set: number | 'open', phase: Phase, displayed: string): Entries {
  const others = entries.monitor.filter((row) => row.set !== set || row.phase !== phase);
  return { ...entries, monitor: [...others, { set, phase, displayed }] };
}

/** Which challenge: its number, of a sweep the resistance too, and the state of the unit. */
export type ChallengePlace = Pick<TypedChallenge, 'challenge' | 'set' | 'phase'>;

/** What was typed of a challenge. */
export function challengeAt(entries: Entries, place: ChallengePlace): TypedChallenge {
  const { challenge, set, phase } = place;
  const blank = {
    challenge,
    ...(set === undefined ? {} : { set }),
    phase,
    alarm: '',
    responseTime: '',
    alarmReason: '',
    note: '',
  } as const;
  return entries.challenges.find((row) => isOf(row, place)) ?? blank;
}

/** Entries with one member of a challenge changed. */
export function editChallenge(
  entries: Entries,
  place: ChallengePlace,
  field: 'alarm' | 'responseTime' | 'alarmReason' | 'note',
  text: string,
): Entries {
  const changed = { ...challengeAt(entries, place), [field]: text } as TypedChallenge;
  const known = entries.challenges.some((row) => isOf(row, place));
  const challenges = known
    ? entries.challenges.map((row) => (isOf(row, place) ? changed : row))
    : [...entries.challenges, changed];
  return { ...entries, challenges };
}

function isAt(reading: TypedReading, place: ReadingPlace): boolean {
  return (
    reading.point === place.point &&
    reading.phase === place.phase &&
    reading.afterInterruption === place.afterInterruption &&
    reading.repeat === place.repeat
  );
}

function isOf(row: TypedChallenge, { challenge, set, phase }: ChallengePlace): boolean {
  return row.challenge === challenge && row.set === set && row.phase === phase;
}
