import type { Warning } from '../../checks/index.js';

/** Samples of one channel: any typed array or array of numbers; it is read where it lies, never copied. */
export type Samples = ArrayLike<number>;

/** Values of the two channels, each in the unit of its samples. */
export interface ChannelPair {
  readonly voltage?: number;
  readonly current?: number;
}

/** The lowest and highest value that a converter can give, in the unit of the samples. */
export interface ConverterRange {
  readonly lowest: number;
  readonly highest: number;
}

/** What an oscilloscope has sampled of voltage, current or both, at the same instants. */
export interface Capture {
  /** Samples of the voltage: this or `current`, or both. */
  readonly voltage?: Samples;
  /** Samples of the current. */
  readonly current?: Samples;
  /** Time from one sample to the next, in seconds, greater than 0. */
  readonly sampleInterval: number;
  /** Volts for one unit of the voltage samples; negative for an inverted probe; 1 unless stated. */
  readonly voltageFactor?: number;
  /** Amperes for one unit of the current samples; negative for an inverted probe; 1 unless stated. */
  readonly currentFactor?: number;
  /**
   * What is taken off before anything is reckoned: nothing (`none`, unless stated), the `mean` of each channel over the
   * window, or stated offsets in the unit of the samples.
   */
  readonly removeOffset?: 'none' | 'mean' | ChannelPair;
  /** Resistance for the energies where only one channel is there, in ohms. */
  readonly load?: number;
  /** Range of the converter of each channel: a sample at its end is then known to be clipped. */
  readonly converter?: { readonly voltage?: ConverterRange; readonly current?: ConverterRange };
  /** Frequency that the carrier should have, in hertz: another one is then a sign of aliasing. */
  readonly expectedCarrier?: number;
  /** Share of the peak, 0–1, above which there is an output; 0.1 unless stated. Noise must stay below it. */
  readonly burstThreshold?: number;
}

/** Figures of one channel. */
export interface ChannelFigures {
  /** Rms value over the window, in volts or amperes. */
  readonly rms: number;
  /** Mean value over the window, in volts or amperes. */
  readonly mean: number;
  /** Largest absolute value anywhere in the capture, in volts or amperes. */
  readonly peak: number;
  /** Largest less smallest value anywhere in the capture, in volts or amperes. */
  readonly peakToPeak: number;
  /** Peak over rms; absent where all is 0. */
  readonly crestFactor?: number;
}

/** The stretch of a capture over which means are taken. */
export interface CaptureWindow {
  /** Whole `bursts`, each with its pause; whole `cycles` of a continuous output; or the whole `record`. */
  readonly kind: 'bursts' | 'cycles' | 'record';
  /** Time from the first sample to its beginning, in seconds. */
  readonly start: number;
  /** In seconds. */
  readonly duration: number;
  /** Bursts or cycles in it; absent for a whole record. */
  readonly count?: number;
}

/** How steep the channel is where times are read: an uncertainty follows from it. All in units of the burst threshold. */
export interface CaptureEdges {
  /** Mean change from sample to sample where the carrier crosses its zero line upwards; 0 without a carrier. */
  readonly crossing: number;
  /** The same where bursts come above the threshold; with bursts only, as the next two. */
  readonly begin?: number;
  /** The same where they go below it. */
  readonly end?: number;
  /** The last crest above the threshold, or the last sample without a carrier: of the burst in which it is the lowest. */
  readonly crest?: number;
}

/** What a capture says. */
export interface CaptureAnalysis {
  readonly window: CaptureWindow;
  readonly voltage?: ChannelFigures;
  readonly current?: ChannelFigures;
  /** Mean of voltage times current over the window, in watts: both channels needed, as for the next three. */
  readonly activePower?: number;
  /** Rms voltage times rms current, in volt-amperes. */
  readonly apparentPower?: number;
  /** Active over apparent power; absent where the latter is 0. */
  readonly powerFactor?: number;
  /**
   * Phase of the voltage ahead of the current at the carrier, in radians; absent without a carrier. Of bursts beyond the
   * first 262 144 samples one in sixteen is taken.
   */
  readonly phase?: number;
  /** In hertz; absent where none is found. */
  readonly carrierFrequency?: number;
  /** Bursts a second, in hertz; absent unless at least two have begun. */
  readonly repetitionRate?: number;
  /** Share of the window from the first to the last value of a burst above the threshold, 0–1; with bursts only. */
  readonly dutyCycle?: number;
  /** Of the channel on which carrier and bursts are told; absent for a channel that does not change. */
  readonly edges?: CaptureEdges;
  /** Mean energy of one burst, in joules: from both channels, or from one and `load`. */
  readonly burstEnergy?: number;
  /** Energy of the whole capture, in joules: from both channels, or from one and `load`. */
  readonly energy?: number;
  readonly warnings: readonly Warning[];
}
