/** The rooms of src and the floor of each: a room imports only from its own floor and those below. */
export const floors: Readonly<Record<string, number>> = {
  checks: 0,
  numeric: 0,
  working: 0,
  circuit: 1,
  waveform: 1,
  units: 1,
  band: 2,
  curve: 2,
  uncertainty: 2,
  decision: 3,
  monitor: 3,
  leakage: 3,
  electrode: 3,
  model: 3,
  procedure: 4,
  schema: 5,
  report: 5,
};

/** Files that stand beside the rooms: the version below them, the entries above them. */
export const loneFiles: Readonly<Record<string, number>> = {
  'version.ts': 0,
  'index.ts': 6,
  'browser.ts': 6,
};

/** Rooms that may import packages, and which. Every other room imports none. */
export const allowedPackages: Readonly<Record<string, readonly string[]>> = {
  schema: ['zod', 'papaparse'],
  model: ['mathjs'],
  report: ['papaparse'],
};

/** Rooms that the core never imports. */
export const edges: readonly string[] = ['schema', 'model'];
