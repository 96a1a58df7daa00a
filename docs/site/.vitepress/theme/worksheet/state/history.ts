import type { Entries } from './entries.js';

/** Entries with the way back. */
export interface History {
  readonly now: Entries;
  /** Earlier entries, the latest last, each with what was changed after it. */
  readonly past: readonly { readonly entries: Entries; readonly what: string; readonly key: string }[];
}

/** Changes that can be undone; older ones are forgotten. */
const longest = 100;

export function startHistory(entries: Entries): History {
  return { now: entries, past: [] };
}

/**
 * The history after a change. Typing on in one place is one change: it has the same key as the change before it, so
 * that undoing does not go letter by letter. `what` names the change for the person who may undo it.
 */
export function change(history: History, entries: Entries, what: string, key: string): History {
  if (entries === history.now) return history;
  const last = history.past.at(-1);
  if (last !== undefined && key !== '' && last.key === key) return { ...history, now: entries };
  return { now: entries, past: [...history.past, { entries: history.now, what, key }].slice(-longest) };
}

/** The history before the last change. */
export function undo(history: History): History {
  const last = history.past.at(-1);
  return last === undefined ? history : { now: last.entries, past: history.past.slice(0, -1) };
}

/** What `undo` would take back; undefined when there is nothing. */
export function undoable(history: History): string | undefined {
  return history.past.at(-1)?.what;
}
