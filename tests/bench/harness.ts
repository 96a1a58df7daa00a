import type { BenchCase, BenchRow, ComparisonCase, Contender, MeasuredCase } from './bench-case.js';

const repeats = 15;
const warmUps = 4;

/** Runs one case: values first, then the times. */
export function runCase(benchCase: BenchCase): Promise<BenchRow[]> {
  return 'measure' in benchCase ? runMeasured(benchCase) : runComparison(benchCase);
}

/** The tools take turns, so that whatever else the machine does falls on both. */
async function runComparison(benchCase: ComparisonCase): Promise<BenchRow[]> {
  const missing = benchCase.missing?.();
  if (missing !== undefined) {
    console.error(`NOT RUN: ${benchCase.name}: ${missing}`);
    return [];
  }
  const contenders = await benchCase.contenders();
  await requireEqualValues(benchCase, contenders);
  const times: [number[], number[]] = [[], []];
  const sums: [number?, number?] = [];
  const rounds = benchCase.rounds ?? repeats;
  for (let round = -Math.min(warmUps, rounds); round < rounds; round++) {
    // Neither tool is always the one that runs on a warm or a cold cache.
    for (const i of round % 2 === 0 ? ([0, 1] as const) : ([1, 0] as const)) {
      if (benchCase.warmEach) await timed(contenders[i]);
      const { seconds, sum } = await timed(contenders[i]);
      sums[i] ??= sum;
      if (sum !== sums[i]) throw new Error(`${benchCase.name}: ${contenders[i].tool} gives another sum when repeated`);
      if (round >= 0) times[i].push(seconds);
    }
  }
  for (const contender of contenders) contender.end?.();
  const [ours, theirs] = times;
  const ratio = median(ours.map((seconds, round) => seconds / (theirs[round] as number)));
  const rows = contenders.map((contender, i) => ({
    case: benchCase.name,
    tool: contender.tool,
    version: contender.version,
    n: benchCase.n,
    unit: 's' as const,
    ...spread(times[i as 0 | 1]),
  }));
  return [{ ...(rows[0] as BenchRow), ratio, goal: benchCase.goal, met: ratio <= benchCase.goal }, rows[1] as BenchRow];
}

async function timed(contender: Contender): Promise<{ seconds: number; sum: number }> {
  if (contender.timedRun) return contender.timedRun();
  if (!contender.run) throw new Error(`${contender.tool} cannot be run`);
  const start = process.hrtime.bigint();
  const sum = contender.run();
  return { seconds: Number(process.hrtime.bigint() - start) / 1e9, sum };
}

async function requireEqualValues(benchCase: ComparisonCase, [ours, theirs]: readonly [Contender, Contender]) {
  const tolerance = benchCase.tolerance ?? 1e-12;
  const a = await ours.values();
  const b = await theirs.values();
  if (a.length === 0 || a.length !== b.length) {
    throw new Error(`${benchCase.name}: ${a.length} values of ${ours.tool}, ${b.length} of ${theirs.tool}`);
  }
  for (let i = 0; i < a.length; i++) {
    const x = a[i] as number;
    const y = b[i] as number;
    if (!(Math.abs(x - y) <= tolerance * Math.abs(y))) {
      throw new Error(`${benchCase.name}: value ${i} is ${x} by ${ours.tool} and ${y} by ${theirs.tool}`);
    }
  }
}

async function runMeasured(benchCase: MeasuredCase): Promise<BenchRow[]> {
  const measurements = await benchCase.measure();
  return measurements.map(({ what, unit, samples, goal }) => ({
    case: `${benchCase.name}: ${what}`,
    tool: 'esu-limits',
    version: process.env['ESU_LIMITS_VERSION'] ?? '',
    n: benchCase.n,
    unit,
    ...spread(samples),
    ...(goal === undefined ? {} : { goal, met: median(samples) <= goal }),
  }));
}

function spread(samples: readonly number[]): { min: number; median: number; max: number } {
  return { min: Math.min(...samples), median: median(samples), max: Math.max(...samples) };
}

/** Middle value of an odd number of samples. */
export function median(samples: readonly number[]): number {
  const sorted = [...samples].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] as number;
}
