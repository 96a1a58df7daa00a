import type { Plan } from '../procedure/index.js';
import { worksheetSheet } from './sheet/worksheet-sheet.js';
import { renderText, type TextOptions } from './text/render-text.js';

/**
 * The worksheet of a plan as text of at most 80 columns, with room to write readings.
 *
 * Long texts wrap, nothing is cut. Limits are printed as the instrument shows them and never looser than they are.
 *
 * @param plan A plan of `planVerification`
 * @param options Characters, and whether the working is printed
 * @returns Text, ended by a line break
 */
export function worksheetText(plan: Plan, options: TextOptions = {}): string {
  return renderText(worksheetSheet(plan, options), options);
}
