/**
 * The accuracy of an instrument as its maker states it: the parts are added up to one limit.
 * Fractions are of 1, not percent; absolute parts are in the unit of the quantity that is read.
 */
export interface AccuracyStatement {
  /** Part of the reading. */
  readonly ofReading?: number;
  /** Part of the range in use. */
  readonly ofRange?: number;
  /** A fixed part, in the unit of the quantity. */
  readonly floor?: number;
  /** Steps of the last digit. */
  readonly counts?: number;
  /**
   * What the sum means: `limits` that are never exceeded (taken as rectangular; the default), or an expanded
   * uncertainty with its coverage factor or level of confidence.
   */
  readonly coverage?: 'limits' | { readonly factor: number } | { readonly level: number };
  /** Parts of the reading to add in bands of frequency, in hertz; the last that applies counts. */
  readonly frequency?: readonly FrequencyAddition[];
  /** Parts of the reading to add above a crest factor; the highest that applies counts. */
  readonly crestFactor?: readonly CrestFactorAddition[];
  /** Drift since the calibration, as limits: part of the reading. */
  readonly drift?: number;
}

/** Part of the reading to add between two frequencies. */
export interface FrequencyAddition {
  readonly from: number;
  readonly to: number;
  readonly ofReading: number;
}

/** Part of the reading to add above a crest factor. */
export interface CrestFactorAddition {
  readonly above: number;
  readonly ofReading: number;
}

/** Conditions of a reading. */
export interface ReadingConditions {
  /** What the instrument shows, in the unit of the quantity, 0 or more. */
  readonly reading: number;
  /** Range in use: its largest value and one step of its last digit. */
  readonly range: { readonly maximum: number; readonly resolution: number };
  /** Carrier frequency, in hertz, where it is known. */
  readonly frequency?: number;
  /** Crest factor of the waveform, where it is known. */
  readonly crestFactor?: number;
}
