import type { Propagated } from '../uncertainty/index.js';
import { tableHtml } from './html/table-html.js';
import { type BudgetOptions, budgetSheet } from './sheet/budget-options.js';

/**
 * An uncertainty budget as an HTML table, to be put into a page: a row for each input, the combined result last. It
 * brings no style and no script; every text in it is escaped.
 *
 * @param budget A result of `propagate`, `readingBudget` or `powerBudget`
 * @param options Title, unit of the result, expanded uncertainty
 * @returns A `table` element
 * @throws CalculationError of `expandedUncertainty`, where none is given
 * @source JCGM 100:2008, 7.2.7
 */
export function budgetHtml(budget: Propagated, options: BudgetOptions = {}): string {
  return tableHtml(budgetSheet(budget, options), new Set());
}
