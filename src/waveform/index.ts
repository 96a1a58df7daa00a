export { averageRespondingReading } from './average-responding-reading.js';
export { analyseCapture } from './capture/analyse-capture.js';
export type {
  Capture,
  CaptureAnalysis,
  CaptureEdges,
  CaptureWindow,
  ChannelFigures,
  ChannelPair,
  ConverterRange,
  Samples,
} from './capture/capture.js';
export { crestFactorOfGatedSine } from './crest-factor-of-gated-sine.js';
export { type DampedSine, type DampedSineFigures, dampedSine } from './damped-sine.js';
export { type GatedSine, gatedSine } from './gated-sine.js';
export { harmonicSum } from './harmonic-sum.js';
export { type PulseTrain, pulseTrain } from './pulse-train.js';
export { sineWave } from './sine-wave.js';
export { type BandLimitedReading, bandLimitedReading, type InstrumentBand } from './spectrum/band-limited-reading.js';
export { dampedSineSpectrum } from './spectrum/damped-sine-spectrum.js';
export { gatedSineSpectrum } from './spectrum/gated-sine-spectrum.js';
export { pulseTrainSpectrum } from './spectrum/pulse-train-spectrum.js';
export type { Harmonic, Spectrum } from './spectrum/spectrum.js';
export { squareWaveSpectrum, type WaveAtFrequency } from './spectrum/square-wave-spectrum.js';
export { triangleWaveSpectrum } from './spectrum/triangle-wave-spectrum.js';
export { squareWave } from './square-wave.js';
export { triangleWave } from './triangle-wave.js';
export type { WaveformFigures, WaveformQuantity } from './waveform-figures.js';
export type { BurstLoad, WaveformScale } from './waveform-scale.js';
