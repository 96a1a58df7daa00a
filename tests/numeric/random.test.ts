import { describe, expect, it } from 'vitest';
import {
  createRandom,
  fillArcsine,
  fillNormal,
  fillStudentT,
  fillUniform,
  nextGamma,
  nextNormal,
  nextUniform,
  type Random,
} from '../../src/numeric/index.js';
import { jump } from '../../src/numeric/random/jump.js';
import { nextWord } from '../../src/numeric/random/next-word.js';
import { reproducibleExp } from '../../src/numeric/random/reproducible-exp.js';
import { reproducibleLog } from '../../src/numeric/random/reproducible-log.js';
import { ziggurat } from '../../src/numeric/random/ziggurat.js';
import { sourceFiles } from '../architecture/source-files.js';
import { faultOf } from '../band/fault-of.js';
import fixture from './fixtures/seeded.json' with { type: 'json' };

/** 128 × 128 bits: column i is the state after one step from the state whose only bit is i. */
type BitMatrix = readonly bigint[];

const toBits = (state: Int32Array): bigint =>
  state.reduce((bits, word, i) => bits | (BigInt(word >>> 0) << BigInt(32 * i)), 0n);
const toState = (bits: bigint): Int32Array =>
  Int32Array.from([0, 1, 2, 3], (i) => Number(BigInt.asIntN(32, bits >> BigInt(32 * i))));

function applied(matrix: BitMatrix, bits: bigint): bigint {
  let sum = 0n;
  for (let i = 0; i < 128; i++) if ((bits >> BigInt(i)) & 1n) sum ^= matrix[i] as bigint;
  return sum;
}

const seeded = (): Random => createRandom(7);

describe('the generator', () => {
  it('jumps by 2⁶⁴ steps: the matrix of one step, squared 64 times', () => {
    let matrix: BitMatrix = Array.from({ length: 128 }, (_, i) => {
      const state = toState(1n << BigInt(i));
      nextWord(state);
      return toBits(state);
    });
    for (let k = 0; k < 64; k++) {
      const base = matrix;
      matrix = base.map((column) => applied(base, column));
    }
    const start = Int32Array.from([0x12345678, -5, 99, 0x7fffffff]);
    const jumped = start.slice();
    jump(jumped);
    expect(toBits(jumped)).toBe(applied(matrix, toBits(start)));
  });

  it('has streams that start 2⁶⁴ draws apart', () => {
    const first = createRandom(7);
    jump(first.state);
    jump(first.state);
    expect(createRandom(7, 2).state).toEqual(first.state);
    expect(createRandom(7, 2)).toMatchObject({ generator: 'xoshiro128++', seed: 7, stream: 2 });
  });

  it('starts from every seed, 0 and the greatest too, in another state', () => {
    const states = [0, 1, 2, 2 ** 32, Number.MAX_SAFE_INTEGER].map((seed) => createRandom(seed).state.join());
    expect(new Set(states).size).toBe(5);
    expect(states).not.toContain('0,0,0,0');
  });

  it.each([
    [-1, 0, 'out-of-range', 'seed'],
    [0.5, 0, 'not-an-integer', 'seed'],
    [Number.NaN, 0, 'not-a-number', 'seed'],
    [2 ** 53, 0, 'out-of-range', 'seed'],
    [1, -1, 'out-of-range', 'stream'],
    [1, 10_000, 'out-of-range', 'stream'],
  ])('refuses seed %s with stream %s', (seed, stream, code, path) => {
    expect(faultOf(() => createRandom(seed, stream))).toMatchObject({ code, path });
  });
});

describe('the numbers of a seed', () => {
  const seed7 = (count: number, fill: (random: Random, target: Float64Array) => void): Float64Array => {
    const values = new Float64Array(count);
    fill(createRandom(fixture.seed), values);
    return values;
  };

  it('are those of the same arithmetic in another language, to the last bit', () => {
    const { state } = createRandom(fixture.seed);
    expect(fixture.words.map(() => nextWord(state) >>> 0)).toEqual(fixture.words);
    expect([...seed7(fixture.uniform.length, fillUniform)]).toEqual(fixture.uniform);
    expect([...seed7(fixture.normal.length, fillNormal)]).toEqual(fixture.normal);
    expect(hashOf(seed7(50_000, fillUniform))).toBe(fixture.uniformHash);
    expect(hashOf(seed7(fixture.normalCount, fillNormal))).toBe(fixture.normalHash);
  });

  it('of the other distributions are too', () => {
    expect(hashOf(seed7(50_000, fillArcsine))).toBe(fixture.arcsineHash);
    expect(hashOf(seed7(50_000, (random, target) => fillStudentT(random, target, 3.3)))).toBe(fixture.studentHash);
    const gammas = seed7(50_000, (random, target) => {
      for (let i = 0; i < target.length; i++) target[i] = nextGamma(random, 0.4);
    });
    expect(hashOf(gammas)).toBe(fixture.gammaHash);
  });

  it('include some from the tail and the wedges', () => {
    const values = seed7(fixture.normalCount, fillNormal);
    expect(fixture.beyondTailStart).toBeGreaterThan(20);
    expect(values.filter((z) => Math.abs(z) > 3.6541528853610088).length).toBe(fixture.beyondTailStart);
  });
});

