import { bandAround, convertBand } from 'esu-limits/band';
import { divide, multiply, sqrt, type Unit, unit } from 'mathjs';
import type { BenchCase } from '../bench-case.js';
import { logUniform, versionOf } from '../inputs.js';

const n = 20_000;
const powers = logUniform(n, 1, 400, 1);
const loads = logUniform(n, 10, 5000, 2);
const relative = 0.2;
const tolerance = { relative };

/** Lower and upper limit of the current, one point a call. */
function byLibrary(power: number, load: number): [number, number] {
  const { lower, upper } = convertBand(bandAround(power, tolerance), { from: 'power', to: 'current', load });
  return [lower!, upper!];
}

function byPeer(power: number, load: number): [number, number] {
  const p = unit(power, 'W');
  const r = unit(load, 'ohm');
  const current = (factor: number): number =>
    (sqrt(divide(multiply(p, factor), r) as Unit) as unknown as Unit).toNumber('A');
  return [current(1 - relative), current(1 + relative)];
}

function sumBy(limits: (power: number, load: number) => [number, number]): number {
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const [lower, upper] = limits(powers[i]!, loads[i]!);
    sum += lower + upper;
  }
  return sum;
}

export const benchCase: BenchCase = {
  name: 'limits of current of one point a call',
  n,
  goal: 1 / 200,
  contenders: () => [
    {
      tool: 'esu-limits',
      version: versionOf('esu-limits'),
      values: () => Array.from(powers).flatMap((power, i) => byLibrary(power, loads[i]!)),
      run: () => sumBy(byLibrary),
    },
    {
      tool: 'mathjs units',
      version: versionOf('mathjs'),
      values: () => Array.from(powers).flatMap((power, i) => byPeer(power, loads[i]!)),
      run: () => sumBy(byPeer),
    },
  ],
};
