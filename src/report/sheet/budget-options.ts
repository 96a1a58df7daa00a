import { type ExpandedUncertainty, expandedUncertainty, type Propagated } from '../../uncertainty/index.js';
import { budgetResultText, budgetTable } from './budget-table.js';
import type { Table } from './sheet.js';

/** How a budget is printed. */
export interface BudgetOptions {
  /** What was measured; `Budget` unless stated. */
  readonly title?: string;
  /** Unit of the result, such as `A`; without it numbers stand alone. */
  readonly unit?: string;
  /** Expanded uncertainty to print with it; at 95 % unless stated. */
  readonly expanded?: ExpandedUncertainty;
}

/** A budget as one table, whose caption names the result. */
export function budgetSheet(budget: Propagated, { title = 'Budget', unit, expanded }: BudgetOptions): Table {
  const { standardUncertainty, degreesOfFreedom } = budget;
  const given = degreesOfFreedom === undefined ? { standardUncertainty } : { standardUncertainty, degreesOfFreedom };
  const result = budgetResultText(budget, expanded ?? expandedUncertainty(given), unit);
  return budgetTable(budget, { id: 'budget', caption: `${title}. ${result}`, ...(unit === undefined ? {} : { unit }) });
}
