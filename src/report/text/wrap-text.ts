import { characterWidth, textWidth } from './text-width.js';

/** Breaks a text into lines of a width, at blanks where it can, inside a long word where it must. Nothing is cut. */
export function wrapText(text: string, width: number): string[] {
  if (textWidth(text) <= width) return [text];
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const joined = line === '' ? word : `${line} ${word}`;
    if (textWidth(joined) <= width) {
      line = joined;
      continue;
    }
    if (line !== '') lines.push(line);
    const pieces = breakWord(word, width);
    lines.push(...pieces.slice(0, -1));
    line = pieces.at(-1) as string;
  }
  if (line !== '' || lines.length === 0) lines.push(line);
  return lines;
}

/** Wraps a text under a first line's lead and an equal indent for the next lines. */
export function wrapUnder(lead: string, text: string, width: number): string[] {
  const indent = ' '.repeat(textWidth(lead));
  return wrapText(text, Math.max(2, width - indent.length)).map((line, i) => (i === 0 ? lead : indent) + line);
}

/** A text filled with blanks to a width. */
export function pad(text: string, width: number, align: 'left' | 'right' = 'left'): string {
  const blanks = ' '.repeat(Math.max(0, width - textWidth(text)));
  return align === 'left' ? text + blanks : blanks + text;
}

function breakWord(word: string, width: number): string[] {
  const pieces: string[] = [];
  let piece = '';
  let used = 0;
  for (const character of word) {
    const own = characterWidth(character);
    if (used + own > width && piece !== '') {
      pieces.push(piece);
      piece = '';
      used = 0;
    }
    piece += character;
    used += own;
  }
  return [...pieces, piece];
}
