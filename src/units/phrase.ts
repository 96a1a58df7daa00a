import { fail } from '../checks/index.js';

/** Longest text that is read as a tolerance or a band, in characters. */
const longestPhrase = 200;

/** A text of several quantities with ordinary blanks only, one between two words; or an error. */
export function requirePhrase(text: string, path: string, shape: string): string {
  if (typeof text !== 'string') fail('wrong-type', path, text, shape);
  if (text.length > longestPhrase) fail('text-too-long', path, text, `must have at most ${longestPhrase} characters`);
  return text.replace(/[ \u00a0\u202f]+/g, ' ').trim();
}
