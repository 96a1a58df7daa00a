import type { Output, PublishedRow, TestPoint } from '../../procedure/index.js';
import { finite, items, type Loose, reportRepeats } from '../parts/members.js';
import type { Report } from '../parts/report-fault.js';
import { readSetting } from '../parts/setting.js';

/** Reads the settings of an output on its scale, and compares what its parts say. */
export function checkOutput(value: NonNullable<Loose<Output>>, report: Report): void {
  const onScale = new Set<unknown>();
  for (const name of ['curves', 'rows', 'points'] as const) {
    items<{ setting?: unknown } | undefined>(value[name]).forEach((entry, i) => {
      const read = readSetting(entry?.setting, value.scale, [name, i, 'setting'], report);
      if (!entry || read === undefined) return;
      entry.setting = read;
      onScale.add(entry);
    });
  }
  const settings = items(value.settings) as unknown[];
  settings.forEach((entry, i) => {
    settings[i] = readSetting(entry, value.scale, ['settings', i], report) ?? entry;
  });
  const another = 'must be another setting or load than those before it';
  const settingsOfCurves = items(value.curves).map((entry) => entry?.setting);
  reportRepeats(settingsOfCurves, (i) => ['curves', i, 'setting'], report);
  reportRepeats(items(value.rows).map(placeOf), (i) => ['rows', i], report, another);
  reportRepeats(items(value.points).map(placeOf), (i) => ['points', i], report, another);
  reportRepeats(settings, (i) => ['settings', i], report);
  reportRepeats(items(value.loads), (i) => ['loads', i], report);
  items(value.points).forEach((point, i) => {
    if (!onScale.has(point) || !hasNoPower(point, value)) return;
    const requirement = 'must be a setting and load for which something published says the power';
    const hint = 'Give the power of the point, or a curve or a row for its setting.';
    report('setting-without-power', ['points', i], placeOf(point), requirement, hint);
  });
}

function placeOf(entry: Loose<PublishedRow | TestPoint>): string | undefined {
  const load = finite(entry?.load);
  const setting = entry?.setting;
  if (load === undefined || (typeof setting !== 'number' && typeof setting !== 'string')) return undefined;
  return `${setting} at ${load} ohm`;
}

/** Whether nothing in an output says what to expect at a test point, for certain. */
function hasNoPower(point: Loose<TestPoint>, value: NonNullable<Loose<Output>>): boolean {
  const { curves, rows, regimes: limits, otherSettings, scale, ratedLoad } = value;
  if (point?.setting === undefined || point.load === undefined || point.power !== undefined) return false;
  if (items(curves).some((entry) => entry?.setting === point.setting)) return false;
  if (items(rows).some((entry) => entry?.setting === point.setting && entry?.load === point.load)) return false;
  if (scale?.kind === 'level') return true;
  if (scale?.kind !== 'watt' || limits !== undefined) return false;
  if (curves !== undefined && items(curves).length > 0) return otherSettings !== 'proportional';
  return point.load !== ratedLoad;
}
