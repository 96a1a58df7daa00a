import { describe, expect, it } from 'vitest';
import type { Tolerance } from '../../src/band/index.js';
import type { Fault } from '../../src/checks/index.js';
import {
  formatTolerance,
  type ParsedTolerance,
  parseTolerance,
  safeParseTolerance,
  type ToleranceOptions,
} from '../../src/units/index.js';

const ohms = { absoluteQuantity: 'resistance' } as const;

describe('parseTolerance reads', () => {
  it.each<[string, ParsedTolerance, string?]>([
    ['20 %', { relative: 0.2 }, '±20 %'],
    ['±20 %', { relative: 0.2 }],
    ['±20%', { relative: 0.2 }, '±20 %'],
    ['± 20 %', { relative: 0.2 }, '±20 %'],
    ['+/-20 %', { relative: 0.2 }, '±20 %'],
    ['+/\u221220 %', { relative: 0.2 }, '±20 %'],
    ['±20\u00a0%', { relative: 0.2 }, '±20 %'],
    ['-12 %/+15 %', { relative: { below: 0.12, above: 0.15 } }],
    ['+15 %/-12 %', { relative: { below: 0.12, above: 0.15 } }, '-12 %/+15 %'],
    ['\u221213.5 % / +16.2 %', { relative: { below: 0.135, above: 0.162 } }, '-13.5 %/+16.2 %'],
    ['- 12 %/+ 15 %', { relative: { below: 0.12, above: 0.15 } }, '-12 %/+15 %'],
    ['-5 %/+5 %', { relative: 0.05 }, '±5 %'],
    ['-0 %/+20 %', { relative: { below: 0, above: 0.2 } }],
    ['+15 %', { relative: { above: 0.15 } }],
    ['-12 %', { relative: { below: 0.12 } }],
    ['±5 ohm', { absolute: 5, ...ohms }, '±5 Ω'],
    ['5 Ω', { absolute: 5, ...ohms }, '±5 Ω'],
    ['-7 ohm/+9 ohm', { absolute: { below: 7, above: 9 }, ...ohms }, '-7 Ω/+9 Ω'],
    ['+4 ohm', { absolute: { above: 4 }, ...ohms }, '+4 Ω'],
    ['±10 mA', { absolute: 0.01, absoluteQuantity: 'current' }],
    ['±2 K', { absolute: 2, absoluteQuantity: 'temperature' }],
    [
      '±5 ohm or ±10 %, whichever is greater',
      { relative: 0.1, absolute: 5, combine: 'greater', ...ohms },
      '±10 % or ±5 Ω, whichever is greater',
    ],
    [
      '10 % or 5 ohm, whichever is greater',
      { relative: 0.1, absolute: 5, combine: 'greater', ...ohms },
      '±10 % or ±5 Ω, whichever is greater',
    ],
    [
      '-12 %/+15 % or ±5 Ω, whichever is greater',
      { relative: { below: 0.12, above: 0.15 }, absolute: 5, combine: 'greater', ...ohms },
    ],
    ['±(2 % + 0.5 ohm)', { relative: 0.02, absolute: 0.5, combine: 'sum', ...ohms }, '±(2 % + 500 mΩ)'],
    ['±(0.5 ohm+2 %)', { relative: 0.02, absolute: 0.5, combine: 'sum', ...ohms }, '±(2 % + 500 mΩ)'],
    ['±( 2 % + 1e+2 ohm )', { relative: 0.02, absolute: 100, combine: 'sum', ...ohms }, '±(2 % + 100 Ω)'],
    [
      '-(2 % + 1 Ω)/+(3 % + 2 Ω)',
      { relative: { below: 0.02, above: 0.03 }, absolute: { below: 1, above: 2 }, combine: 'sum', ...ohms },
    ],
    ['+(3 % + 2 Ω)', { relative: { above: 0.03 }, absolute: { above: 2 }, combine: 'sum', ...ohms }],
    ['-12 %/+5 Ω', { relative: { below: 0.12, above: 0 }, absolute: { below: 0, above: 5 }, combine: 'sum', ...ohms }],
    ['±5 ohm, not below 0 ohm', { absolute: 5, floor: 0, ...ohms }, '±5 Ω, not below 0 Ω'],
    ['±20 %, not below 10 Ω', { relative: 0.2, floor: 10, ...ohms }],
    [
      '±10 % or ±5 Ω, whichever is greater, not below 0 Ω',
      { relative: 0.1, absolute: 5, combine: 'greater', floor: 0, ...ohms },
    ],
  ])('%s', (text, tolerance, printed = text) => {
    const read = parseTolerance(text);
    expect(read).toEqual(tolerance);
    expect(formatTolerance(read)).toBe(printed);
    expect(parseTolerance(printed)).toEqual(tolerance);
  });

  it('what a band takes as a tolerance', () => {
    const tolerance: Tolerance = parseTolerance('±20 %');
    expect(tolerance.relative).toBe(0.2);
    const printed: string = formatTolerance(tolerance);
    expect(printed).toBe('±20 %');
  });

  it('an absolute part of the quantity and form that are asked for', () => {
    expect(parseTolerance('±5 ohm', { expect: 'resistance' }).absolute).toBe(5);
    expect(parseTolerance('±20 %', { expect: 'resistance' })).toEqual({ relative: 0.2 });
    expect(parseTolerance('±50 V peak', { expect: 'voltage', form: 'peak' }).absolute).toBe(50);
    expect(parseTolerance('±0.5', { expect: 'number' })).toEqual({ absolute: 0.5, absoluteQuantity: 'number' });
  });
});

