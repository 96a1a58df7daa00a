import type { VerificationRecord } from '../procedure/index.js';
import { recordSheet } from './sheet/record-sheet.js';
import { renderText, type TextOptions } from './text/render-text.js';

/**
 * A record as text of at most 80 columns, to sign.
 *
 * @param record A record of `makeRecord`
 * @param options Characters, and whether the working is printed
 * @returns Text, ended by a line break
 */
export function recordText(record: VerificationRecord, options: TextOptions = {}): string {
  return renderText(recordSheet(record, options), options);
}
