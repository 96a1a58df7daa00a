import type { SourceId, Standing } from '../../src/working/index.js';

/** One comparison with a value from outside: what `npm run checks` prints and the published tests hold. */
export interface Check {
  /** Unique, lower case with hyphens. */
  readonly id: string;
  /** The room that is checked. */
  readonly room: string;
  /** What is compared, in a few words with the inputs. */
  readonly title: string;
  /** Where the value was published: document, clause, table. */
  readonly source: string;
  /** How the published value is known. */
  readonly standing: Standing;
  /** The published value, as printed. */
  readonly published: number;
  /** Unit of both values; `1` for a plain number. */
  readonly unit: string;
  /** Half a unit of the last published digit, or less: never wider. */
  readonly tolerance: number;
  /** Our value. */
  readonly compute: () => number;
  /** Bibliography entry, where the source is in it. */
  readonly sourceId?: SourceId;
}

/** A check without what its whole table has in common. */
export type CheckRow = readonly [
  id: string,
  title: string,
  published: number,
  unit: string,
  tolerance: number,
  compute: () => number,
];

/** Makes checks of a room from the rows of one source. */
export function rowsOf(room: string) {
  return (source: string, standing: Standing, rows: readonly CheckRow[], sourceId?: SourceId): Check[] =>
    rows.map(([id, title, published, unit, tolerance, compute]) => ({
      id,
      room,
      title,
      source,
      standing,
      published,
      unit,
      tolerance,
      compute,
      ...(sourceId === undefined ? {} : { sourceId }),
    }));
}

/** A number as part of an id: 2.5 becomes 2-5. */
export function idOf(x: number): string {
  return String(x).replace('.', '-');
}
