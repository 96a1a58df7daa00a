import type { CurvePoint } from '../../curve/index.js';
import type { Phase } from '../../procedure/index.js';
import type { ShownVerdict } from '../sheet/shown-verdict.js';

/** What a picture of a load curve shows: powers in watts against loads in ohms. */
export interface CurvePicture {
  /** Output and setting, such as `Cut, 120 W`. */
  readonly title: string;
  /** The picture in sentences, for those who cannot see it. */
  readonly description: string;
  /** The line, close enough for straight pieces. */
  readonly line: readonly CurvePoint[];
  /** Points that the maker publishes; none where the line is a model. */
  readonly published: readonly CurvePoint[];
  /** Tolerance around the line; where it does not apply there is no entry. */
  readonly band: readonly BandPoint[];
  /** What the band is, such as `tolerance ±20 % of power`. */
  readonly bandName?: string;
  /** Limits at the points of the plan. */
  readonly limits: readonly BandPoint[];
  readonly readings: readonly PictureReading[];
}

/** Lowest and highest power at a load; an absent side is unlimited. */
export interface BandPoint {
  readonly load: number;
  readonly lower?: number;
  readonly upper?: number;
  /** True where the band does not go on from the entry before. */
  readonly starts?: boolean;
}

/** A reading as the power that it implies. */
export interface PictureReading {
  /** Number of the point in the plan. */
  readonly number: number;
  readonly load: number;
  readonly power: number;
  readonly verdict: ShownVerdict;
  readonly phase: Phase;
}
