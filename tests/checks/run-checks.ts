import type { Check } from './check.js';

/** A check with what came out. */
export interface CheckRow {
  readonly id: string;
  readonly room: string;
  readonly title: string;
  readonly source: string;
  readonly standing: Check['standing'];
  readonly published: number;
  readonly computed: number;
  readonly difference: number;
  readonly tolerance: number;
  readonly unit: string;
  readonly held: boolean;
}

/** Computes a check and compares it. */
export function runCheck({ id, room, title, source, standing, published, tolerance, unit, compute }: Check): CheckRow {
  const computed = compute();
  const difference = computed - published;
  const held = Math.abs(difference) <= tolerance;
  return { id, room, title, source, standing, published, computed, difference, tolerance, unit, held };
}
