import { alarmReasons } from 'esu-limits/monitor';
import {
  type Entries,
  noEntries,
  type TypedChallenge,
  type TypedDisplay,
  type TypedReading,
  type TypedSignature,
} from './entries.js';

/** Name of the entries in the storage of the browser. */
export const storageName = 'esu-limits/worksheet';

/** Entries as the text that is kept. */
export function savedText(entries: Entries): string {
  return JSON.stringify({ version: 1, entries });
}

/**
 * Entries from the text that was kept. What is not as it should be is left out, never trusted: the text may be of
 * another version, or changed by hand. Undefined when nothing can be read.
 */
export function entriesFromSaved(text: string | null): Entries | undefined {
  if (text === null) return undefined;
  let saved: unknown;
  try {
    saved = JSON.parse(text);
  } catch {
    return undefined;
  }
  if (!isObject(saved) || saved['version'] !== 1 || !isObject(saved['entries'])) return undefined;
  const given = saved['entries'];
  const units = isObject(given['units']) ? given['units'] : {};
  return {
    specification: textOf(given['specification']),
    bench: textOf(given['bench']),
    readings: listOf(given['readings']).flatMap(readingOf),
    monitor: listOf(given['monitor']).flatMap(displayOf),
    challenges: listOf(given['challenges']).flatMap(challengeOf),
    traces: textOf(given['traces']),
    phase: phaseOf(given['phase']),
    units: { reading: textOf(units['reading']), display: textOf(units['display']) },
    signature: signatureOf(given['signature']),
    csv: textOf(given['csv']),
    traceCsv: textOf(given['traceCsv']),
  };
}

function readingOf(row: Record<string, unknown>): TypedReading[] {
  const { point, repeat } = row;
  if (typeof point !== 'string' || !isCount(repeat)) return [];
  return [
    {
      point,
      phase: phaseOf(row['phase']),
      afterInterruption: row['afterInterruption'] === true,
      repeat,
      reading: textOf(row['reading']),
      display: textOf(row['display']),
      peakVoltage: textOf(row['peakVoltage']),
      modeUnchanged: flagOf(row['modeUnchanged']),
      note: textOf(row['note']),
    },
  ];
}

function displayOf(row: Record<string, unknown>): TypedDisplay[] {
  const { set } = row;
  if (set !== 'open' && !isNumber(set)) return [];
  return [{ set, phase: phaseOf(row['phase']), displayed: textOf(row['displayed']) }];
}

function challengeOf(row: Record<string, unknown>): TypedChallenge[] {
  const { challenge, set } = row;
  if (!isCount(challenge) || (set !== undefined && !isNumber(set))) return [];
  return [
    {
      challenge,
      ...(set === undefined ? {} : { set }),
      phase: phaseOf(row['phase']),
      alarm: flagOf(row['alarm']),
      responseTime: textOf(row['responseTime']),
      alarmReason: alarmReasons.find((reason) => reason === row['alarmReason']) ?? '',
      note: textOf(row['note']),
    },
  ];
}

function signatureOf(value: unknown): TypedSignature {
  if (!isObject(value)) return noEntries.signature;
  const { occasion } = value;
  const known = occasion === 'acceptance' || occasion === 'periodic inspection' || occasion === 'after repair';
  return {
    occasion: known ? occasion : '',
    by: textOf(value['by']),
    date: textOf(value['date']),
    remarks: textOf(value['remarks']),
  };
}

function textOf(value: unknown): string {
  return typeof value === 'string' ? value : '';
}

function flagOf(value: unknown): '' | 'yes' | 'no' {
  return value === 'yes' || value === 'no' ? value : '';
}

function phaseOf(value: unknown): 'as-found' | 'as-left' {
  return value === 'as-left' ? 'as-left' : 'as-found';
}

function listOf(value: unknown): Record<string, unknown>[] {
  return Array.isArray(value) ? value.filter(isObject) : [];
}

function isCount(value: unknown): value is number {
  return isNumber(value) && Number.isInteger(value) && value >= 0 && value < 10_000;
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
