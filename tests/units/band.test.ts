import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Band } from '../../src/band/index.js';
import type { Fault } from '../../src/checks/index.js';
import {
  type BandFormatOptions,
  type DisplayUnit,
  formatBand,
  type ParsedBand,
  parseBand,
  safeParseBand,
} from '../../src/units/index.js';

const current = { quantity: 'current', unit: 'A', form: 'rms' } as const;
const resistance = { quantity: 'resistance', unit: 'ohm', form: 'plain' } as const;

describe('parseBand reads', () => {
  it.each<[string, ParsedBand, string?]>([
    ['843 mA to 1133 mA', { lower: 0.843, upper: 1.133, ...current }],
    ['0.843 A to 1133 mA', { lower: 0.843, upper: 1.133, ...current }, '843 mA to 1133 mA'],
    ['843\u00a0mA  to 1133\u202fmA', { lower: 0.843, upper: 1.133, ...current }, '843 mA to 1133 mA'],
    ['≤ 150 mA', { upper: 0.15, ...current }],
    ['<=150 mA', { upper: 0.15, ...current }, '≤ 150 mA'],
    ['≥ 10 Ω', { lower: 10, ...resistance }],
    ['>= 10 ohm', { lower: 10, ...resistance }, '≥ 10 Ω'],
    ['< 2000 ohm', { upper: 2000, upperExcluded: true, ...resistance }, '< 2 kΩ'],
    ['> 5 ohm', { lower: 5, lowerExcluded: true, ...resistance }, '> 5 Ω'],
    ['10 Ω to < 20 Ω', { lower: 10, upper: 20, upperExcluded: true, ...resistance }],
    ['> 10 Ω to 20 Ω', { lower: 10, upper: 20, lowerExcluded: true, ...resistance }],
    ['0 Ω to 4 Ω', { lower: 0, upper: 4, ...resistance }],
    ['5 Ω to 5 Ω', { lower: 5, upper: 5, ...resistance }],
    ['-5 mA to 5 mA', { lower: -0.005, upper: 0.005, ...current }],
    ['1 to 2', { lower: 1, upper: 2, quantity: 'number', unit: '1', form: 'plain' }],
  ])('%s', (text, band, printed = text) => {
    const read = parseBand(text);
    expect(read).toEqual(band);
    expect(formatBand(read, read.unit)).toBe(printed);
    expect(parseBand(printed)).toEqual(band);
  });

  it('what another room takes as a band', () => {
    const band: Band = parseBand('20 °C to 26 °C', { expect: 'temperature' });
    expect(band).toMatchObject({ lower: 293.15, upper: 299.15 });
    expect(formatBand(band, '°C')).toBe('20 °C to 26 °C');
  });

  it('peak where it is asked for', () => {
    const band = parseBand('1 kV peak to 3 kV peak', { expect: 'voltage', form: 'peak' });
    expect(formatBand(band, 'V', { form: 'peak' })).toBe('1 kV peak to 3 kV peak');
  });
});

describe('parseBand refuses', () => {
  it.each<[string, Fault['code']]>([
    ['', 'text-malformed'],
    ['93 ohm', 'text-malformed'],
    ['843–1133 mA', 'text-malformed'],
    ['843 - 1133 mA', 'text-malformed'],
    ['1 A to 2 A to 3 A', 'text-malformed'],
    ['< 1 A to 2 A', 'text-malformed'],
    ['1 A to > 2 A', 'text-malformed'],
    ['843 to 1133 mA', 'unit-missing'],
    ['843 mA to 1133', 'unit-mismatch'],
    ['3 V to 5 A', 'unit-mismatch'],
    ['3 V peak to 5 V', 'form-mismatch'],
    ['5 A to 3 A', 'band-reversed'],
    ['3 A to < 3 A', 'band-empty'],
    ['> 3 A to 3 A', 'band-empty'],
    ['≤', 'number-malformed'],
    ['≤ ≤ 3 A', 'number-malformed'],
    ['=> 3 A', 'text-malformed'],
    ['1,5 A to 2 A', 'number-malformed'],
    ['x'.repeat(201), 'text-too-long'],
  ])('%j: %s', (text, code) => {
    expect(safeParseBand(text)).toMatchObject({ ok: false, fault: { code, path: 'band' } });
    expect(() => parseBand(text, { path: 'rows[2].limits' })).toThrow(
      expect.objectContaining({ code, path: 'rows[2].limits' }),
    );
  });

  it('another quantity than the expected', () => {
    expect(() => parseBand('3 V to 5 V', { expect: 'current' })).toThrow(
      expect.objectContaining({ code: 'unit-mismatch' }),
    );
  });
});

