import { numbersFile } from './conversation.js';
import { logUniform, uniform } from './inputs.js';

export const n = 100_000;

/** Currents and loads with their uncertainties and degrees of freedom: all drawn, so that nothing can be folded away. */
export const I = logUniform(n, 0.01, 3, 1);
export const uI = I.map((x, i) => x * (0.002 + (0.02 * (i % 97)) / 97));
export const nuI = uniform(n, 2).map((x) => 3 + 40 * x);
export const R = logUniform(n, 20, 5000, 3);
export const uR = R.map((x, i) => x * (0.001 + (0.01 * (i % 89)) / 89));
export const nuR = uniform(n, 4).map((x) => 5 + 100 * x);

/** The same in files for a peer. */
export function powerFiles(): string[] {
  return Object.entries({ I, uI, nuI, R, uR, nuR }).map(([name, values]) => numbersFile(`power-${name}`, values));
}
