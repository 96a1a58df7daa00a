import fc from 'fast-check';
import { abs, add, type Complex, complex, divide, multiply } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { areaAtResistance, type PadReading, padImpedance, type SplitPad } from '../../src/monitor/index.js';
import { valueBetween } from '../generators.js';
import { faultOf } from './fault-of.js';

const contact = fc.record({
  resistance: valueBetween(1, 200),
  capacitance: valueBetween(1e-10, 1e-7),
  area: valueBetween(0.05, 1),
});
const pads = fc.record({ contacts: fc.tuple(contact, contact), tissue: valueBetween(0, 50) });
const frequencies = valueBetween(1e4, 1e6);
const plain: SplitPad = { contacts: [{ resistance: 20 }, { resistance: 20 }], tissue: 10 };
const reading: PadReading = { frequency: 80e3, reads: 'magnitude' };

/** The same by complex numbers of another library: 1/Z of a contact is (1/R + jωC)·a. */
function impedanceOf({ contacts, tissue }: SplitPad, frequency: number): Complex {
  const parts = contacts.map(({ resistance, capacitance = 0, area = 1 }) => {
    const admittance = multiply(complex(1 / resistance, 2 * Math.PI * frequency * capacitance), area) as Complex;
    return divide(1, admittance) as Complex;
  });
  return add(complex(tissue, 0), add(parts[0] as Complex, parts[1] as Complex)) as Complex;
}

describe('padImpedance', () => {
  it('agrees with complex arithmetic of another library', () => {
    fc.assert(
      fc.property(pads, frequencies, (pad, frequency) => {
        const expected = impedanceOf(pad, frequency);
        const found = padImpedance(pad, { frequency, reads: 'magnitude' });
        expect(Math.abs(found.resistance - expected.re)).toBeLessThanOrEqual(1e-12 * expected.re);
        expect(Math.abs(found.reactance - expected.im)).toBeLessThanOrEqual(1e-12 * Math.abs(expected.im));
        expect(Math.abs(found.seen - Number(abs(expected)))).toBeLessThanOrEqual(1e-12 * found.seen);
        expect(padImpedance(pad, { frequency, reads: 'resistance' }).seen).toBe(found.resistance);
      }),
    );
  });

  it('sees contact and tissue at a low frequency, the tissue alone at a high one', () => {
    const pad: SplitPad = {
      contacts: [
        { resistance: 40, capacitance: 1e-8 },
        { resistance: 30, capacitance: 1e-8 },
      ],
      tissue: 12,
    };
    expect(padImpedance(pad, { ...reading, frequency: 1 }).seen).toBeCloseTo(82, 6);
    expect(padImpedance(pad, { ...reading, frequency: 1e10 }).seen).toBeCloseTo(12, 3);
  });

  it('less area never lets the monitor see less', () => {
    fc.assert(
      fc.property(
        pads,
        frequencies,
        valueBetween(0.1, 0.99),
        fc.constantFrom('magnitude' as const, 'resistance' as const),
        (pad, frequency, part, reads) => {
          const [first, second] = pad.contacts;
          const less = { ...pad, contacts: [{ ...first, area: first.area * part }, second] as const };
          const seen = (one: SplitPad) => padImpedance(one, { frequency, reads }).seen;
          expect(seen(less)).toBeGreaterThan(seen(pad));
        },
      ),
    );
  });

  it.each<[string, unknown, string, string]>([
    ['one foil', { contacts: [{ resistance: 1 }], tissue: 1 }, 'wrong-count', 'contacts'],
    [
      'no contact resistance',
      { ...plain, contacts: [{ resistance: 1 }, { resistance: 0 }] },
      'not-positive',
      'contacts[1].resistance',
    ],
    [
      'no area',
      { ...plain, contacts: [{ resistance: 1, area: 0 }, { resistance: 1 }] },
      'not-positive',
      'contacts[0].area',
    ],
    [
      'an area in percent',
      { ...plain, contacts: [{ resistance: 1, area: 50 }, { resistance: 1 }] },
      'not-a-fraction',
      'contacts[0].area',
    ],
    ['a negative tissue', { ...plain, tissue: -1 }, 'negative', 'tissue'],
  ])('refuses a pad with %s', (_, pad, code, path) => {
    expect(faultOf(() => padImpedance(pad as SplitPad, reading))).toEqual([code, path]);
  });

  it('refuses a reading of nothing known', () => {
    expect(faultOf(() => padImpedance(plain, { ...reading, frequency: 0 }))).toEqual(['not-positive', 'frequency']);
    const reads = 'phase' as 'magnitude';
    expect(faultOf(() => padImpedance(plain, { ...reading, reads }))).toEqual(['unknown-choice', 'reads']);
  });
});

describe('areaAtResistance', () => {
  it('gives the area at which the monitor sees just that', () => {
    const foils = fc.constantFrom('first' as const, 'second' as const, 'both' as const);
    const kinds = fc.constantFrom('magnitude' as const, 'resistance' as const);
    fc.assert(
      fc.property(pads, frequencies, valueBetween(0.05, 0.95), foils, kinds, (pad, frequency, part, foil, reads) => {
        const [first, second] = pad.contacts;
        const off = (c: typeof first, isOff: boolean) => ({ ...c, area: isOff ? c.area * part : c.area });
        const less: SplitPad = { ...pad, contacts: [off(first, foil !== 'second'), off(second, foil !== 'first')] };
        const { seen } = padImpedance(less, { frequency, reads });
        const { remaining, lost } = areaAtResistance(pad, { frequency, reads, foil, seen });
        // A contact that is a small part of the whole leaves fewer digits of its own.
        expect(Math.abs(remaining - part)).toBeLessThanOrEqual(1e-7 * part);
        expect(remaining + lost).toBeCloseTo(1, 12);
      }),
    );
  });

  it('is above 1 where the monitor sees more already', () => {
    expect(areaAtResistance(plain, { ...reading, foil: 'both', seen: 30 }).remaining).toBeCloseTo(2, 12);
  });

  it('refuses what no area gives', () => {
    expect(faultOf(() => areaAtResistance(plain, { ...reading, foil: 'first', seen: 30 }))).toEqual([
      'out-of-range',
      'seen',
    ]);
    const foil = 'third' as 'first';
    expect(faultOf(() => areaAtResistance(plain, { ...reading, foil, seen: 90 }))).toEqual(['unknown-choice', 'foil']);
  });
});
