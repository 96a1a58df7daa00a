import { fail, requireInteger, requirePositive, requireResult } from '../../checks/index.js';
import { requireSpectrum } from './require-spectrum.js';
import { type Harmonic, meanSquareOf, type Spectrum } from './spectrum.js';

/** The band of a true-rms instrument, whose ends are poles of Butterworth filters. */
export interface InstrumentBand {
  /** Frequency at which the response has fallen by 3 dB at the upper end, in hertz. */
  readonly upperCutoff?: number;
  /** Frequency at which it has fallen by 3 dB at the lower end, in hertz; without it, the mean value is read too. */
  readonly lowerCutoff?: number;
  /** Poles of each end: 1 for a single pole, which is taken unless stated; at most 20. */
  readonly order?: number;
}

/** What a band-limited true-rms instrument shows. */
export interface BandLimitedReading {
  /** Rms value of the listed harmonics behind the filter, in volts or amperes. */
  readonly rms: number;
  /** The same with everything beyond the list let through as the highest listed harmonic would be: an upper bound. */
  readonly highestRms: number;
  /** `rms` over the true rms value of the whole waveform. */
  readonly readingFactor: number;
  /** Share of the mean square that the listed harmonics hold, 0–1. */
  readonly share: number;
  /** The spectrum behind the filter. */
  readonly spectrum: Spectrum;
}

/**
 * What a true-rms instrument of limited bandwidth shows of a waveform, by its effect on each harmonic.
 *
 * @param spectrum Spectrum of the waveform
 * @param band One or both ends of the band, and the order of the filter
 * @returns Reading, reading factor, and the spectrum behind the filter
 * @throws CalculationError `missing-member` (no end of the band), `not-positive`, `not-a-number`, `negative`,
 * `not-an-integer`, `out-of-range`, `duplicate`, `contradiction` (a stated rms value below that of the list),
 * `result-out-of-range`
 * @source Response of a Butterworth filter, 1/√(1 + (f/f_c)^2n); Parseval's theorem
 * @accuracy Within 1e-13 (relative) for the listed harmonics
 * @example
 * ```ts
 * import { bandLimitedReading, squareWaveSpectrum } from 'esu-limits/waveform';
 * const wave = squareWaveSpectrum({ frequency: 1e6 }, 999);
 * bandLimitedReading(wave, { upperCutoff: 2e6 }).readingFactor.toFixed(4); // → "0.8264"
 * ```
 */
export function bandLimitedReading(spectrum: Spectrum, band: InstrumentBand): BandLimitedReading {
  const { fundamental, mean = 0, harmonics } = requireSpectrum(spectrum);
  const { upperCutoff, lowerCutoff, order = 1 } = band;
  if (upperCutoff === undefined && lowerCutoff === undefined) {
    fail('missing-member', 'upperCutoff', undefined, 'must be given, or the lower cutoff');
  }
  if (upperCutoff !== undefined) requirePositive(upperCutoff, 'upperCutoff');
  if (lowerCutoff !== undefined) requirePositive(lowerCutoff, 'lowerCutoff');
  requireInteger(order, 'order', 1, 20);
  const poles = butterworthPoles(order);
  let highest = 0;
  const filtered: Harmonic[] = harmonics.map((harmonic) => {
    highest = Math.max(highest, harmonic.order);
    const f = harmonic.order * fundamental;
    const low = upperCutoff === undefined ? pass : response(f / upperCutoff, poles);
    // A high-pass is the low-pass with the inverse frequency, its phase turned.
    const high = lowerCutoff === undefined ? pass : response(lowerCutoff / f, poles);
    const peak = harmonic.peak * low.gain * high.gain;
    return { order: harmonic.order, peak, phase: (harmonic.phase ?? 0) + low.phase - high.phase };
  });
  const listed = requireResult(meanSquareOf(spectrum), 'rms');
  const whole = spectrum.rms === undefined ? listed : spectrum.rms ** 2;
  if (!(whole > 0)) fail('not-positive', 'harmonics', whole, 'must hold at least one of a peak above 0');
  if (whole < listed * (1 - 1e-9)) {
    fail('contradiction', 'rms', spectrum.rms, 'must not lie below that of the listed harmonics');
  }
  const behind: Spectrum = { fundamental, mean: lowerCutoff === undefined ? mean : 0, harmonics: filtered };
  const square = meanSquareOf(behind);
  const beyond = upperCutoff === undefined ? 1 : response((highest * fundamental) / upperCutoff, poles).gain ** 2;
  const rms = requireResult(Math.sqrt(square), 'rms');
  return {
    rms,
    highestRms: requireResult(Math.sqrt(square + Math.max(whole - listed, 0) * beyond), 'highestRms'),
    readingFactor: rms / Math.sqrt(whole),
    share: Math.min(listed / whole, 1),
    spectrum: behind,
  };
}

interface Response {
  readonly gain: number;
  readonly phase: number;
}

const pass: Response = { gain: 1, phase: 0 };

/** Angles of the poles from the negative real axis. */
function butterworthPoles(order: number): number[] {
  return Array.from({ length: order }, (_, k) => (Math.PI * (2 * k + 1 - order)) / (2 * order));
}

/** Response of the low-pass at a frequency relative to its cutoff; the phases of all poles add. */
function response(ratio: number, poles: readonly number[]): Response {
  let phase = 0;
  for (const angle of poles) phase -= Math.atan2(ratio + Math.sin(angle), Math.cos(angle));
  return { gain: 1 / Math.sqrt(1 + ratio ** (2 * poles.length)), phase };
}
