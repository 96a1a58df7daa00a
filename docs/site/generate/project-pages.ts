import { readFileSync } from 'node:fs';

/** Changelog and the notes for contributors; links to files of the repository become plain names. */
export function projectPages(): ReadonlyMap<string, string> {
  return new Map([
    ['project/changelog.md', readPage('CHANGELOG.md')],
    ['project/contributing.md', readPage('DEVELOPERS.md')],
  ]);
}

function readPage(name: string): string {
  return readFileSync(new URL(`../../../${name}`, import.meta.url), 'utf8')
    .replace(/\[([^\]]+)\]\((?!https?:|#)([^)]+)\)/g, '`$2`')
    .replaceAll('{{', '&#123;&#123;');
}
