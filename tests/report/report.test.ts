import MarkdownIt from 'markdown-it';
import Papa from 'papaparse';
import { type DefaultTreeAdapterTypes, parse } from 'parse5';
import { describe, expect, it } from 'vitest';
import type { Plan, VerificationRecord } from '../../src/procedure/index.js';
import { recomputeRecord } from '../../src/procedure/index.js';
import {
  recordCsv,
  recordHtml,
  recordJson,
  recordMarkdown,
  recordText,
  worksheetCsv,
  worksheetHtml,
  worksheetJson,
  worksheetMarkdown,
  worksheetText,
} from '../../src/report/index.js';
import { parseRecord, readReadingsCsv } from '../../src/schema/index.js';
import { plan, record } from './fixtures.js';
import { hostileTexts, withText } from './hostile.js';

type Node = DefaultTreeAdapterTypes.Node;

/** Every element of a page, with the faults that a parser finds. */
function elementsOf(html: string): { readonly elements: DefaultTreeAdapterTypes.Element[]; readonly faults: string[] } {
  const faults: string[] = [];
  const document = parse(html, { onParseError: (error) => faults.push(error.code) });
  const elements: DefaultTreeAdapterTypes.Element[] = [];
  const visit = (node: Node): void => {
    if ('tagName' in node) elements.push(node);
    if ('childNodes' in node) node.childNodes.forEach(visit);
  };
  visit(document);
  return { elements, faults };
}

/** Cells of a CSV text; the line break at its end makes no row. */
function readCsv(csv: string): ReturnType<typeof Papa.parse> {
  const { data, errors } = Papa.parse(csv, { delimiter: ',', newline: '\r\n' });
  return { data: data.filter((row) => row.length > 1 || row[0] !== ''), errors };
}

/** Columns that a line takes; combining and wide characters do not occur in the fixtures. */
const widest = (text: string): number => Math.max(...text.split('\n').map((line) => [...line].length));

const pages: readonly (readonly [string, (made: Plan, kept: VerificationRecord) => string])[] = [
  ['worksheet', (made) => worksheetHtml(made)],
  ['record', (_, kept) => recordHtml(kept)],
];

describe('text', () => {
  it('keeps to 80 columns', () => {
    expect(widest(worksheetText(plan))).toBeLessThanOrEqual(80);
    expect(widest(recordText(record))).toBeLessThanOrEqual(80);
  });

  it('is plain ASCII when asked', () => {
    for (const text of [worksheetText(plan, { ascii: true }), recordText(record, { ascii: true })]) {
      expect(text).toMatch(/^[\n\x20-\x7E]*$/);
      expect(text).toContain('ohm');
    }
  });

  it('has every point, its limits and its verdict', () => {
    const text = recordText(record, { working: false });
    for (const row of record.findings.points) expect(text).toMatch(new RegExp(`^ *${row.number} `, 'm'));
    const fails = record.findings.points.filter((row) => row.verdict === 'fail').length;
    expect(fails).toBeGreaterThan(0);
    expect(text.match(/FAIL/g)?.length ?? 0).toBeGreaterThanOrEqual(fails);
  });

  it('leaves the working out when asked, and says where it is', () => {
    expect(recordText(record, { working: false }).length).toBeLessThan(recordText(record).length / 2);
  });
});

