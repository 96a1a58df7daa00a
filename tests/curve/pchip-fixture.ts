import { readFileSync } from 'node:fs';
import type { CurvePoint, Interpolation } from '../../src/curve/index.js';

/** A case of fixtures/pchip.json, written by the script beside it. */
export interface PchipCase {
  readonly title: string;
  readonly interpolation: Interpolation;
  readonly points: readonly CurvePoint[];
  readonly slopes: readonly number[];
  readonly loads: readonly number[];
  /** By SciPy, in double arithmetic. */
  readonly scipy: readonly number[];
  /** The same rule in 40-digit arithmetic. */
  readonly exact: readonly number[];
}

export interface PchipFixture {
  readonly header: Readonly<Record<string, string>>;
  readonly cases: readonly PchipCase[];
}

export const pchipFixture = JSON.parse(
  readFileSync(new URL('./fixtures/pchip.json', import.meta.url), 'utf8'),
) as PchipFixture;
