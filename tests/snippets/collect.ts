import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Snippet } from './snippet.js';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Folders of docs that are made by a program from sources that are collected themselves. */
const generated = /^docs\/(api|\.vitepress|site\/(api|reference|project|notebooks|\.vitepress))\//;

/** Every TypeScript block of the documentation and of the doc comments. */
export function collectSnippets(): readonly Snippet[] {
  const pages = ['README.md', 'DEVELOPERS.md', ...filesUnder('docs/', '.md')].filter((path) => existsSync(root + path));
  return [
    ...pages.flatMap((path) => snippetsOfMarkdown(path, read(path))),
    ...filesUnder('src/', '.ts').flatMap((path) => snippetsOfComments(path, read(path))),
  ];
}

function filesUnder(folder: string, extension: string): string[] {
  if (!existsSync(root + folder)) return [];
  return readdirSync(root + folder, { recursive: true })
    .map((name) => folder + String(name).replaceAll('\\', '/'))
    .filter((path) => path.endsWith(extension) && !generated.test(path))
    .sort();
}

function read(path: string): string {
  return readFileSync(root + path, 'utf8').replaceAll('\r\n', '\n');
}

/** Fenced blocks marked `ts`; `ts no-run` with a reason is shown only. */
export function snippetsOfMarkdown(file: string, text: string): Snippet[] {
  const snippets: Snippet[] = [];
  const lines = text.split('\n');
  for (let i = 0; i < lines.length; i++) {
    const opening = /^(\s*)(`{3,})\s*(\S*)\s*(.*)$/.exec(lines[i] as string);
    if (!opening) continue;
    const [, indent = '', fence = '', language, info = ''] = opening;
    const start = i + 1;
    let end = start;
    while (end < lines.length && (lines[end] as string).trim() !== fence) end++;
    if (language === 'ts') {
      const code = lines.slice(start, end).map((line) => line.slice(Math.min(indent.length, leadingSpaces(line))));
      const noRun = /^no-run\b:?\s*(.*)$/.exec(info)?.[1];
      snippets.push({
        file,
        line: start + 1,
        code: code.join('\n'),
        ...(noRun === undefined ? {} : { noRun }),
      });
    }
    i = end;
  }
  return snippets;
}

/** The `@example` blocks of doc comments. */
export function snippetsOfComments(file: string, text: string): Snippet[] {
  const snippets: Snippet[] = [];
  for (const comment of text.matchAll(/\/\*\*[\s\S]*?\*\//g)) {
    const firstLine = text.slice(0, comment.index).split('\n').length;
    const body = comment[0]
      .replace(/^\/\*\*/, '')
      .replace(/\*\/$/, '')
      .split('\n')
      .map((line) => line.replace(/^\s*\* ?/, ''));
    let inExample = false;
    let inFence = false;
    const kept = body.map((line) => {
      if (!inFence && /^@\w+/.test(line)) inExample = line.startsWith('@example');
      if (line.startsWith('```')) inFence = !inFence;
      return inExample && !line.startsWith('@example') ? line : '';
    });
    for (const snippet of snippetsOfMarkdown(file, kept.join('\n'))) {
      snippets.push({ ...snippet, line: snippet.line + firstLine - 1 });
    }
  }
  return snippets;
}

function leadingSpaces(line: string): number {
  return line.length - line.trimStart().length;
}
