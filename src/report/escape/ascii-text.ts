import { codePointText } from './plain-text.js';

const spelled: Readonly<Record<string, string>> = {
  '\u2126': 'ohm',
  Ω: 'ohm',
  µ: 'u',
  μ: 'u',
  '−': '-',
  '‐': '-',
  '–': '-',
  '—': '-',
  '±': '+/-',
  '×': 'x',
  '·': '-',
  '≤': '<=',
  '≥': '>=',
  '≈': '~',
  '√': 'sqrt',
  '°': 'deg',
  '²': '^2',
  '³': '^3',
  '…': '...',
  '‘': "'",
  '’': "'",
  '“': '"',
  '”': '"',
  '→': '->',
  '\u202f': ' ',
};

/** Text in ASCII: signs are spelled, accents are dropped, what remains is written as its code point. A no-break blank stays. */
export function asciiText(text: string): string {
  return text
    .replace(/[^\p{ASCII}]/gu, (character) => spelled[character] ?? character)
    .normalize('NFD')
    .replace(/\p{Mn}+/gu, '')
    .replace(/[^\p{ASCII}\u00a0]/gu, codePointText);
}
