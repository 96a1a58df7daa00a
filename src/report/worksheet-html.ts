import type { Plan } from '../procedure/index.js';
import { renderHtml } from './html/render-html.js';
import type { SheetOptions } from './sheet/sheet-options.js';
import { worksheetSheet } from './sheet/worksheet-sheet.js';

/**
 * The worksheet of a plan as one HTML document with boxes to fill in by hand: inline style and pictures, no script,
 * no request. It prints on A4 and Letter.
 *
 * @param plan A plan of `planVerification`
 * @param options Whether the working is printed
 * @returns An HTML document
 */
export function worksheetHtml(plan: Plan, options: SheetOptions = {}): string {
  return renderHtml(worksheetSheet(plan, options));
}
