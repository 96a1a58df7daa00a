import { fail, requireFraction, requireNonNegative, requirePositive } from '../../checks/index.js';
import type { ChannelFigures } from '../../waveform/index.js';
import type { Arithmetic } from '../differentiation/arithmetic.js';
import { normalInput } from '../inputs/normal-input.js';
import { rectangularInput } from '../inputs/rectangular-input.js';
import { resolutionInput } from '../inputs/resolution-input.js';
import type { UncertainInput } from '../uncertain-input.js';
import type { ChannelAccuracy } from './capture-accuracy.js';

/** Inputs of a budget by name. */
export type Inputs = Readonly<Record<string, UncertainInput>>;

/** A term of a model over the inputs of a budget. */
export type Term = <T>(x: Readonly<Record<string, T>>, m: Arithmetic<T>) => T;

/** Inputs with the term that is made of them. */
export interface Part {
  readonly inputs: Inputs;
  readonly term: Term;
}

/** The figures of one channel with their errors. */
export interface ChannelParts {
  readonly figures: ChannelFigures;
  /** By what the true values exceed the shown ones: (1 + scale)·(1 + probe). */
  readonly factor: Part;
  /** Error of the zero line, in volts or amperes; also the name of its input. */
  readonly offset: Part;
  readonly rms: Part;
  readonly peak: Part;
  /** Rms of noise and steps together, in volts or amperes. */
  readonly disturbance: number;
}

/**
 * The errors of a channel.
 *
 * Scale and probe belong to every figure of the channel alike. Noise and steps scatter the rms value by σ/√N, and raise
 * it by up to σ²/(2·rms); at the peak they count in full.
 */
export function channelErrors(
  name: 'voltage' | 'current',
  figures: ChannelFigures,
  accuracy: ChannelAccuracy | undefined,
  samples: number,
  missedCrest: number,
): ChannelParts {
  if (accuracy === undefined) fail('missing-member', name, undefined, `must be given: the analysis has a ${name}`);
  const { step, scale = 0, probe = 0, offset = 0, noise = 0 } = accuracy as ChannelAccuracy;
  requirePositive(step, `${name}.step`);
  requireFraction(scale, `${name}.scale`);
  requireFraction(probe, `${name}.probe`);
  requireNonNegative(offset, `${name}.offset`);
  requireNonNegative(noise, `${name}.noise`);
  const { rms, mean, peak } = figures;
  requirePositive(rms, `analysis.${name}.rms`);
  const unit = name === 'voltage' ? 'V' : 'A';
  const key = (part: string): string => `${name}.${part}`;
  const within = (halfWidth: number, description: string, of = unit): UncertainInput =>
    rectangularInput({ value: 0, halfWidth }, { description: `${name}: ${description}`, unit: of });
  const scattered = (standardUncertainty: number, description: string): UncertainInput =>
    normalInput({ value: 0, standardUncertainty }, { description: `${name}: ${description}`, unit });
  const disturbance = Math.hypot(noise, step / Math.sqrt(12));

  const factor: Part = {
    inputs: {
      [key('scale')]: within(scale, 'vertical scale', '1'),
      [key('probe')]: within(probe, 'ratio of the probe', '1'),
    },
    term: (x, m) => m.multiply(m.add(1, at(x, key('scale'))), m.add(1, at(x, key('probe')))),
  };
  const zero: Part = { inputs: { [key('offset')]: within(offset, 'offset') }, term: (x) => at(x, key('offset')) };
  return {
    figures,
    factor,
    offset: zero,
    disturbance,
    rms: {
      inputs: {
        ...factor.inputs,
        ...zero.inputs,
        [key('scatter')]: scattered(disturbance / Math.sqrt(samples), 'noise and steps, scatter of the rms value'),
        [key('rise')]: within((disturbance * disturbance) / (2 * rms), 'noise and steps, rise of the rms value'),
      },
      term: (x, m) => {
        // √(rms² + 2·mean·offset + offset²)
        const moved = m.multiply(zero.term(x, m), m.add(2 * mean, zero.term(x, m)));
        const seen = m.sqrt(m.add(rms * rms, moved));
        return m.multiply(factor.term(x, m), m.add(seen, m.add(at(x, key('scatter')), at(x, key('rise')))));
      },
    },
    peak: {
      inputs: {
        ...factor.inputs,
        ...zero.inputs,
        [key('step')]: resolutionInput({ value: 0, resolution: step }, { description: `${name}: one step`, unit }),
        [key('noise')]: scattered(noise, 'noise at the peak'),
        [key('crest')]: within(missedCrest * peak, 'crest between two samples'),
      },
      term: (x, m) => {
        const errors = m.add(
          m.add(zero.term(x, m), at(x, key('step'))),
          m.add(at(x, key('noise')), at(x, key('crest'))),
        );
        return m.multiply(factor.term(x, m), m.add(peak, errors));
      },
    },
  };
}

/** An input of a term: it is there, since each part brings its inputs along. */
export function at<T>(x: Readonly<Record<string, T>>, name: string): T {
  return x[name] as T;
}

/** A term over the inputs of several parts; what two of them share is one input. */
export function combined(parts: readonly Pick<Part, 'inputs'>[], term: Term): Part {
  const inputs: Inputs = Object.assign({}, ...parts.map((part) => part.inputs));
  return { inputs, term };
}
