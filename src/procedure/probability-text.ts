import type { Conformance } from '../decision/index.js';

/** Probability of conforming in percent, never rounded to certainty: `91 %`, `99.7 %`, `above 99.99 %`, `below 0.01 %`. */
export function probabilityText({ conforming, nonconforming }: Conformance): string {
  if (nonconforming === 0) return '100 %';
  if (conforming === 0) return '0 %';
  if (nonconforming < 1e-4) return 'above 99.99 %';
  if (conforming < 1e-4) return 'below 0.01 %';
  // Two figures of the smaller part, so that 99.7 % is not called 100 %.
  const smaller = Math.min(conforming, nonconforming);
  const decimals = Math.max(0, 1 - Math.floor(Math.log10(smaller * 100)));
  return `${(conforming * 100).toFixed(Math.min(decimals, 3))} %`;
}
