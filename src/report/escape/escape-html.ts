const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Text for an HTML or SVG element or a quoted attribute: nothing of it is markup. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (character) => entities[character] as string);
}
