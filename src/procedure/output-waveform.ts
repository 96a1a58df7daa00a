import { fail } from '../checks/index.js';
import { dampedSine, gatedSine, sineWave, type WaveformFigures } from '../waveform/index.js';
import type { Output } from './specification.js';

const needsCarrier = 'must be given: the waveform is a damped sine of this frequency';

/** Figures of the waveform that an output states; undefined where it states none, or its crest factor. */
export function waveformOf({ waveform, carrierFrequency, crestFactor }: Output): WaveformFigures | undefined {
  if (waveform === undefined || crestFactor !== undefined) return undefined;
  switch (waveform.kind) {
    case 'sine':
      return sineWave();
    case 'gated-sine': {
      const { dutyCycle, repetitionRate } = waveform;
      return repetitionRate === undefined || carrierFrequency === undefined
        ? gatedSine({ dutyCycle })
        : gatedSine({ dutyCycle, repetitionRate, frequency: carrierFrequency });
    }
    case 'damped-sine': {
      const { timeConstant, repetitionRate, rest } = waveform;
      const frequency = carrierFrequency ?? fail('missing-member', 'carrierFrequency', undefined, needsCarrier);
      return dampedSine({ timeConstant, repetitionRate, frequency, ...(rest === undefined ? {} : { rest }) });
    }
  }
}

/** The output with the crest factor of its waveform, where it states none itself. */
export function withWaveform(output: Output): Output {
  const figures = waveformOf(output);
  return figures === undefined ? output : { ...output, crestFactor: figures.crestFactor };
}
