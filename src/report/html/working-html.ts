import { escapeHtml } from '../escape/escape-html.js';
import type { Working, WorkingPart, WorkingStep } from '../sheet/sheet.js';
import { tableHtml } from './table-html.js';

/** The working of one point as tables, open in print and on screen alike. */
export function workingHtml({ id, heading, remarks, tables, parts }: Working): string {
  const sentences = remarks.map((remark) => `<p class="small">${escapeHtml(remark)}</p>`).join('');
  const budgets = tables.map((table) => tableHtml(table, new Set())).join('');
  return `<div id="${id}"><h3>${escapeHtml(heading)}</h3>${sentences}${budgets}${parts.map(partHtml).join('')}</div>`;
}

function partHtml({ heading, steps }: WorkingPart): string {
  const title = heading === '' ? '' : `<h4>${escapeHtml(heading)}</h4>`;
  const head = ['Step', 'Formula, numbers, result', 'Source'].map(
    (name) => `<th role="columnheader" scope="col">${name}</th>`,
  );
  return [
    title,
    '<table class="flow working" role="table">',
    '<colgroup><col class="c1"><col><col class="c3"></colgroup>',
    `<thead role="rowgroup"><tr role="row">${head.join('')}</tr></thead>`,
    ...steps.map(stepHtml),
    '</table>',
  ].join('\n');
}

function stepHtml({ label, symbol, expression, substituted, result, source }: WorkingStep): string {
  const numbers = substituted === expression || substituted === result.split(' ')[0] ? '' : ` = ${substituted}`;
  const formula = `${escapeHtml(`${symbol} = ${expression}${numbers} =`)} <b>${escapeHtml(result)}</b>`;
  return [
    '<tbody role="rowgroup"><tr role="row" class="main">',
    `<td role="cell" data-label="Step">${escapeHtml(label)}</td>`,
    `<td role="cell" data-label="Formula" class="formula wide">${formula}</td>`,
    `<td role="cell" data-label="Source">${escapeHtml(source)}</td>`,
    '</tr></tbody>',
  ].join('');
}