describe('parseTolerance refuses', () => {
  it.each<[string, Fault['code'], RegExp?]>([
    ['', 'number-malformed', /empty/],
    ['±', 'number-malformed', /empty/],
    ['±20', 'unit-missing', /"20 %"/],
    ['20', 'unit-missing', /"20 %"/],
    ['+15/-12 %', 'unit-missing', /"15 %"/],
    ['±1,5 %', 'number-malformed', /"1\.5"/],
    ['±5 ohm, ±10 %', 'text-malformed'],
    ['±20 percent', 'unit-unknown', /"20 %"/],
    ['±±20 %', 'number-malformed'],
    ['±-20 %', 'negative'],
    ['--12 %', 'negative'],
    ['-12 %/-15 %', 'text-malformed'],
    ['+12 %/+15 %', 'text-malformed'],
    ['-12 %/15 %', 'text-malformed'],
    ['-12 %/+15 %/+20 %', 'text-malformed'],
    ['20 %/+15 %', 'text-malformed'],
    ['±2 °C', 'unit-mismatch', /in K/],
    ['±5 V peak', 'form-mismatch'],
    ['±2 % ± 0.5 ohm', 'text-malformed', /±\(2 % \+ 0\.5 ohm\)/],
    ['2 % + 0.5 ohm', 'text-malformed', /±\(2 % \+ 0\.5 ohm\)/],
    ['±(2 % + 3 %)', 'text-malformed'],
    ['±(2 ohm + 3 ohm)', 'text-malformed'],
    ['±(2 % + 3 ohm + 1 ohm)', 'text-malformed'],
    ['±(2 %)', 'text-malformed'],
    ['±(2 % + -3 ohm)', 'negative'],
    ['±(2 % + 3 ohm', 'text-malformed'],
    ['±5 ohm or ±10 %', 'text-malformed', /whichever is greater/],
    ['±5 ohm or ±10 %, whichever is smaller', 'text-malformed', /whichever is greater/],
    ['±5 ohm, whichever is greater', 'text-malformed', /±10 % or ±5 ohm/],
    ['±5 ohm or ±3 ohm, whichever is greater', 'text-malformed'],
    ['±5 % or ±3 %, whichever is greater', 'text-malformed'],
    ['±(2 % + 1 ohm) or ±3 %, whichever is greater', 'text-malformed'],
    ['±1 % or ±2 % or ±3 ohm, whichever is greater', 'text-malformed'],
    ['±(2 % + 1 V)/+3 A', 'text-malformed'],
    ['-1 V/+3 A', 'unit-mismatch'],
    ['±5 W, not below 0 ohm', 'unit-mismatch'],
    ['±5 %, not below 1 %', 'unit-mismatch'],
    ['±5 %, not below 0 ohm, not below 1 ohm', 'text-malformed'],
    ['±20 % of reading', 'text-malformed'],
    ['x'.repeat(201), 'text-too-long'],
  ])('%j: %s', (text, code, hint) => {
    const result = safeParseTolerance(text, { path: 'tolerance.power' });
    if (result.ok) throw new Error(`was read as ${JSON.stringify(result.value)}`);
    expect(result.fault.code).toBe(code);
    expect(result.fault.path).toBe('tolerance.power');
    if (hint !== undefined) expect(result.fault.hint).toMatch(hint);
    expect(() => parseTolerance(text)).toThrow(expect.objectContaining({ code, path: 'tolerance' }));
  });

  it.each<[string, ToleranceOptions, Fault['code']]>([
    ['±5 ohm', { expect: 'current' }, 'unit-mismatch'],
    ['±5', { expect: 'current' }, 'unit-missing'],
    ['±50 V', { expect: 'voltage', form: 'peak' }, 'form-mismatch'],
  ])('%j with %j: %s', (text, options, code) => {
    expect(() => parseTolerance(text, options)).toThrow(expect.objectContaining({ code }));
  });

  it('what is not text', () => {
    expect(safeParseTolerance(20 as never)).toMatchObject({ ok: false, fault: { code: 'wrong-type' } });
  });
});

