/** One harmonic of a periodic waveform: peak·sin(2π·order·fundamental·t + phase). */
export interface Harmonic {
  /** Multiple of the fundamental, a whole number from 1. */
  readonly order: number;
  /** Peak value, in volts or amperes, 0 or more. */
  readonly peak: number;
  /** Phase of the sine at time 0, in radians; 0 unless stated. */
  readonly phase?: number;
}

/** A periodic waveform as the sum of its harmonics. */
export interface Spectrum {
  /** Rate at which the waveform repeats, in hertz. */
  readonly fundamental: number;
  /** Mean value, in volts or amperes; 0 unless stated. */
  readonly mean?: number;
  /** Harmonics, each order once. */
  readonly harmonics: readonly Harmonic[];
  /** Rms value of the whole waveform, with all that lies beyond the listed harmonics; that of the list unless stated. */
  readonly rms?: number;
}

/** Mean square of the mean value and the listed harmonics. */
export function meanSquareOf({ mean = 0, harmonics }: Spectrum): number {
  let square = mean * mean;
  for (const { peak } of harmonics) square += (peak * peak) / 2;
  return square;
}
