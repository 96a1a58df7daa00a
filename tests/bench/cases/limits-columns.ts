import { deriveLimitsColumns } from 'esu-limits/band';
import type { BenchCase } from '../bench-case.js';
import { logUniform, sumOf, versionOf } from '../inputs.js';

const n = 1_000_000;
const power = logUniform(n, 1, 400, 1);
const load = logUniform(n, 10, 5000, 2);
const relative = 0.2;

interface Columns {
  readonly expected: Float64Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
}

const newColumns = (): Columns => ({
  expected: new Float64Array(n),
  lower: new Float64Array(n),
  upper: new Float64Array(n),
});

/** The loop that one writes for this one job; it checks nothing. */
function limitsByHand(out: Columns): Columns {
  const { expected, lower, upper } = out;
  for (let i = 0; i < n; i++) {
    const p = power[i]!;
    const r = load[i]!;
    expected[i] = Math.sqrt(p / r);
    lower[i] = Math.sqrt((p * (1 - relative)) / r);
    upper[i] = Math.sqrt((p * (1 + relative)) / r);
  }
  return out;
}

const limitsByLibrary = (out: Columns): Columns =>
  deriveLimitsColumns({ power, load, tolerance: { relative } }, out) as Columns;

const flat = ({ expected, lower, upper }: Columns): number[] => [...expected, ...lower, ...upper];
const total = ({ expected, lower, upper }: Columns): number => sumOf(expected) + sumOf(lower) + sumOf(upper);

export const benchCase: BenchCase = {
  name: 'limits of current from power, load and tolerance, in columns',
  n,
  goal: 1.25,
  contenders: () => {
    const ours = newColumns();
    const theirs = newColumns();
    return [
      {
        tool: 'esu-limits',
        version: versionOf('esu-limits'),
        values: () => flat(limitsByLibrary(newColumns())),
        run: () => total(limitsByLibrary(ours)),
      },
      {
        tool: 'loop by hand, unchecked',
        version: '',
        values: () => flat(limitsByHand(newColumns())),
        run: () => total(limitsByHand(theirs)),
      },
    ];
  },
};
