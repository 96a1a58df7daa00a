/** Tells places of a text in line and column, both from 1, for positions that never go back: linear in the text. */
export function lineCounter(text: string): { readonly placeAt: (position: number) => string } {
  let line = 1;
  let lineStart = 0;
  let at = 0;
  return {
    placeAt: (position) => {
      for (; at < position; at++) {
        const code = text.charCodeAt(at);
        // A carriage return alone ends a line too; with a line feed it is one end.
        if (code === 0x0a || (code === 0x0d && text.charCodeAt(at + 1) !== 0x0a)) {
          line++;
          lineStart = at + 1;
        }
      }
      return `line ${line}, column ${position - lineStart + 1}`;
    },
  };
}
