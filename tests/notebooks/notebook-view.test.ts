import MarkdownIt from 'markdown-it';
import { type DefaultTreeAdapterTypes, parseFragment } from 'parse5';
import { describe, expect, it } from 'vitest';
import type { CalculationError } from '../../src/checks/index.js';
import { curvePictures, type NotebookContent, notebookView } from '../../src/report/index.js';
import { normalInput, propagate, rectangularInput } from '../../src/uncertainty/index.js';
import { plan, record } from '../report/fixtures.js';
import { hostileTexts, withText } from '../report/hostile.js';

const inputs = {
  i: rectangularInput({ value: 0.5, halfWidth: 0.01 }),
  r: normalInput({ value: 500, standardUncertainty: 2.5 }),
};
const budget = propagate(({ i = 0, r = 0 }: Record<string, number>) => i * i * r, inputs);
const [picture] = curvePictures(plan);

/** Rows of a table of Markdown, as cells. */
function rowsOf(markdown = ''): string[][] {
  const rows = markdown.split('\n').filter((line) => line.startsWith('|'));
  return rows.map((row) =>
    row
      .split(/(?<!\\)\|/)
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}

/** Names of all elements of a piece of a page. */
function elementsOf(html = ''): string[] {
  const names: string[] = [];
  const visit = (node: DefaultTreeAdapterTypes.Node): void => {
    if ('tagName' in node) names.push(node.tagName);
    if ('childNodes' in node) node.childNodes.forEach(visit);
  };
  visit(parseFragment(html));
  return names;
}

function codeOf(content: unknown): string | undefined {
  try {
    notebookView(content as NotebookContent);
  } catch (error) {
    return `${(error as CalculationError).code} at ${(error as CalculationError).path}`;
  }
  return undefined;
}

describe('a view for a notebook', () => {
  it('answers what kernels ask for, and is plain data beside', () => {
    const view = notebookView({ columns: ['a'], rows: [['b']] });
    const ask = (view as unknown as Record<symbol, () => unknown>)[Symbol.for('Jupyter.display')];
    expect(ask?.()).toBe(view.data);
    expect(JSON.parse(JSON.stringify(view))).toEqual({ data: view.data });
    expect(Object.keys(view.data).sort()).toEqual(['text/html', 'text/markdown', 'text/plain']);
  });

  it('shows a table of the user’s own: numbers to the right with their decimals, texts to the left', () => {
    const { data } = notebookView({
      title: 'Limits',
      columns: ['Load', { title: 'Lower', unit: 'mA', decimals: 1 }, { title: 'Ratio' }],
      rows: [
        ['L500', 438.178, -1 / 3],
        ['L1000', 97, 2],
      ],
    });
    expect(data['text/markdown']).toBe(
      '**Limits**\n\n| Load | Lower, mA | Ratio |\n| :-- | --: | --: |\n| L500 | 438\\.2 | −0.333333 |\n| L1000 | 97\\.0 | 2 |\n',
    );
    expect(data['text/plain']).toBe(
      [
        'Limits',
        '',
        '       Lower',
        'Load      mA      Ratio',
        '-----  -----  ---------',
        'L500   438.2  −0.333333',
        'L1000   97.0          2',
      ].join('\n'),
    );
    expect(data['text/html']).toContain('<caption>Limits</caption>');
  });

  it('shows a budget', () => {
    const { data } = notebookView({ budget, title: 'Power', unit: 'W' });
    expect(data['text/plain'].split('\n')[0]).toBe('Power. Result: 125.0 W, U = 5.8 W (k = 1.96, 95 %).');
    expect(rowsOf(data['text/markdown'])).toHaveLength(2 + 3);
  });

  it('shows the points of a plan with their limits, and says where one must not be activated', () => {
    const { data } = notebookView({ plan });
    const [head = [], , ...rows] = rowsOf(data['text/markdown']);
    expect(rows).toHaveLength(plan.points.length);
    const column = head.indexOf('Lower limit, mA');
    const [first] = plan.points;
    expect(Number(rows[0]?.[column]?.replace('\\', ''))).toBeCloseTo(1000 * (first?.limits.lower as number), 6);
    const infeasible = { ...plan, points: plan.points.map((point) => ({ ...point, feasible: false, warnings: [] })) };
    for (const form of Object.values(notebookView({ plan: infeasible }).data)) {
      expect(form.split('Do not activate as planned')).toHaveLength(1 + plan.points.length);
    }
  });

  it('says below the table what concerns a point, and leaves out the name of an only output', () => {
    const substituted = plan.points.filter(({ warnings }) => warnings.some(({ code }) => code === 'load-substituted'));
    expect(substituted.length).toBeGreaterThan(0);
    for (const form of Object.values(notebookView({ plan }).data)) {
      for (const { number } of substituted) expect(form).toMatch(new RegExp(`Point ${number}: .{1,12} stands in for`));
    }
    expect(rowsOf(notebookView({ plan }).data['text/markdown'])[0]).toContain('Output');
    const only = { ...plan, points: plan.points.filter(({ output }) => output === plan.points[0]?.output) };
    const { data } = notebookView({ plan: only });
    expect(rowsOf(data['text/markdown'])[0]).not.toContain('Output');
    expect(data['text/plain']).toMatch(/^Monopolar cut: points in the order of work/);
  });

  it('shows limits of acceptance where the plan has them, and only there', () => {
    const guarded = record.plan.points.some((point) => point.measurement?.acceptance !== undefined);
    const { data } = notebookView({ plan: record.plan });
    expect(data['text/plain'].includes('Accept')).toBe(guarded);
    const without = record.plan.points.map(({ measurement, ...point }) => point);
    expect(notebookView({ plan: { ...record.plan, points: without } }).data['text/plain']).not.toContain('Accept');
  });

  it('shows findings with their verdicts', () => {
    const { data } = notebookView({ plan: record.plan, findings: record.findings, title: 'Readings' });
    expect(data['text/markdown']).toMatch(/^\*\*Readings\*\*/);
    const failed = record.findings.points.filter(({ verdict }) => verdict === 'fail').length;
    expect(failed).toBeGreaterThan(0);
    expect(data['text/markdown']?.match(/\| \*\*fail\*\*/gi)).toHaveLength(failed);
  });

  it('shows a working, with its sources below', () => {
    const working = plan.points[0]?.working ?? [];
    const { data } = notebookView({ working });
    expect(rowsOf(data['text/markdown'])).toHaveLength(2 + working.length);
    expect(data['text/plain']).toMatch(/\n\[1\] .*Standing: /);
    expect(data['text/html']).toMatch(/<p>\[1\] /);
  });

  it('shows a curve and a drawing on paper of their own, with words beside', () => {
    if (picture === undefined) throw new Error('the plan has no curve');
    const curve = notebookView({ picture, id: 'one' }).data;
    expect(Object.keys(curve).sort()).toEqual(['image/svg+xml', 'text/plain']);
    expect(curve['image/svg+xml']).toMatch(
      /^<svg [^>]*><rect width="100%" height="100%" style="fill:var\(--paper,#ffffff\)"\/><title id="one-title">/,
    );
    expect(curve['text/plain'].replaceAll('\n', ' ')).toBe(picture.description);
    const drawing = notebookView({ svg: '<svg viewBox="0 0 1 1"><path d="M0 0"/></svg>', description: 'a\nb' }).data;
    expect(drawing['image/svg+xml']).toMatch(/^<svg viewBox="0 0 1 1"><rect [^>]*\/><path d="M0 0"\/><\/svg>$/);
    expect(drawing['text/plain']).toBe('a b');
  });

  it('refuses what it cannot show', () => {
    expect(codeOf(undefined)).toBe('unknown-choice at content');
    expect(codeOf({ something: 1 })).toBe('unknown-choice at content');
    expect(codeOf({ svg: '<p>no drawing</p>', description: '' })).toBe('text-malformed at content.svg');
    expect(codeOf({ columns: ['a', 'b'], rows: [['1']] })).toBe('wrong-count at content.rows[0]');
    expect(codeOf({ columns: ['a'], rows: [[1], [Number.NaN]] })).toBe('not-a-number at content.rows[1][0]');
  });
});

describe.each(hostileTexts.map((text) => [text.slice(0, 40), text] as const))('hostile text %j', (_, text) => {
  const hostile = withText(record, text);
  const [drawn] = curvePictures(hostile.plan, hostile.findings);
  const shown: readonly NotebookContent[] = [
    { plan: hostile.plan, title: text },
    { plan: hostile.plan, findings: hostile.findings },
    { budget, title: text, unit: text },
    { columns: [text, { title: text, unit: text }], rows: [[text, text]], title: text },
    {
      working: [{ ...(plan.points[0]?.working[0] as (typeof plan.points)[0]['working'][0]), label: text }],
      title: text,
    },
  ];

  it('is text in every form', () => {
    for (const content of shown) {
      const { data } = notebookView(content);
      const rendered = new MarkdownIt({ html: true, linkify: true }).render(data['text/markdown'] ?? '');
      for (const html of [data['text/html'], rendered]) {
        const names = elementsOf(html);
        expect(names).toContain('table');
        for (const name of ['script', 'img', 'a', 'b', 'code', 'h1']) expect(names).not.toContain(name);
      }
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must not be there
      expect(Object.values(data).join('')).not.toMatch(/[\u0000-\u0008\u000B-\u001F\u202A-\u202E]/);
    }
  });

  it('is text in a picture', () => {
    if (drawn === undefined) throw new Error('the plan has no curve');
    const { data } = notebookView({ picture: drawn });
    for (const name of ['script', 'img', 'a']) expect(elementsOf(data['image/svg+xml'])).not.toContain(name);
  });
});
