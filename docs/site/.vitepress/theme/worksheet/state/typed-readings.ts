import { type Fault, type QuantityKind, safeParseQuantity } from 'esu-limits';
import { type ChallengeReading, type MonitorReading, type Phase, type Plan, type Reading, type Readings } from 'esu-limits/procedure';
import { safeParseReadings } from 'esu-limits/schema';
import { readTraces } from './typed-traces.js';
import type { Entries, ReadingPlace, TypedChallenge, TypedDisplay, TypedReading } from './entries.js';

/** What is wrong with something typed: in which field of the page, and why. */
export interface FieldFault {
  /** Name of the field, as `readingField` and its like make it. */
  readonly field: string;
  readonly fault: Fault;
}

/** What was typed as a document of readings. What is wrong is left out of it, and said. */
export interface TypedDocument {
  readonly readings: Readings;
  readonly faults: readonly FieldFault[];
}

export function readingField(place: ReadingPlace, member: string): string {
  const { point, phase, afterInterruption, repeat } = place;
  return `${member} ${phase} ${afterInterruption ? 'again ' : ''}${repeat} ${point}`;
}

export function displayField(set: number | 'open', phase: Phase): string {
  return `monitor ${phase} ${set}`;
}

export function challengeField({ challenge, set, phase }: Pick<TypedChallenge, 'challenge' | 'set' | 'phase'>): string {
  return `challenge ${phase} ${challenge} ${set ?? 'once'}`;
}

/** Field of the page that holds the traces of the monitor. */
export const tracesField = 'traces';

/** Reads everything that was typed at the bench. With the plan, a sweep of the monitor is put in the order of its values. */
export function readingsFromTyped(entries: Entries, plan?: Plan): TypedDocument {
  const faults: FieldFault[] = [];
  const read = entries.readings.flatMap((typed) => {
    const reading = readReading(typed, entries.units, faults);
    return reading === undefined ? [] : [{ typed, reading }];
  });
  const monitor = entries.monitor.flatMap((typed) => readDisplay(typed, faults));
  const challenges = inOrder(entries.challenges, plan).flatMap((typed) => readChallenge(typed, faults));
  const { traces, faults: wrongTraces } = readTraces(entries.traces);
  faults.push(...wrongTraces.map((fault) => ({ field: tracesField, fault })));
  const { by, date } = entries.signature;
  const document = {
    schema: 'esu-limits/readings',
    version: 1,
    ...(by.trim() === '' ? {} : { by }),
    ...(date.trim() === '' ? {} : { date }),
    readings: read.map(({ reading }) => reading),
    ...(monitor.length === 0 ? {} : { monitor }),
    ...(challenges.length === 0 ? {} : { monitorChallenges: challenges }),
    ...(traces.length === 0 ? {} : { monitorTraces: traces }),
  };
  const result = safeParseReadings(document);
  if (result.ok) return { readings: result.value, faults };
  // What is wrong now are texts that no document may hold, such as control characters: they are named and left out.
  const wrong = new Set(result.faults.map(({ path }) => path));
  for (const fault of result.faults) {
    const at = /^readings\[(\d+)\]/.exec(fault.path);
    const typed = at === null ? undefined : read[Number(at[1])]?.typed;
    faults.push({ field: typed === undefined ? fault.path : readingField(typed, 'note'), fault });
  }
  const { by: _by, date: _date, ...rest } = document;
  const withoutNotes = safeParseReadings({
    ...rest,
    readings: document.readings.map(({ note, ...reading }, i) =>
      note === undefined || wrong.has(`readings[${i}].note`) ? reading : { ...reading, note },
    ),
  });
  const none: Readings = { schema: 'esu-limits/readings', version: 1, readings: [] };
  return { readings: withoutNotes.ok ? withoutNotes.value : none, faults };
}

function readReading(typed: TypedReading, units: Entries['units'], faults: FieldFault[]): Reading | undefined {
  const { point, phase, afterInterruption } = typed;
  const member = (name: string) => readingField(typed, name);
  const display = readRms(typed.display, units.display, member('display'), faults);
  const peak = readPeak(typed.peakVoltage, member('peakVoltage'), faults);
  if (typed.reading.trim() === '') {
    const filled = typed.display + typed.peakVoltage + typed.modeUnchanged + typed.note;
    if (filled.trim() === '') return undefined;
    faults.push({
      field: member('reading'),
      fault: {
        code: 'missing-member',
        path: 'reading',
        received: '""',
        requirement: 'must be given, because more is written in this row',
      },
    });
    return undefined;
  }
  const read = readRms(typed.reading, units.reading, member('reading'), faults);
  if (read === undefined) return undefined;
  return {
    point,
    phase,
    ...read,
    ...(display === undefined ? {} : { display }),
    ...(peak === undefined ? {} : { peakVoltage: peak }),
    ...(afterInterruption ? { afterInterruption: true } : {}),
    ...(typed.modeUnchanged === '' ? {} : { modeUnchanged: typed.modeUnchanged === 'yes' }),
    ...(typed.note.trim() === '' ? {} : { note: typed.note }),
  };
}

