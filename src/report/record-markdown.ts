import type { VerificationRecord } from '../procedure/index.js';
import { renderMarkdown } from './markdown/render-markdown.js';
import { recordSheet } from './sheet/record-sheet.js';
import type { SheetOptions } from './sheet/sheet-options.js';

/**
 * A record as Markdown with tables. Texts of the documents are escaped: no markup and no HTML is made of them.
 *
 * @param record A record of `makeRecord`
 * @param options Whether the working is printed
 * @returns Markdown, ended by a line break
 */
export function recordMarkdown(record: VerificationRecord, options: SheetOptions = {}): string {
  return renderMarkdown(recordSheet(record, options));
}
