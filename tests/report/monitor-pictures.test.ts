import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assessReadings, planVerification } from '../../src/procedure/index.js';
import { monitorPictures } from '../../src/report/index.js';
import { parseBench, parseSpecification, readMonitorTraceCsv, readReadingsCsv } from '../../src/schema/index.js';

const example = (name: string) => readFileSync(`examples/workshop/${name}`, 'utf8');
const json = (name: string): unknown => JSON.parse(example(name));

describe('pictures of the monitor', () => {
  const plan = planVerification(parseSpecification(json('specification.json')), parseBench(json('bench.json')));
  const monitorTraces = [readMonitorTraceCsv(example('monitor-trace.csv'), { name: 'Contact lost' })];
  const readings = { ...readReadingsCsv(example('readings.csv')), monitorTraces };
  const findings = assessReadings(plan, readings);
  const pictures = monitorPictures(plan, readings, findings, { id: 'a' });

  it('are one for each sweep and each trace', () => {
    const sweeps = findings.monitorTrips.flatMap((trip) => trip.sweeps).length;
    expect(sweeps).toBeGreaterThan(0);
    expect(pictures).toHaveLength(sweeps + 1);
    for (const picture of pictures) expect(picture).toMatch(/^<svg[\s\S]*<\/svg>$/);
    expect(pictures.at(-1)).toContain('1.4 s late');
  });

  it('have no identifier twice', () => {
    const ids = pictures.flatMap((picture) => [...picture.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('are none where nothing was written down', () => {
    const none = { ...readings, readings: [], monitorChallenges: [], monitorTraces: [] };
    expect(monitorPictures(plan, none, assessReadings(plan, none))).toEqual([]);
  });
});
