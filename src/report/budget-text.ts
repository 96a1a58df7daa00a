import type { Propagated } from '../uncertainty/index.js';
import { asciiText } from './escape/ascii-text.js';
import { bindUnits } from './escape/bind-units.js';
import { type BudgetOptions, budgetSheet } from './sheet/budget-options.js';
import { tableText } from './text/table-text.js';
import { wrapText } from './text/wrap-text.js';

/**
 * An uncertainty budget as text of at most 80 columns: a row for each input, the combined result last.
 *
 * @param budget A result of `propagate`, `readingBudget` or `powerBudget`
 * @param options Title, unit of the result, expanded uncertainty; `ascii` writes `ohm` for Ω and drops accents
 * @returns Text, ended by a line break
 * @throws CalculationError of `expandedUncertainty`, where none is given
 * @source JCGM 100:2008, 7.2.7
 * @example
 * ```ts
 * import { readingBudget } from 'esu-limits/uncertainty';
 * import { budgetText } from 'esu-limits/report';
 * const range = { maximum: 1, resolution: 0.001 };
 * const budget = readingBudget({ reads: 'current', reading: 0.5, range, accuracy: { ofReading: 0.01 }, load: { resistance: 500 }, slope: 0 });
 * budgetText(budget, { title: 'Cut, 500 ohm', unit: 'A' }).split('\n')[0];
 * // → "Cut, 500 ohm. Result: 500.0 mA, U = 5.7 mA (k = 1.96, 95 %)."
 * ```
 */
export function budgetText(budget: Propagated, options: BudgetOptions & { readonly ascii?: boolean } = {}): string {
  const spell = (text: string): string => bindUnits(options.ascii === true ? asciiText(text) : text);
  const table = budgetSheet(budget, options);
  const lines = [...wrapText(spell(table.caption), 80), '', ...tableText(table, 80, spell)];
  return `${lines.map((line) => line.replace(/\u00a0/g, ' ').trimEnd()).join('\n')}\n`;
}
