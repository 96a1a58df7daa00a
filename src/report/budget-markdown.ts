import type { Propagated } from '../uncertainty/index.js';
import { escapeMarkdown } from './escape/escape-markdown.js';
import { tableParts } from './markdown/render-markdown.js';
import { type BudgetOptions, budgetSheet } from './sheet/budget-options.js';

/**
 * An uncertainty budget as a Markdown table: a row for each input, the combined result last.
 *
 * @param budget A result of `propagate`, `readingBudget` or `powerBudget`
 * @param options Title, unit of the result, expanded uncertainty
 * @returns Markdown, ended by a line break
 * @throws CalculationError of `expandedUncertainty`, where none is given
 * @source JCGM 100:2008, 7.2.7
 */
export function budgetMarkdown(budget: Propagated, options: BudgetOptions = {}): string {
  const table = budgetSheet(budget, options);
  return `${[`**${escapeMarkdown(table.caption)}**`, ...tableParts(table)].join('\n\n')}\n`;
}
