/** What is known of a channel at its crossings; changes and noise in units of the burst threshold. */
export interface CrossingsKnown {
  /** In seconds. */
  readonly sampleInterval: number;
  /** Radians of the carrier for one sample; 0 without a carrier. */
  readonly omega: number;
  /** Change from sample to sample of a sine of this carrier and peak where it is steepest. */
  readonly sine: number;
  /** Rms value of noise and steps. */
  readonly noise: number;
  /** Whether the changes were measured. */
  readonly measured: boolean;
}

/** The errors of a crossing from the change from sample to sample that is seen there. */
export interface CrossingErrors {
  /**
   * Slope for one sample. Of two samples with noise between which a threshold lies, the change is steeper than the
   * course: on the mean by 2σ²/slope. Where hardly more than noise is seen, the slope is that of a sine at most.
   */
  readonly slopeOf: (change: number) => number;
  /** Standard uncertainty of a crossing from noise, in seconds; without a slope the course jumps from level to level. */
  readonly moved: (slope: number) => number;
  /**
   * Half of where a crossing may lie, in seconds. Below a step it is by how much a straight line misses a sine, damped or
   * not. Where the change is no steeper than the carrier there may be a corner between two samples: the line across a
   * corner to the slope s, in units of the step, is off by (1 − 1/√s)² of an interval at most. Where it is steeper the
   * course may jump.
   */
  readonly within: (change: number, step: number) => number;
}

/** Gives the errors of the crossings of a channel. */
export function crossingErrors({ sampleInterval, omega, sine, noise, measured }: CrossingsKnown): CrossingErrors {
  return {
    slopeOf: (change) => {
      const square = change * change;
      const slope = (change + Math.sqrt(Math.max(square - 8 * noise * noise, 0))) / 2;
      return square < 16 * noise * noise && omega > 0 ? Math.min(slope, sine) : slope;
    },
    moved: (slope) => (slope > 0 ? (noise / slope) * sampleInterval : 0),
    within: (change, step) => {
      if (!measured || omega === 0) return sampleInterval / 2;
      if (change < step) return (sampleInterval * omega) / 24;
      const corner = Math.max((1 - Math.sqrt(step / sine)) ** 2, 1 / 8);
      return sampleInterval * (change < 1.25 * sine ? corner : 0.5);
    },
  };
}
