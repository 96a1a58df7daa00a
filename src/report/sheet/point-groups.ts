import type { PlanPoint } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { signedPercent } from '../numbers/percent-text.js';
import type { PrintUnit } from '../numbers/print-unit.js';
import { significantDigits } from '../numbers/value-text.js';
import { liftNotes } from './lift-notes.js';
import type { Group, GroupHeading, Row } from './sheet.js';

/** Rows of one point, in the order of work. */
export interface PointRows {
  readonly point: PlanPoint;
  readonly rows: readonly Row[];
}

/**
 * Groups rows by connection, then by load, and lifts remarks that all rows of a group share.
 *
 * @param list Points in the order of work
 * @param loadUnit Unit in which loads are printed
 */
export function pointGroups(list: readonly PointRows[], loadUnit: PrintUnit): readonly Group[] {
  const groups: { isNewConnection: boolean; list: PointRows[] }[] = [];
  let before: PlanPoint | undefined;
  for (const entry of list) {
    const { point } = entry;
    const isNewConnection = before?.connection !== point.connection || before.lead !== point.lead;
    const group = groups.at(-1);
    if (group === undefined || isNewConnection || !sameLoad(before as PlanPoint, point)) {
      groups.push({ isNewConnection, list: [entry] });
    } else {
      group.list.push(entry);
    }
    before = point;
  }
  return groups.map((group) => {
    const points = group.list.map(({ point }) => point);
    const headings: GroupHeading[] = [{ level: 2, text: loadHeading(points, loadUnit) }];
    if (group.isNewConnection) headings.unshift({ level: 1, text: connectionHeading(points[0] as PlanPoint) });
    return liftNotes(
      headings,
      group.list.flatMap(({ rows }) => rows),
    );
  });
}

function sameLoad(a: PlanPoint, b: PlanPoint): boolean {
  return a.load === undefined || b.load === undefined ? a.wantedLoad === b.wantedLoad : a.load.id === b.load.id;
}

function connectionHeading(point: PlanPoint): string {
  const leads = point.lead === undefined ? '' : ` — leads: ${point.lead}`;
  return plainText(`Connection: ${point.connection}${leads}`);
}

/** The load to connect; where it stands in for another, for which, and what that does to the expected power. */
function loadHeading(points: readonly PlanPoint[], unit: PrintUnit): string {
  const ohms = (value: number): string => `${significantDigits(value, unit, 6)} ${unit.symbol}`;
  const load = points.find((point) => point.load !== undefined)?.load;
  if (load === undefined) return `No load on the bench for ${ohms((points[0] as PlanPoint).wantedLoad)}`;
  const text = `Load ${load.id}: ${ohms(load.resistance)}`;
  const substituted = points.filter((point) => point.load !== undefined && point.load.difference !== 0);
  if (substituted.length === 0) return plainText(text);
  const wanted = [...new Set(substituted.map((point) => ohms(point.wantedLoad)))].join(', ');
  const changes = substituted.map((point) => point.load?.powerChange ?? 0);
  const least = signedPercent(Math.min(...changes));
  const most = signedPercent(Math.max(...changes));
  const change = least === most ? least : `${least} to ${most}`;
  return plainText(`${text} in place of ${wanted}; expected power changes by ${change}`);
}