function readRms(
  text: string,
  unit: string,
  field: string,
  faults: FieldFault[],
): Pick<Reading, 'quantity' | 'value'> | undefined {
  const read = readQuantity(withUnit(text, unit), ['power', 'current', 'voltage'], field, faults);
  return read === undefined ? undefined : (read as Pick<Reading, 'quantity' | 'value'>);
}

function readPeak(text: string, field: string, faults: FieldFault[]): number | undefined {
  if (text.trim() === '') return undefined;
  // The name of the field says peak, so the text need not.
  const read = safeParseQuantity(text, { expect: 'voltage', form: 'peak', unmarked: 'peak' });
  if (!read.ok) faults.push({ field, fault: read.fault });
  else if (read.value.value < 0) faults.push({ field, fault: negative('peakVoltage', text) });
  return read.ok && read.value.value >= 0 ? read.value.value : undefined;
}

function readQuantity(
  text: string,
  expect: QuantityKind | readonly QuantityKind[],
  field: string,
  faults: FieldFault[],
): { readonly quantity: QuantityKind; readonly value: number } | undefined {
  if (text.trim() === '') return undefined;
  const read = safeParseQuantity(text, { expect });
  if (!read.ok) {
    faults.push({ field, fault: read.fault });
    return undefined;
  }
  const { quantity, value } = read.value;
  if (value >= 0) return { quantity, value };
  faults.push({ field, fault: negative('value', text) });
  return undefined;
}

function readDisplay({ set, phase, displayed }: TypedDisplay, faults: FieldFault[]): MonitorReading[] {
  if (displayed.trim() === '') return [];
  if (/^\s*over[\s-]?range\s*$/i.test(displayed)) return [{ set, phase, displayed: 'over-range' }];
  const before = faults.length;
  const read = readQuantity(displayed, 'resistance', displayField(set, phase), faults);
  const last = faults.at(-1);
  if (faults.length > before && last !== undefined) {
    const requirement = `${last.fault.requirement}, or the word over-range`;
    faults[faults.length - 1] = { ...last, fault: { ...last.fault, requirement } };
  }
  return read === undefined ? [] : [{ set, phase, displayed: read.value }];
}

function readChallenge(typed: TypedChallenge, faults: FieldFault[]): ChallengeReading[] {
  const { challenge, set, phase, alarm, alarmReason, note } = typed;
  const time = readQuantity(typed.responseTime, 'time', `${challengeField(typed)} time`, faults);
  if (alarm !== 'yes' && alarmReason !== '') {
    const requirement = 'must be left open where no alarm is noted';
    const fault: Fault = { code: 'contradiction', path: 'alarmReason', received: alarmReason, requirement };
    faults.push({ field: `${challengeField(typed)} reason`, fault });
  }
  if (alarm === '') {
    if (typed.responseTime.trim() !== '') {
      const fault: Fault = {
        code: 'missing-member',
        path: 'alarm',
        received: '""',
        requirement: 'must be given, because a time is written beside it',
      };
      faults.push({ field: challengeField(typed), fault });
    }
    return [];
  }
  return [
    {
      challenge,
      ...(set === undefined ? {} : { set }),
      alarm: alarm === 'yes',
      ...(time === undefined ? {} : { responseTime: time.value }),
      ...(alarm !== 'yes' || alarmReason === '' ? {} : { alarmReason }),
      phase,
      ...(note.trim() === '' ? {} : { note }),
    },
  ];
}

function inOrder(challenges: readonly TypedChallenge[], plan: Plan | undefined): readonly TypedChallenge[] {
  const values = ({ challenge }: TypedChallenge): readonly number[] => {
    const planned = plan?.monitorThresholds?.challenges.find(({ number }) => number === challenge);
    return planned?.kind === 'sweep' ? planned.values : [];
  };
  const place = (typed: TypedChallenge): number => {
    const index = typed.set === undefined ? 0 : values(typed).indexOf(typed.set);
    return index < 0 ? Number.MAX_SAFE_INTEGER : index;
  };
  return [...challenges].sort((a, b) => a.challenge - b.challenge || place(a) - place(b));
}

/** A number typed without a unit gets the one that the person has stated for such numbers, if any. */
export function withUnit(text: string, unit: string): string {
  return unit !== '' && /^\s*[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?\s*$/i.test(text) ? `${text.trim()} ${unit}` : text;
}

function negative(path: string, text: string): Fault {
  return { code: 'negative', path, received: JSON.stringify(text), requirement: 'must be 0 or more' };
}
