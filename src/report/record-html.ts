import type { VerificationRecord } from '../procedure/index.js';
import { renderHtml } from './html/render-html.js';
import { recordSheet } from './sheet/record-sheet.js';
import type { SheetOptions } from './sheet/sheet-options.js';

/**
 * A record as one HTML document, to sign and to keep: inline style and pictures, no script, no request. It prints on
 * A4 and Letter; load curves show the readings, and the working of every number follows.
 *
 * @param record A record of `makeRecord`
 * @param options Whether the working is printed
 * @returns An HTML document
 */
export function recordHtml(record: VerificationRecord, options: SheetOptions = {}): string {
  return renderHtml(recordSheet(record, options));
}
