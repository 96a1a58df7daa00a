import { bandAround, convertBand } from 'esu-limits/band';
import { divide, multiply, sqrt, type Unit, unit } from 'mathjs';
import type { BenchCase } from '../bench-case.js';
import { logUniform, versionOf } from '../inputs.js';

const n = 20_000;
const powers = logUniform(n, 1, 400, 1);
const loads = logUniform(n, 10, 5000, 2);
const relative = 0.2;
const tolerance = { relative };

/** Lower and upper limit of the current of each point, one point a call, into two columns. */
function byLibrary(lower: Float64Array, upper: Float64Array): void {
  for (let i = 0; i < n; i++) {
    const band = convertBand(bandAround(powers[i]!, tolerance), { from: 'power', to: 'current', load: loads[i]! });
    lower[i] = band.lower!;
    upper[i] = band.upper!;
  }
}

function byPeer(lower: Float64Array, upper: Float64Array): void {
  for (let i = 0; i < n; i++) {
    const power = unit(powers[i]!, 'W');
    const load = unit(loads[i]!, 'ohm');
    lower[i] = currentOf(power, 1 - relative, load);
    upper[i] = currentOf(power, 1 + relative, load);
  }
}

function currentOf(power: Unit, factor: number, load: Unit): number {
  const quotient = divide(multiply(power, factor) as Unit, load) as Unit;
  return (sqrt(quotient) as unknown as Unit).toNumber('A');
}

function contender(tool: string, version: string, fill: (lower: Float64Array, upper: Float64Array) => void) {
  const lower = new Float64Array(n);
  const upper = new Float64Array(n);
  return {
    tool,
    version,
    values: () => {
      fill(lower, upper);
      return [...lower, ...upper];
    },
    run: () => {
      fill(lower, upper);
      let sum = 0;
      for (let i = 0; i < n; i++) sum += lower[i]! + upper[i]!;
      return sum;
    },
  };
}

export const benchCase: BenchCase = {
  name: 'limits of current of one point a call',
  n,
  goal: 1 / 200,
  contenders: () => [
    contender('esu-limits', versionOf('esu-limits'), byLibrary),
    contender('mathjs units', versionOf('mathjs'), byPeer),
  ],
};
