import type { CaptureAnalysis } from '../../waveform/index.js';
import type { LoadStatement } from '../instruments/load-errors.js';

/** What is known of the errors of one channel, at the tip of its probe. Limits are taken as rectangular. */
export interface ChannelAccuracy {
  /** One step of the converter, in volts or amperes: the range over the number of steps, times the probe factor. */
  readonly step: number;
  /** Limits of the vertical scale of the instrument at the carrier, as a part of the value, 0–1; 0 unless stated. */
  readonly scale?: number;
  /** Limits of the ratio of the probe at the carrier, as a part of the value, 0–1; 0 unless stated. */
  readonly probe?: number;
  /** Limits of what the channel shows without a signal, in volts or amperes; 0 unless stated. */
  readonly offset?: number;
  /** Rms noise, in volts or amperes; 0 unless stated. */
  readonly noise?: number;
}

/** A capture that was analysed, and what is known of the errors of its channels. */
export interface CaptureBudgetInput {
  readonly analysis: CaptureAnalysis;
  /** Time from one sample to the next, in seconds, as in the capture. */
  readonly sampleInterval: number;
  /** Needed where the analysis has a voltage. */
  readonly voltage?: ChannelAccuracy;
  /** Needed where the analysis has a current. */
  readonly current?: ChannelAccuracy;
  /** Limits of the difference in delay of the two channels with their probes, in seconds; 0 unless stated. */
  readonly skew?: number;
  /** Limits of the time base, as a part of the time, 0–1; 0 unless stated. */
  readonly timeBase?: number;
  /** Share of the peak above which there is an output, as in the capture, 0–1; 0.1 unless stated. */
  readonly burstThreshold?: number;
  /** The load, where the power of a capture with one channel is wanted. */
  readonly load?: LoadStatement;
}
