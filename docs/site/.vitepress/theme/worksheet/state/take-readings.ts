import { formatQuantity, quantityUnits } from 'esu-limits';
import type { Plan, Readings } from 'esu-limits/procedure';
import type { Entries, TypedChallenge, TypedDisplay, TypedReading } from './entries.js';
import { withTraces } from './with-traces.js';

/**
 * Entries with readings from a document. A reading takes the place of what was typed for the same point and state;
 * several of one point in the document are all kept.
 */
export function takeReadings(entries: Entries, readings: Readings, plan: Plan | undefined): Entries {
  const taken: TypedReading[] = [];
  for (const reading of readings.readings) {
    const { phase } = reading;
    const point = pointId(reading.point, plan);
    const afterInterruption = reading.afterInterruption === true;
    const place = { point, phase, afterInterruption };
    taken.push({
      ...place,
      repeat: taken.filter((other) => isSame(other, place)).length,
      reading: formatQuantity(reading.value, quantityUnits[reading.quantity]),
      display:
        reading.display === undefined
          ? ''
          : formatQuantity(reading.display.value, quantityUnits[reading.display.quantity]),
      peakVoltage: reading.peakVoltage === undefined ? '' : formatQuantity(reading.peakVoltage, 'V'),
      modeUnchanged: reading.modeUnchanged === undefined ? '' : reading.modeUnchanged ? 'yes' : 'no',
      note: reading.note ?? '',
    });
  }
  const monitor = (readings.monitor ?? []).map(
    ({ set, phase, displayed }): TypedDisplay => ({
      set,
      phase,
      displayed: displayed === 'over-range' ? displayed : formatQuantity(displayed, 'ohm'),
    }),
  );
  const challenges = (readings.monitorChallenges ?? []).map(
    ({ challenge, set, phase, alarm, responseTime, alarmReason, note = '' }): TypedChallenge => ({
      challenge,
      ...(set === undefined ? {} : { set: plannedSet(challenge, set, plan) }),
      phase,
      alarm: alarm ? 'yes' : 'no',
      responseTime: responseTime === undefined ? '' : formatQuantity(responseTime, 's'),
      alarmReason: alarmReason ?? '',
      note,
    }),
  );
  const kept = entries.readings.filter((other) => !taken.some((reading) => isSame(other, reading)));
  const { by, date } = readings;
  return {
    ...entries,
    readings: [...kept, ...taken],
    monitor: [
      ...entries.monitor.filter((a) => !monitor.some((b) => a.set === b.set && a.phase === b.phase)),
      ...monitor,
    ],
    challenges: [
      ...entries.challenges.filter(
        (a) => !challenges.some((b) => a.challenge === b.challenge && a.set === b.set && a.phase === b.phase),
      ),
      ...challenges,
    ],
    traces: withTraces(entries.traces, readings.monitorTraces ?? []),
    signature: {
      ...entries.signature,
      ...(by === undefined ? {} : { by }),
      ...(date === undefined ? {} : { date }),
    },
  };
}

/** A point is named by its identifier or by its number; entries keep the identifier. */
function pointId(reference: string, plan: Plan | undefined): string {
  const points = plan?.points ?? [];
  if (points.some((point) => point.id === reference)) return reference;
  return points.find((point) => String(point.number) === reference)?.id ?? reference;
}

/** The value of a planned sweep that a resistance is, but for its last digits. */
function plannedSet(challenge: number, set: number, plan: Plan | undefined): number {
  const planned = plan?.monitorThresholds?.challenges.find(({ number }) => number === challenge);
  const values = planned?.kind === 'sweep' ? planned.values : [];
  return values.find((value) => Math.abs(value - set) <= 1e-9 * value) ?? set;
}

function isSame(a: TypedReading, b: Pick<TypedReading, 'point' | 'phase' | 'afterInterruption'>): boolean {
  return a.point === b.point && a.phase === b.phase && a.afterInterruption === b.afterInterruption;
}
