/** Plain text for Markdown that a site renders: nothing of it is markup, an expression of a template or a table's edge. */
export function text(plain: string): string {
  return plain
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('{', '&#123;')
    .replaceAll('|', '&#124;')
    .replaceAll('$', '&#36;')
    .replace(/[\\`*_~[\]]/g, '\\$&')
    .replaceAll('\n', ' ');
}

/** A word as code. */
export function code(plain: string): string {
  return `<code v-pre>${plain.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('|', '&#124;')}</code>`;
}

/** A table; its cells are Markdown already. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  return [head, head.map(() => '---'), ...rows].map((cells) => `| ${cells.join(' | ')} |`).join('\n');
}

/** A page; `wide` leaves out the outline, so that a table has the room. */
export function page(title: string, parts: readonly string[], wide = false): string {
  const front = wide ? '---\naside: false\n---\n\n' : '';
  return `${front}# ${title}\n\n${parts.join('\n\n')}\n`;
}

/** Words from the headings of a list: `circuit` becomes `Circuit`. */
export function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
