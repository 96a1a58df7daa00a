import type { Plan } from '../procedure/index.js';
import { renderMarkdown } from './markdown/render-markdown.js';
import type { SheetOptions } from './sheet/sheet-options.js';
import { worksheetSheet } from './sheet/worksheet-sheet.js';

/**
 * The worksheet of a plan as Markdown with tables. Texts of the documents are escaped: no markup and no HTML is made of them.
 *
 * @param plan A plan of `planVerification`
 * @param options Whether the working is printed
 * @returns Markdown, ended by a line break
 */
export function worksheetMarkdown(plan: Plan, options: SheetOptions = {}): string {
  return renderMarkdown(worksheetSheet(plan, options));
}
