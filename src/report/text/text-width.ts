/** Characters that take no column of their own: marks on a letter, joiners. */
const zero = /^[\p{Mn}\p{Me}\u200c\u200d]$/u;

/** East Asian wide characters and pictographs, which take two columns. */
const wide =
  /^[\u1100-\u115f\u2e80-\u303e\u3041-\ua4cf\ua960-\ua97c\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff01-\uff60\uffe0-\uffe6\u{1f000}-\u{1faff}\u{20000}-\u{3fffd}]$/u;

/** Columns that a text takes in a fixed-width font. */
export function textWidth(text: string): number {
  // Plain ASCII, the common case, needs no look at each character.
  if (/^[\x20-\x7e]*$/.test(text)) return text.length;
  let width = 0;
  for (const character of text) width += characterWidth(character);
  return width;
}

/** Columns that one character takes. */
export function characterWidth(character: string): number {
  if (zero.test(character)) return 0;
  return wide.test(character) ? 2 : 1;
}
