import { describe, expect, it } from 'vitest';
import { nearName } from '../../src/checks/index.js';
import { lineCounter } from '../../src/schema/line-counter.js';
import { pathText } from '../../src/schema/path-text.js';

describe('the near name', () => {
  const known = ['below', 'above', 'ratedPower', 'ratedLoad', 'crestFactor'];
  it.each([
    ['abvoe', 'above'],
    ['Above', 'above'],
    ['rated power', 'ratedPower'],
    ['rated_load', 'ratedLoad'],
    ['ratedLoads', 'ratedLoad'],
    ['crestfaktor', 'crestFactor'],
    ['bellow', 'below'],
    ['weather', undefined],
    ['x', undefined],
    ['', undefined],
    ['x'.repeat(100_000), undefined],
  ])('of %s is %s', (name, near) => {
    expect(nearName(name, known)).toBe(near);
  });
});

describe('a path as text', () => {
  it.each([
    [[], ''],
    [['outputs', 0, 'curves', 1, 'points', 3, 'power'], 'outputs[0].curves[1].points[3].power'],
    [[2, 'a'], '[2].a'],
    [['a b', 'c'], '["a b"].c'],
    [['parameters', ''], 'parameters[""]'],
    [['parameters', 'a"\n'], 'parameters["a\\"\\n"]'],
    [['__proto__', 'x'], '__proto__.x'],
  ])('%j is %s', (path, text) => {
    expect(pathText(path)).toBe(text);
  });
});

it('lines end with a line feed, a carriage return, or both', () => {
  const { placeAt } = lineCounter('a\nb\r\nc\rd');
  expect([0, 2, 5, 7].map(placeAt)).toEqual([
    'line 1, column 1',
    'line 2, column 1',
    'line 3, column 1',
    'line 4, column 1',
  ]);
});