/** FNV-1a, 32 bits, of the bytes of the doubles, low byte first. */
function hashOf(values: Float64Array): number {
  const view = new DataView(new ArrayBuffer(8));
  let hash = 0x811c9dc5;
  for (const value of values) {
    view.setFloat64(0, value, true);
    for (let i = 0; i < 8; i++) hash = Math.imul(hash ^ view.getUint8(i), 0x01000193);
  }
  return hash >>> 0;
}

describe('draws', () => {
  it('filled and one by one are the same', () => {
    const many = new Float64Array(100_000);
    fillNormal(seeded(), many);
    const one = seeded();
    expect(many.every((value) => value === nextNormal(one))).toBe(true);
    fillUniform(seeded(), many);
    const other = seeded();
    expect(many.every((value) => value === nextUniform(other))).toBe(true);
  });

  it('go on where the last filling ended', () => {
    const whole = new Float64Array(1000);
    fillNormal(seeded(), whole);
    const parts = new Float64Array(1000);
    const random = seeded();
    fillNormal(random, parts.subarray(0, 317));
    fillNormal(random, parts.subarray(317));
    expect(parts).toEqual(whole);
  });

  it('are scaled by a mean and a standard deviation', () => {
    const plain = new Float64Array(1000);
    const scaled = new Float64Array(1000);
    fillNormal(seeded(), plain);
    fillNormal(seeded(), scaled, 500, 2);
    expect(scaled).toEqual(plain.map((z) => 500 + 2 * z));
  });

  it('of the uniform distribution are never 0 or 1', () => {
    // The words that would give the ends: all bits 0 and all bits 1.
    const zero = { ...seeded(), state: Int32Array.from([0, 0, 0, 0]) };
    expect(nextUniform(zero)).toBe(2 ** -53);
    const values = new Float64Array(1_000_000);
    fillUniform(seeded(), values);
    expect(values.every((u) => u > 0 && u < 1)).toBe(true);
    expect((0x3ffffff * 0x4000000 + 0x3ffffff + 0.5) * 2.220446049250313e-16).toBe(1 - 2 ** -53);
  });

  it('of the arcsine distribution stay inside the half width', () => {
    const values = new Float64Array(100_000);
    fillArcsine(seeded(), values, 3, 0.5);
    expect(values.every((x) => Math.abs(x - 3) <= 0.5)).toBe(true);
  });

  it("of Student's t with infinite degrees of freedom are the normal ones", () => {
    const a = new Float64Array(100);
    const b = new Float64Array(100);
    fillStudentT(seeded(), a, Number.POSITIVE_INFINITY, 1, 2);
    fillNormal(seeded(), b, 1, 2);
    expect(a).toEqual(b);
    expect(faultOf(() => fillStudentT(seeded(), a, 0))).toMatchObject({ code: 'not-positive' });
    expect(faultOf(() => fillStudentT(seeded(), a, 0.1))).toMatchObject({ code: 'out-of-range' });
    expect(faultOf(() => fillStudentT(seeded(), a, Number.NaN))).toMatchObject({ code: 'not-a-number' });
  });
});

describe('the seeded path', () => {
  it('calls no function of Math that an engine may round as it likes', () => {
    const allowed = new Set(['abs', 'floor', 'sqrt', 'imul', 'LN2', 'SQRT2', 'SQRT1_2']);
    const files = sourceFiles().filter(({ path }) => path.startsWith('numeric/random/'));
    expect(files.length).toBeGreaterThan(10);
    const faults = files.flatMap(({ path, tree }) => {
      const code = tree.text.replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
      const names = [...code.matchAll(/\bMath\.(\w+)/g)].map((match) => match[1] as string);
      return [...names.filter((name) => !allowed.has(name)), ...(code.match(/\*\*/g) ?? [])].map(
        (use) => `${path}: ${use}`,
      );
    });
    expect(faults).toEqual([]);
    // Nothing is imported from outside the folder but checks of the input.
    const outside = files
      .flatMap((file) => file.imports.map(({ specifier }) => specifier))
      .filter((s) => s.startsWith('../'));
    expect(new Set(outside)).toEqual(new Set(['../../checks/index.js', '../require-degrees-of-freedom.js']));
  });

  it('has an exponential and a logarithm of its own, good to the last digits', () => {
    for (let i = -2000; i <= 2000; i++) {
      const x = i * 0.3517;
      expect(Math.abs(reproducibleExp(x) / Math.exp(x) - 1)).toBeLessThan(5e-16);
      const y = Math.exp(x * 0.99);
      expect(Math.abs(reproducibleLog(y) - Math.log(y))).toBeLessThanOrEqual(
        4e-16 * Math.max(1, Math.abs(Math.log(y))),
      );
    }
    expect(reproducibleLog(1)).toBe(0);
    expect(reproducibleExp(0)).toBe(1);
    expect(reproducibleExp(-800)).toBe(0);
  });

  it('has layers of equal area that close at the top', () => {
    const { scales, cores, heights } = ziggurat();
    for (let i = 1; i < 256; i++) {
      const area = (scales[i] as number) * 2 ** 52 * ((heights[i + 1] as number) - (heights[i] as number));
      expect(area / 0.004928673233974655).toBeCloseTo(1, 11);
      expect(cores[i] as number).toBeLessThan((scales[i] as number) * 2 ** 52);
    }
    expect([cores[255], heights[256]]).toEqual([0, 1]);
  });
});
