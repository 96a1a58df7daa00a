/** Text as a CSS string, quotes included: every character that is not a letter, digit or blank by its code point. */
export function escapeCssString(text: string): string {
  const escaped = text.replace(/[^A-Za-z0-9 ]/gu, (character) => `\\${character.codePointAt(0)?.toString(16)} `);
  return `"${escaped}"`;
}
