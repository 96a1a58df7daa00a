import { describe, expect, it } from 'vitest';
import { capability } from '../../src/decision/index.js';

describe('capability', () => {
  it('of two limits has both indices', () => {
    expect(capability({ lower: 7, upper: 25 }, 13, 2)).toEqual({ cpk: 1, cp: 1.5, lower: 1, upper: 2 });
  });

  it('of one limit has no C_p', () => {
    expect(capability({ upper: 25 }, 13, 2)).toEqual({ cpk: 2, upper: 2 });
    expect(capability({ lower: 7 }, 13, 2)).toEqual({ cpk: 1, lower: 1 });
  });

  it('is negative with the mean outside', () => {
    expect(capability({ upper: 10 }, 13, 1).cpk).toBe(-1);
  });

  it.each<readonly [string, () => unknown]>([
    ['no-limits', () => capability({}, 1, 1)],
    ['not-positive', () => capability({ upper: 1 }, 1, 0)],
    ['not-positive', () => capability({ upper: 1 }, 1, -1)],
    ['not-a-number', () => capability({ upper: 1 }, Number.NaN, 1)],
    ['band-reversed', () => capability({ lower: 2, upper: 1 }, 1, 1)],
    ['result-out-of-range', () => capability({ upper: 1e300 }, 0, 1e-300)],
  ])('is refused with %s', (code, work) => {
    expect(work).toThrow(expect.objectContaining({ code }));
  });
});
