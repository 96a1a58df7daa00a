import { describe, expect, it } from 'vitest';
import { deviationText, percentText } from '../../src/procedure/percent-text.js';

describe('a fraction as text', () => {
  it.each([
    [0.07, '7 %'],
    [0.2, '20 %'],
    [-0.2, '\u221220 %'],
    [0.123456789, '12.3457 %'],
    [0, '0 %'],
  ])('%d is %s', (fraction, text) => {
    expect(percentText(fraction)).toBe(text);
  });

  it('has as many digits as asked for', () => {
    expect(percentText(0.0234567, 2)).toBe('2.3 %');
  });

  it.each([
    [0.0531, '+5.3 %'],
    [-0.226, '\u221222.6 %'],
    [0.0004, '0.0 %'],
    [-0.0004, '0.0 %'],
  ])('as a deviation %d is %s', (fraction, text) => {
    expect(deviationText(fraction)).toBe(text);
  });
});