describe('formatBand', () => {
  it.each<[Band, DisplayUnit, BandFormatOptions, string]>([
    [{ lower: 0.8431, upper: 1.1339 }, 'A', { resolution: 0.001, rounding: 'inward' }, '844 mA to 1133 mA'],
    [{ lower: 0.8431, upper: 1.1339 }, 'A', { resolution: 0.001, rounding: 'nearest' }, '843 mA to 1134 mA'],
    [{ upper: 0.15 }, 'A', { ascii: true }, '<= 150 mA'],
    [{ lower: 10 }, 'ohm', { ascii: true }, '>= 10 ohm'],
    [{ lower: 0, upper: 0.5 }, 'A', {}, '0 mA to 500 mA'],
    [{ lower: 0.001, upper: 20 }, 'A', {}, '1 mA to 20 A'],
    [{ lower: 0.843, upper: 1.133 }, 'A', { prefix: 'none' }, '0.843 A to 1.133 A'],
  ])('%j', (band, unit, options, text) => {
    expect(formatBand(band, unit, options)).toBe(text);
  });

  it.each<[string, Band, BandFormatOptions, string]>([
    ['no limit', {}, {}, 'wrong-count'],
    ['reversed limits', { lower: 2, upper: 1 }, {}, 'band-reversed'],
    ['a band that rounding empties', { lower: 1.1, upper: 1.9 }, { resolution: 1, rounding: 'inward' }, 'band-empty'],
    ['an unknown direction', { upper: 1 }, { resolution: 1, rounding: 'up' as never }, 'unknown-choice'],
    ['NaN', { upper: Number.NaN }, {}, 'not-a-number'],
  ])('refuses %s', (_what, band, options, code) => {
    expect(() => formatBand(band, 'A', options)).toThrow(expect.objectContaining({ code }));
  });

  it('reads back from its text: parse(print(x)) = x', () => {
    const limit = fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => (value === 0 ? 0 : value));
    const band = fc
      .record({ a: fc.option(limit), b: fc.option(limit), lowerExcluded: fc.boolean(), upperExcluded: fc.boolean() })
      .filter(({ a, b }) => (a !== null || b !== null) && a !== b)
      .map(({ a, b, lowerExcluded, upperExcluded }) => {
        const [lower, upper] = a !== null && b !== null && a > b ? [b, a] : [a, b];
        return {
          ...(lower === null ? {} : { lower, ...(lowerExcluded ? { lowerExcluded: true as const } : {}) }),
          ...(upper === null ? {} : { upper, ...(upperExcluded ? { upperExcluded: true as const } : {}) }),
        };
      });
    fc.assert(
      fc.property(band, fc.constantFrom('A', 'V', 'ohm', 'W', '1'), fc.boolean(), (given, unit, ascii) => {
        const { quantity, unit: read, form, ...limits } = parseBand(formatBand(given, unit, { ascii }));
        expect(limits).toEqual(given);
        expect(read).toBe(unit);
      }),
      { numRuns: 3000 },
    );
  });

  it('rounded inward never widens', () => {
    const limit = fc.double({ min: 0, max: 5, noNaN: true });
    const step = fc.constantFrom(0.001, 0.002, 0.005, 0.01);
    fc.assert(
      fc.property(limit, fc.double({ min: 0.05, max: 5, noNaN: true }), step, (lower, width, resolution) => {
        const upper = lower + width;
        const read = parseBand(formatBand({ lower, upper }, 'A', { resolution, rounding: 'inward' }));
        expect(read.lower).toBeGreaterThanOrEqual(lower);
        expect(read.upper).toBeLessThanOrEqual(upper);
      }),
      { numRuns: 2000 },
    );
  });
});
