/**
 * Text for a line or a table cell of Markdown: shown as it is, with no emphasis, link, code, HTML,
 * automatic link, heading, list or table cell made of it.
 */
export function escapeMarkdown(text: string): string {
  return (
    text
      .replace(/&/g, '&amp;')
      .replace(/</g, '&lt;')
      .replace(/>/g, '&gt;')
      .replace(/[\\`*_{}[\]()#|~$!^]/g, '\\$&')
      .replace(/^[-+=]/, '\\$&')
      .replace(/^(\d+)\./, '$1\\.')
      // Bare addresses become links on many sites: a character of them as an entity prevents it.
      .replace(/:\/\//g, '&#58;//')
      .replace(/@/g, '&#64;')
      .replace(/www\./gi, (www) => `${www.slice(0, 3)}&#46;`)
  );
}
