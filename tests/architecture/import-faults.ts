import { allowedPackages, edges, floors, loneFiles } from './floors.js';
import type { Import, SourceFile } from './source-files.js';

/** Everything about the imports of these files that the design forbids, one line each. */
export function importFaults(files: readonly SourceFile[]): string[] {
  return files.flatMap((file) => file.imports.flatMap((entry) => faultsOf(file, entry)));
}

function faultsOf(file: SourceFile, entry: Import): string[] {
  const where = `${file.path}:${entry.line} imports ${entry.specifier}`;
  if (entry.target === undefined) return packageFault(file, entry, where);
  const faults: string[] = [];
  const targetRoom = entry.target.split('/')[0] as string;
  const from = floorOf(file.room);
  const to = floorOf(targetRoom);
  if (from === undefined) return [`${file.path}: ${file.room} is no room of the design`];
  if (to === undefined) return [`${where}: ${targetRoom} is no room of the design`];
  if (to > from) faults.push(`${where}: up from floor ${from} to floor ${to}`);
  if (targetRoom !== file.room) {
    if (edges.includes(targetRoom) && isCore(file)) faults.push(`${where}: the core imports an edge`);
    if (!isDoor(entry.target)) faults.push(`${where}: another room, not through its index`);
  }
  return faults;
}

/** An index, or one of the files of formulas, which stand in working/ under the names of the rooms that use them. */
function isDoor(target: string): boolean {
  return target in loneFiles || /^[a-z-]+\/index\.ts$/.test(target) || /^working\/formulas\/[a-z-]+\.ts$/.test(target);
}

/** All but the edges and the browser bundle, which carries schema/ too. */
function isCore(file: SourceFile): boolean {
  return !edges.includes(file.room) && file.path !== 'browser.ts';
}

function packageFault(file: SourceFile, entry: Import, where: string): string[] {
  const allowed = allowedPackages[file.room] ?? [];
  const name = /^(@[^/]+\/)?[^/]+/.exec(entry.specifier)?.[0] ?? '';
  return allowed.includes(name) ? [] : [`${where}: ${file.room} may import no such package`];
}

function floorOf(room: string): number | undefined {
  return floors[room] ?? loneFiles[room];
}

/** Circles of imports, each as the way round: `a.ts → b.ts → a.ts`. `nodeOf` makes the graph one of files or of rooms. */
export function importCircles(
  files: readonly SourceFile[],
  nodeOf: (path: string) => string = (path) => path,
): string[] {
  const edgesOf = new Map<string, Set<string>>();
  for (const file of files) {
    const node = nodeOf(file.path);
    const targets = edgesOf.get(node) ?? new Set<string>();
    for (const { target } of file.imports) {
      if (target !== undefined && (nodeOf(target) !== node || target === file.path)) targets.add(nodeOf(target));
    }
    edgesOf.set(node, targets);
  }
  const circles: string[] = [];
  const done = new Set<string>();
  const way: string[] = [];
  const walk = (node: string): void => {
    const start = way.indexOf(node);
    if (start >= 0) circles.push([...way.slice(start), node].join(' → '));
    if (start >= 0 || done.has(node)) return;
    way.push(node);
    for (const next of edgesOf.get(node) ?? []) walk(next);
    way.pop();
    done.add(node);
  };
  for (const node of edgesOf.keys()) walk(node);
  return circles;
}
