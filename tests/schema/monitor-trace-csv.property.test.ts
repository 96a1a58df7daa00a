import fc from 'fast-check';
import { expect, it } from 'vitest';
import { alarmReasons } from '../../src/monitor/index.js';
import type { MonitorTrace } from '../../src/procedure/index.js';
import { parseReadings, readMonitorTraceCsv, safeReadMonitorTraceCsv } from '../../src/schema/index.js';

/** Tenths of a second, so that every time is a short decimal. */
const seconds = (tenths: number): number => Number((tenths / 10).toFixed(1));

const trace = fc
  .record({
    steps: fc.uniqueArray(fc.integer({ min: 0, max: 500 }), { minLength: 1, maxLength: 8 }),
    resistances: fc.array(fc.oneof(fc.integer({ min: 0, max: 5000 }), fc.constant('open' as const)), {
      minLength: 8,
      maxLength: 8,
    }),
    edges: fc.uniqueArray(fc.integer({ min: 0, max: 600 }), { maxLength: 7 }),
    reasons: fc.array(fc.option(fc.constantFrom(...alarmReasons), { nil: undefined }), { minLength: 4, maxLength: 4 }),
    after: fc.integer({ min: 1, max: 50 }),
    of: fc.constantFrom('set' as const, 'displayed' as const),
    phase: fc.constantFrom('as-found' as const, 'as-left' as const),
  })
  .map(({ steps, resistances, edges, reasons, after, of, phase }): MonitorTrace => {
    const times = [...steps].sort((a, b) => a - b);
    const start = times[0] as number;
    const changes = edges.filter((edge) => edge >= start).sort((a, b) => a - b);
    const end = Math.max(times.at(-1) as number, changes.at(-1) ?? 0) + after;
    const alarms = changes.flatMap((from, i) => {
      if (i % 2 === 1) return [];
      const [to, reason] = [changes[i + 1], reasons[i / 2]];
      return [
        {
          from: seconds(from),
          ...(to === undefined ? {} : { to: seconds(to) }),
          ...(reason === undefined ? {} : { reason }),
        },
      ];
    });
    return {
      phase,
      of,
      time: times.map(seconds),
      resistance: resistances.slice(0, times.length),
      end: seconds(end),
      ...(changes[0] === start ? { startsIn: 'alarm' } : {}),
      alarms,
    };
  });

/** The trace as somebody would write it down: a row for each time at which something happens. */
function written({ of, time, resistance, end, alarms }: MonitorTrace, unit: 's' | 'ms'): string {
  const times = new Set([...time, ...alarms.flatMap(({ from, to }) => (to === undefined ? [from] : [from, to])), end]);
  const rows = [...(times as Set<number>)]
    .sort((a, b) => a - b)
    .map((t, i) => {
      const step = time.indexOf(t);
      const began = alarms.find(({ from }) => from === t);
      const isOver = alarms.some(({ to }) => to === t) || i === 0;
      const shown = unit === 's' ? t : Math.round(t * 1000);
      const what = t === end ? 'end' : step < 0 ? '' : resistance[step];
      return [shown, what, began ? 'alarm' : isOver ? 'no alarm' : '', began?.reason ?? ''].join(',');
    });
  return [`time [${unit}],${of} [ohm],alarm,alarm reason`, ...rows].join('\r\n');
}

it('a trace that is written down comes back as the document holds it', () => {
  fc.assert(
    fc.property(trace, fc.constantFrom('s', 'ms'), (given, unit) => {
      const document = { schema: 'esu-limits/readings', version: 1, readings: [], monitorTraces: [given] };
      const read = readMonitorTraceCsv(written(given, unit), { phase: given.phase });
      expect(read).toEqual(parseReadings(document).monitorTraces?.[0]);
    }),
    { numRuns: 300 },
  );
});

it('whatever the text is: a trace, or faults with their place, never another exception', () => {
  const cell = fc.oneof(
    fc.string(),
    fc.constantFrom('0', '5 s', '-1', 'open', 'end', 'alarm', 'no alarm', 'rise', '1e400', '0,5', '"', '∞', '=1+1'),
  );
  const row = fc.array(cell, { maxLength: 5 }).map((cells) => cells.join(','));
  fc.assert(
    fc.property(fc.array(row, { maxLength: 6 }), fc.boolean(), (rows, hasHeader) => {
      const text = [...(hasHeader ? ['time [s],set [ohm],alarm,alarm reason'] : []), ...rows].join('\n');
      const result = safeReadMonitorTraceCsv(text);
      if (result.ok) expect(result.value.time).toEqual([...result.value.time].sort((a, b) => a - b));
      else for (const { path } of result.faults) expect(path).toMatch(/^line \d+/);
    }),
    { numRuns: 500 },
  );
});
