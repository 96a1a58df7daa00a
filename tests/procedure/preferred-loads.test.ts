import { describe, expect, it } from 'vitest';
import { nearestPreferredLoad, preferredLoads, preferredValues } from '../../src/procedure/index.js';

describe('preferred loads', () => {
  it('E3, E6 and E12 are every eighth, fourth and second value of E24', () => {
    expect(preferredValues('E3')).toEqual([10, 22, 47]);
    expect(preferredValues('E6')).toEqual([10, 15, 22, 33, 47, 68]);
  });

  it('E48 is every second of E96, and E96 every second of E192', () => {
    const every = (series: 'E96' | 'E192') => preferredValues(series).filter((_, i) => i % 2 === 0);
    expect(every('E96')).toEqual(preferredValues('E48'));
    expect(every('E192')).toEqual(preferredValues('E96'));
  });

  it('gives decimal values exactly, across decades', () => {
    expect(preferredLoads('E6', 1, 10)).toEqual([1, 1.5, 2.2, 3.3, 4.7, 6.8, 10]);
    expect(preferredLoads('E96', 976, 1020)).toEqual([976, 1000, 1020]);
    expect(preferredLoads('E12', 101, 119)).toEqual([]);
  });

  it('finds the nearest by ratio', () => {
    expect(nearestPreferredLoad(500, 'E24')).toBe(510);
    expect(nearestPreferredLoad(980, 'E12')).toBe(1000);
    expect(nearestPreferredLoad(0.047, 'E24')).toBe(0.047);
  });

  it.each([
    [() => preferredLoads('E12', -1, 10), 'not-positive'],
    [() => preferredLoads('E12', 20, 10), 'band-reversed'],
    [() => preferredLoads('E12', 1e-20, 10), 'out-of-range'],
    [() => preferredValues('E7' as 'E6'), 'unknown-choice'],
  ])('%s', (work, code) => {
    expect(work).toThrow(expect.objectContaining({ code }));
  });
});