describe('HTML', () => {
  it.each(pages)('%s: is well formed, holds no script, asks for nothing from outside', (_, page) => {
    const html = page(plan, record);
    const { elements, faults } = elementsOf(html);
    expect(faults).toEqual([]);
    const names = new Set(elements.map((element) => element.tagName));
    for (const refused of ['script', 'img', 'iframe', 'link', 'object', 'embed', 'form'])
      expect(names).not.toContain(refused);
    for (const { attrs } of elements) {
      for (const { name, value } of attrs) {
        expect(name).not.toMatch(/^on/);
        if (name === 'href' || name === 'src') expect(value).toMatch(/^#/);
      }
    }
    expect(html).not.toMatch(/url\((?!#)|@import/);
    expect(html).not.toMatch(/NaN|undefined|Infinity/);
  });

  it.each(pages)('%s: links only to places of the page', (_, page) => {
    const { elements } = elementsOf(page(plan, record));
    const attribute = (wanted: string): string[] =>
      elements.flatMap(({ attrs }) => attrs.filter(({ name }) => name === wanted).map(({ value }) => value));
    const ids = attribute('id');
    expect(new Set(ids).size).toBe(ids.length);
    for (const href of attribute('href')) expect(ids).toContain(href.slice(1));
  });

  it('says each verdict in a word, never by colour alone', () => {
    const html = recordHtml(record);
    expect(html).toContain('FAIL');
    expect(html).toContain('pass');
    expect(html).toContain('not judged');
  });

  it('draws a picture for each curve, with title and description', () => {
    const { elements } = elementsOf(recordHtml(record));
    const pictures = elements.filter(
      ({ tagName, childNodes }) =>
        tagName === 'svg' && childNodes.some((child) => 'tagName' in child && child.tagName === 'desc'),
    );
    expect(pictures.length).toBeGreaterThan(0);
    for (const { childNodes } of pictures) {
      expect(childNodes.some((child) => 'tagName' in child && child.tagName === 'title')).toBe(true);
    }
  });

  it('has rules for printing: page margins, repeated heads, rows that stay whole', () => {
    const html = worksheetHtml(plan);
    expect(html).toContain('@page');
    expect(html).toContain('table-header-group');
    expect(html).toContain('break-inside:avoid');
    expect(html).toContain('prefers-color-scheme');
  });
});

describe('CSV', () => {
  it('the worksheet is read back by the reader of readings: empty as it is, and filled in', () => {
    expect(readReadingsCsv(worksheetCsv(plan)).readings).toEqual([]);
    const { data } = readCsv(worksheetCsv(plan));
    const head = data[0] as string[];
    const reading = head.findIndex((title) => title.startsWith('reading'));
    const filled = data.map((row, i) => (i === 1 ? row.map((cell, k) => (k === reading ? '500 mA' : cell)) : row));
    const [read] = readReadingsCsv(Papa.unparse(filled, { newline: '\r\n' })).readings;
    expect(read).toMatchObject({ point: plan.points[0]?.id, value: 0.5, quantity: 'current' });
  });

  it('the record has a row for each reading', () => {
    const { data, errors } = readCsv(recordCsv(record));
    expect(errors).toEqual([]);
    const ids = data.map((row) => row.join(' '));
    for (const row of record.findings.points) expect(ids.some((line) => line.includes(row.point))).toBe(true);
    expect(new Set(data.map((row) => row.length)).size).toBe(1);
  });
});

describe('JSON', () => {
  it('is read back as it was, and recomputes', () => {
    expect(JSON.parse(worksheetJson(plan))).toEqual(plan);
    const back = parseRecord(JSON.parse(recordJson(record)));
    expect(back).toEqual(record);
    expect(recomputeRecord(back)).toEqual({ same: true, differences: [] });
    expect(recordJson(record).endsWith('}\n')).toBe(true);
  });
});

describe.each(hostileTexts.map((text) => [text.slice(0, 40), text] as const))('hostile text %j', (_, text) => {
  const hostile = withText(record, text);

  it('is shown as text in HTML', () => {
    for (const html of [recordHtml(hostile), worksheetHtml(hostile.plan)]) {
      const { elements, faults } = elementsOf(html);
      expect(faults).toEqual([]);
      const names = elements.map(({ tagName }) => tagName);
      expect(names).not.toContain('script');
      expect(names).not.toContain('img');
      expect(html).not.toContain('\u202E');
    }
  });

  it('is shown as text in Markdown, and leaves the tables whole', () => {
    const render = (kept: VerificationRecord): string =>
      new MarkdownIt({ html: true }).render(recordMarkdown(kept, { working: false }));
    const plain = elementsOf(render(record)).elements;
    const { elements } = elementsOf(render(hostile));
    const count = (list: typeof elements, name: string): number =>
      list.filter(({ tagName }) => tagName === name).length;
    expect(count(elements, 'script')).toBe(0);
    expect(count(elements, 'img')).toBe(0);
    expect(count(elements, 'a')).toBe(count(plain, 'a'));
    expect(count(elements, 'table')).toBe(count(plain, 'table'));
    expect(count(elements, 'td')).toBe(count(plain, 'td'));
  });

  it('does not run in a spreadsheet', () => {
    for (const csv of [recordCsv(hostile), worksheetCsv(hostile.plan)]) {
      const { data, errors } = readCsv(csv);
      expect(errors).toEqual([]);
      for (const cell of data.flat()) {
        if (/^[=+\-@\t\r]/.test(cell)) expect(Number.isFinite(Number(cell)), cell).toBe(true);
      }
    }
  });

  it('keeps to 80 columns in text, and shows no control character', () => {
    for (const sheet of [recordText(hostile), worksheetText(hostile.plan)]) {
      expect(widest(sheet)).toBeLessThanOrEqual(80);
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
      expect(sheet).not.toMatch(/[\u0000-\u0009\u000B-\u001F\u202A-\u202E]/);
    }
  });

  it('survives Markdown of the worksheet', () => {
    expect(worksheetMarkdown(hostile.plan).length).toBeGreaterThan(1000);
  });
});
