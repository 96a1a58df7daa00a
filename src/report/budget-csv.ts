import type { Propagated } from '../uncertainty/index.js';
import { type CsvOptions, csvText } from './csv/csv-text.js';

/**
 * An uncertainty budget as CSV, with all digits: a row for each input, the combined result last.
 *
 * Numbers are in the unit of their row; text that a spreadsheet would run as a formula gets an apostrophe.
 *
 * @param budget A result of `propagate`, `readingBudget` or `powerBudget`
 * @param options Unit of the result, byte-order mark
 * @returns CSV with a header, lines ended by CRLF
 * @source JCGM 100:2008, 7.2.7
 */
export function budgetCsv(budget: Propagated, options: CsvOptions & { readonly unit?: string } = {}): string {
  const header = [
    'name',
    'description',
    'unit',
    'value',
    'standard uncertainty',
    'distribution',
    'degrees of freedom',
    'type',
    'sensitivity',
    'contribution',
    'share',
  ];
  const rows = budget.contributions.map((row) => [
    row.name,
    row.description,
    row.unit,
    row.value,
    row.standardUncertainty,
    row.distribution,
    row.degreesOfFreedom,
    row.type,
    row.sensitivity,
    row.contribution,
    row.share,
  ]);
  const { value, standardUncertainty, degreesOfFreedom } = budget;
  const share = standardUncertainty > 0 ? 1 : 0;
  const combined = ['combined', 'Combined', options.unit, value, standardUncertainty, undefined, degreesOfFreedom];
  return csvText(header, [...rows, [...combined, undefined, undefined, standardUncertainty, share]], options);
}