describe('formatTolerance', () => {
  it('takes a unit where the tolerance does not say its quantity', () => {
    expect(formatTolerance({ absolute: 5 }, { unit: 'ohm' })).toBe('±5 Ω');
    expect(formatTolerance({ absolute: 0.01, floor: 0 }, { unit: 'A' })).toBe('±10 mA, not below 0 A');
    expect(formatTolerance({ absolute: 0.5 }, { unit: '1' })).toBe('±0.5');
  });

  it('prints ASCII', () => {
    expect(formatTolerance({ relative: 0.02, absolute: 0.5, combine: 'sum' }, { unit: 'ohm', ascii: true })).toBe(
      '+/-(2 % + 500 mohm)',
    );
  });

  it('leaves a side without limit where a part of a sum has none', () => {
    const tolerance = { relative: { above: 0.15 }, absolute: 5, combine: 'sum', ...ohms } as const;
    expect(formatTolerance(tolerance)).toBe('+(15 % + 5 Ω)');
  });

  it('keeps a sum a sum, even with a part of zero', () => {
    const tolerance = { relative: 0.02, absolute: 0, combine: 'sum', ...ohms } as const;
    expect(formatTolerance(tolerance)).toBe('±(2 % + 0 Ω)');
    expect(parseTolerance(formatTolerance(tolerance))).toEqual(tolerance);
  });

  it.each<[string, ParsedTolerance, object, string]>([
    ['nothing', {}, {}, 'wrong-count'],
    ['no side', { relative: {} }, {}, 'wrong-count'],
    ['no common side', { relative: { above: 1 }, absolute: { below: 1 }, combine: 'sum', ...ohms }, {}, 'wrong-count'],
    ['an absolute part without unit', { absolute: 5 }, {}, 'unit-missing'],
    ['both parts without the rule', { relative: 0.1, absolute: 5, ...ohms }, {}, 'unknown-choice'],
    ['a negative part', { relative: -0.1 }, {}, 'negative'],
    ['NaN', { relative: Number.NaN }, {}, 'not-a-number'],
    ['text', { relative: '20 %' as never }, {}, 'not-a-number'],
    ['degrees', { absolute: 5 }, { unit: '°C' }, 'unknown-choice'],
  ])('refuses %s', (_what, tolerance, options, code) => {
    expect(() => formatTolerance(tolerance, options)).toThrow(expect.objectContaining({ code }));
  });
});
