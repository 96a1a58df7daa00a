import type { Group, GroupHeading, Row, RowNote } from './sheet.js';

/** A group of rows, with the remarks that all of them share above them. */
export function liftNotes(headings: readonly GroupHeading[], rows: readonly Row[]): Group {
  if (rows.length < 2) return { headings, notes: [], rows };
  const shared = (rows[0] as Row).notes.filter((note) =>
    rows.every((row) => row.notes.some((other) => same(note, other))),
  );
  return {
    headings,
    notes: shared,
    rows: rows.map((row) => ({
      ...row,
      notes: row.notes.filter((note) => !shared.some((other) => same(note, other))),
    })),
  };
}

function same(a: RowNote, b: RowNote): boolean {
  return a.tone === b.tone && a.text === b.text;
}
