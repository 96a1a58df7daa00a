import type { Band } from '../band/index.js';
import type { Quantity } from '../circuit/index.js';
import type { BenchLoad } from './bench.js';
import type { RawEffect } from './bench-effect.js';
import type { BenchEffect } from './plan.js';

/** Whether an effect of strays is corrected for: not where it is small beside the distance to the nearer limit. */
export function judgeEffect(
  { ratios, impedance, phase }: RawEffect,
  reads: Quantity,
  nominal: number,
  limits: Band,
  negligible: number,
): BenchEffect {
  const relative = ratios[reads] - 1;
  const sides = [limits.lower, limits.upper].filter((limit) => limit !== undefined);
  const room = Math.min(...sides.map((limit) => Math.abs(limit - nominal)));
  const applied = Math.abs(relative) * nominal > negligible * room;
  const change = percent(relative);
  const degrees = `${((phase * 180) / Math.PI).toFixed(1).replace('-', '\u2212')}\u00b0`;
  const what = `Strays of load and leads change the ${reads} that is read by ${change}; the generator sees ${impedance.toPrecision(4)} ohm at ${degrees}.`;
  const done = applied
    ? 'Expected value and limits are corrected for it.'
    : sides.length === 0
      ? 'Without limits to compare it with, nothing is corrected.'
      : `That is less than ${percent(negligible).replace('+', '')} of the distance to the nearer limit: not corrected; a budget takes it in.`;
  return { ratios, impedance, phase, applied, statement: `${what} ${done}` };
}

/** What an effect that is not corrected for adds to the budget of a reading; a load that states its strays covers it. */
export function uncorrectedEffect(
  load: BenchLoad,
  reads: Quantity,
  effect: BenchEffect | undefined,
): { readonly effect?: number } {
  if (effect === undefined || effect.applied || load.strays !== undefined) return {};
  return { effect: Math.min(1, Math.abs(effect.ratios[reads] - 1)) };
}

function percent(fraction: number): string {
  if (Math.abs(fraction) < 1e-4) return 'less than 0.01 %';
  const text = `${Number((Math.abs(fraction) * 100).toPrecision(2))} %`;
  return `${fraction < 0 ? '\u2212' : '+'}${text}`;
}
