/**
 * Checks the samplers on 5·10⁷ normal and uniform draws, and 5·10⁶ of the others.
 *
 * Run: npx tsx tests/numeric/sampler-quality.ts > tests/numeric/sampler-quality.txt
 *
 * The output depends on nothing but the seed; a change of it is a change of the seeded numbers.
 */
import { samplerReport } from './sampler-report.js';

const draws = 50_000_000;
const seed = 101;

const lines = samplerReport(draws, seed).map(({ sampler, statistic, draws: n, observed, expected, probability }) =>
  [
    sampler.padEnd(36),
    statistic.padEnd(38),
    String(n).padStart(9),
    observed.toPrecision(8).padStart(16),
    expected.toPrecision(8).padStart(16),
    probability.toFixed(5).padStart(9),
  ].join(' '),
);
process.stdout.write(
  [
    `Samplers on xoshiro128++, seed ${seed}, streams 0 to 8. The last column is the probability of being as far from the`,
    'expected value by chance: in some 40 rows, one below 0.02 is usual, one below 0.0001 is a fault.',
    '',
    `${'sampler'.padEnd(36)} ${'statistic'.padEnd(38)} ${'draws'.padStart(9)} ${'observed'.padStart(16)} ${'expected'.padStart(16)} ${'chance'.padStart(9)}`,
    ...lines,
    '',
  ].join('\n'),
);
