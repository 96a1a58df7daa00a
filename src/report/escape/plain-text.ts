/**
 * Text from a file as one line that shows what it holds: blanks and line breaks become one space; control
 * characters, direction overrides and other invisible characters are written out, such as `[U+202E]`.
 */
export function plainText(text: string): string {
  return text
    .replace(/[\t\n\v\f\r \u00a0\u202f]+/gu, ' ')
    .trim()
    .replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (character) =>
      // The two joiners shape letters of several scripts and move nothing.
      character === '\u200c' || character === '\u200d' ? character : codePointText(character),
    );
}

/** A character by its code point: `[U+202E]`. */
export function codePointText(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  return `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`;
}
