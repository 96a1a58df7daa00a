import type { Warning } from '../../checks/index.js';
import type { CaptureAnalysis } from '../../waveform/index.js';
import type { ChannelParts } from './channel-errors.js';

/** Bursts whose last crest is below this share of the peak ring off. */
const constantHeight = 0.85;
/** Beyond this share of the threshold, noise makes bursts of its own. */
const mostNoise = 0.2;
/** Beyond so many half-cycles that noise of three times its rms value can lift or hide, it makes pauses in a burst. */
const mostLifted = 2;

/** Whether bursts ring off, by their lowest last crest in units of the threshold. */
export function ringsOff(crest: number | undefined, threshold: number): boolean {
  return (crest ?? 1) * threshold < constantHeight;
}

/** Half-cycles at the end of a burst that rings off which noise, in units of the threshold, can lift or hide. */
export function liftedHalfCycles(noise: number, cycles: number, threshold: number): number {
  return (6 * cycles * noise) / -Math.log(threshold);
}

/** Noise that splits bursts or makes some of its own: no uncertainty of their times holds then. */
export function noiseWarnings(
  { window, carrierFrequency = 0, dutyCycle = 0, edges }: CaptureAnalysis,
  channel: ChannelParts | undefined,
  threshold: number,
): Warning[] {
  if (window.kind !== 'bursts' || channel === undefined) return [];
  const noise = channel.disturbance / (threshold * channel.figures.peak);
  const cycles = ringsOff(edges?.crest, threshold)
    ? (carrierFrequency * dutyCycle * window.duration) / (window.count as number)
    : 0;
  if (noise < mostNoise && liftedHalfCycles(noise, cycles, threshold) < mostLifted) return [];
  return [
    {
      code: 'noise-near-threshold',
      message:
        'Noise and steps come near the burst threshold and may split bursts or make some: then carrier, repetition rate and duty cycle are off by more than their uncertainties say.',
    },
  ];
}
