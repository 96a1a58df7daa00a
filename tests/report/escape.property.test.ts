import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import Papa from 'papaparse';
import { type DefaultTreeAdapterTypes, parseFragment } from 'parse5';
import { describe, expect, it } from 'vitest';
import { csvText } from '../../src/report/csv/csv-text.js';
import { asciiText } from '../../src/report/escape/ascii-text.js';
import { bindUnits } from '../../src/report/escape/bind-units.js';
import { escapeCssString } from '../../src/report/escape/escape-css-string.js';
import { escapeHtml } from '../../src/report/escape/escape-html.js';
import { escapeMarkdown } from '../../src/report/escape/escape-markdown.js';
import { escapeSpreadsheet } from '../../src/report/escape/escape-spreadsheet.js';
import { plainText } from '../../src/report/escape/plain-text.js';
import { troublesomeTexts } from './troublesome-texts.js';

/** Texts as a file may hold them, troublesome ones among them. */
const anyText = (): fc.Arbitrary<string> =>
  fc.oneof(
    fc.constantFrom(...troublesomeTexts),
    fc.string({ unit: 'binary', maxLength: 40 }),
    fc.string({ unit: fc.constantFrom(...'<>&"\'`*_[]()|\\#-+=!~$@{}:/.w 1a\n'), maxLength: 40 }),
  );

describe('plainText', () => {
  it('is one line without invisible characters', () => {
    fc.assert(
      fc.property(anyText(), (text) => {
        const plain = plainText(text);
        expect(plain.replace(/[\u200c\u200d]/g, '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Cs}]/u);
        expect(plainText(plain)).toBe(plain);
      }),
    );
  });

  it('shows what would not be seen, and leaves the letters of every script', () => {
    expect(plainText('a\u202eb\u0007')).toBe('a[U+202E]b[U+0007]');
    expect(plainText(' two \n\t lines ')).toBe('two lines');
    expect(plainText('M\u00fcller 中文 \u05e2\u05d1')).toBe('M\u00fcller 中文 \u05e2\u05d1');
    expect(plainText('\ud800')).toBe('[U+D800]');
  });
});

describe('escapeHtml', () => {
  it('gives back the text, and nothing but text, in an element and in an attribute', () => {
    fc.assert(
      fc.property(anyText(), (text) => {
        const plain = plainText(text);
        const faults: string[] = [];
        const html = `<p title="${escapeHtml(plain)}">${escapeHtml(plain)}</p>`;
        const fragment = parseFragment(html, { onParseError: (error) => faults.push(error.code) });
        expect(fragment.childNodes).toHaveLength(1);
        const paragraph = fragment.childNodes[0] as DefaultTreeAdapterTypes.Element;
        expect(paragraph.attrs).toEqual([{ name: 'title', value: plain }]);
        expect(
          paragraph.childNodes
            .map((node) => (node.nodeName === '#text' && 'value' in node ? node.value : '?'))
            .join(''),
        ).toBe(plain);
        // Code points that Unicode keeps free are reported, and harm nothing.
        expect(faults.filter((code) => code !== 'noncharacter-in-input-stream')).toEqual([]);
      }),
    );
  });
});

describe('escapeMarkdown', () => {
  const markdown = new MarkdownIt({ html: true, linkify: true });
  // Tables and bare addresses with a scheme, with www or of mail, as common sites read them.
  markdown.linkify.set({ fuzzyLink: false });
  const isText = (type: string): boolean => type === 'text' || type === 'text_special';

  it('gives back the text, and nothing but text, in a paragraph', () => {
    fc.assert(
      fc.property(anyText(), (text) => {
        const plain = plainText(text);
        fc.pre(plain !== '');
        const tokens = markdown.parse(escapeMarkdown(plain), {});
        expect(tokens.map((token) => token.type)).toEqual(['paragraph_open', 'inline', 'paragraph_close']);
        const inner = tokens[1]?.children ?? [];
        expect(inner.filter((token) => !isText(token.type))).toEqual([]);
        expect(inner.map((token) => token.content).join('')).toBe(plain);
      }),
    );
  });

  it('gives back the text in a cell of a table', () => {
    fc.assert(
      fc.property(anyText(), (text) => {
        const plain = plainText(text);
        const tokens = markdown.parse(`| a | b |\n| :-- | --: |\n| ${escapeMarkdown(plain)} | 1 |\n`, {});
        const cells = tokens.filter((token) => token.type === 'inline').map((token) => token.children ?? []);
        expect(cells).toHaveLength(4);
        expect(cells[2]?.filter((token) => !isText(token.type))).toEqual([]);
        expect(cells[2]?.map((token) => token.content).join('')).toBe(plain);
      }),
    );
  });
});

describe('CSV', () => {
  it('has no cell that a spreadsheet would run', () => {
    fc.assert(
      fc.property(anyText(), (text) => {
        expect(escapeSpreadsheet(text)).not.toMatch(/^[\t\r\n]|^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]/u);
        expect(escapeSpreadsheet(text).endsWith(text)).toBe(true);
      }),
    );
  });

  it('reads back to the same cells', () => {
    const cell = fc.oneof(anyText(), fc.double({ noNaN: true, noDefaultInfinity: true }));
    const row = fc.array(cell, { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1 }), (rows) => {
        const { data, errors } = Papa.parse(csvText(['a', 'b', 'c'], rows, {}), { delimiter: ',', newline: '\r\n' });
        expect(errors).toEqual([]);
        const expected = rows.map((cells) =>
          cells.map((value) => (typeof value === 'number' ? String(value) : escapeSpreadsheet(plainText(value)))),
        );
        expect(data).toEqual([['a', 'b', 'c'], ...expected, ['']]);
      }),
    );
  });

  it('keeps numbers numbers, and marks the order of bytes when asked', () => {
    expect(csvText(['x'], [[-1.5], ['-1.5'], ['a']], {})).toBe("x\r\n-1.5\r\n'-1.5\r\na\r\n");
    expect(csvText(['x'], [], { byteOrderMark: true }).charCodeAt(0)).toBe(0xfeff);
  });
});

describe('other escapes', () => {
  it('make a CSS string that nothing leaves', () => {
    fc.assert(
      fc.property(anyText(), (text) => {
        expect(escapeCssString(plainText(text))).toMatch(/^"(?:[A-Za-z0-9 ]|\\[0-9a-f]{1,6} )*"$/);
      }),
    );
  });

  it('spell ASCII', () => {
    expect(asciiText('\u22123 Ω ±5 % M\u00fcller 中')).toBe('-3 ohm +/-5 % Muller [U+4E2D]');
    fc.assert(
      fc.property(anyText(), (text) => {
        expect(asciiText(plainText(text))).toMatch(/^[\x20-\x7e]*$/);
      }),
    );
  });

  it('keep a number on the line of its unit', () => {
    expect(bindUnits('120 W at 500 Ω for 10 s, 5 Watt')).toBe('120\u00a0W at 500\u00a0Ω for 10\u00a0s, 5 Watt');
    expect(bindUnits('±20 % of 1.2 kΩ at 430 kHz')).toBe('±20\u00a0% of 1.2\u00a0kΩ at 430\u00a0kHz');
  });
});
