import Papa from 'papaparse';
import { parseFragment } from 'parse5';
import { describe, expect, it } from 'vitest';
import { budgetCsv, budgetHtml, budgetMarkdown, budgetText } from '../../src/report/index.js';
import { normalInput, propagate, rectangularInput, repeatedReadingsInput } from '../../src/uncertainty/index.js';

const current = { ...rectangularInput({ value: 0.5, halfWidth: 0.01 }), description: 'current', unit: 'A' };
const load = { ...normalInput({ value: 500, standardUncertainty: 2.5 }), description: 'load', unit: 'ohm' };
const budget = propagate(({ i = 0, r = 0 }: Record<string, number>) => i * i * r, { i: current, r: load });

describe('a budget', () => {
  it('is text of at most 80 columns, with the result above', () => {
    const lines = budgetText(budget, { title: 'Power at 500 ohm', unit: 'W' }).split('\n');
    // u = √((2·I·R·0.01/√3)² + (I²·2.5)²) = 2.953 W
    expect(lines[0]).toBe('Power at 500 ohm. Result: 125.0 W, U = 5.8 W (k = 1.96, 95 %).');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(lines.find((line) => line.startsWith('current'))).toMatch(
      /500 mA +5\.8 mA +rectangular +∞ +B +500 +2\.89 W +95\.5 %$/,
    );
    expect(lines.find((line) => line.startsWith('load'))).toMatch(
      /500 Ω +2\.5 Ω +normal +∞ +B +0\.25 +0\.63 W +4\.5 %$/,
    );
    expect(lines.find((line) => line.startsWith('Combined'))).toMatch(/125 W +3 W .* 100 %$/);
  });

  it('is ASCII when asked', () => {
    expect(budgetText(budget, { unit: 'W', ascii: true })).toMatch(/^[\x20-\x7e\n]*$/);
  });

  it('is Markdown', () => {
    const rows = budgetMarkdown(budget, { unit: 'W' })
      .split('\n')
      .filter((line) => line.startsWith('|'));
    expect(rows).toHaveLength(2 + 3);
    expect(new Set(rows.map((row) => row.split('|').length)).size).toBe(1);
  });

  it('is an HTML table, and hostile text is text', () => {
    const hostile = propagate((x: Record<string, number>) => x.a as number, {
      a: {
        ...normalInput({ value: 1, standardUncertainty: 0.1 }),
        description: '<img src=x onerror=alert(1)>',
        unit: '"><b>',
      },
    });
    const html = budgetHtml(hostile, { title: '</table><script>' });
    expect(html).not.toMatch(/<(img|b|script)/);
    const fragment = parseFragment(html);
    expect(fragment.childNodes.map((node) => node.nodeName)).toEqual(['table']);
    expect(budgetMarkdown(hostile)).not.toContain('<img');
  });

  it('is CSV with all digits', () => {
    const [header = [], ...lines] = Papa.parse(budgetCsv(budget, { unit: 'W' }), {
      delimiter: ',',
      newline: '\r\n',
    }).data;
    const data = lines.slice(0, -1).map((line) => Object.fromEntries(header.map((name, i) => [name, line[i]])));
    for (const [i, row] of budget.contributions.entries()) {
      expect(Number(data[i]?.['standard uncertainty'])).toBe(row.standardUncertainty);
      expect(Number(data[i]?.contribution)).toBe(row.contribution);
      expect(Number(data[i]?.share)).toBe(row.share);
    }
    expect(Number(data[2]?.['standard uncertainty'])).toBe(budget.standardUncertainty);
    expect(data[2]?.unit).toBe('W');
    const formula = propagate((x: Record<string, number>) => x.a as number, {
      a: { ...normalInput({ value: 1, standardUncertainty: 0.1 }), description: '=1+1' },
    });
    expect(budgetCsv(formula)).toContain("'=1+1");
  });

  it('shows degrees of freedom, and a result that has none', () => {
    const few = propagate((x: Record<string, number>) => x.a as number, { a: repeatedReadingsInput([1, 1.1, 0.9]) });
    expect(budgetText(few)).toContain('k = 4.3');
    const exact = propagate((x: Record<string, number>) => x.a as number, {
      a: normalInput({ value: 2, standardUncertainty: 0 }),
    });
    expect(budgetText(exact)).toContain('Result: 2, without uncertainty.');
  });
});
