import type { CaptureAnalysis } from '../../waveform/index.js';
import { normalInput } from '../inputs/normal-input.js';
import { rectangularInput } from '../inputs/rectangular-input.js';
import type { UncertainInput } from '../uncertain-input.js';
import { at, type ChannelParts, combined, type Part } from './channel-errors.js';

/** Bursts whose rms value is below this share of that of a burst of constant height ring off. */
const constantHeight = 0.85;
/** A carrier is told from half a cycle at least. */
const leastCycles = 0.5;

/** What the errors of times follow from. */
export interface TimingInput {
  readonly analysis: CaptureAnalysis;
  readonly sampleInterval: number;
  /** Share of the peak above which there is an output. */
  readonly threshold: number;
  /** The channel on which crossings, bursts and pauses are told. */
  readonly channel: ChannelParts;
  /** What a time is multiplied with: 1 and the error of the time base. */
  readonly time: Part;
}

/** The figures of a capture that follow from times, with their errors. */
export interface TimingParts {
  readonly carrierFrequency?: Part;
  readonly repetitionRate?: Part;
  readonly dutyCycle?: Part;
}

/**
 * The errors of carrier, repetition rate and duty cycle, each from the places of two crossings.
 *
 * A crossing lies anywhere between two samples where the course jumps; where it does not, its place is interpolated and
 * that is a bound. It may be the same in every burst, so that many bursts do not make it smaller. Noise and steps move a
 * crossing by their rms value over the slope there, in each burst anew.
 */
export function timingErrors({ analysis, sampleInterval, threshold, channel, time }: TimingInput): TimingParts {
  const { carrierFrequency: f = 0, repetitionRate, dutyCycle = 1, window } = analysis;
  const { rms, mean, peak } = channel.figures;
  const inBursts = window.kind === 'bursts';
  const bursts = inBursts ? (window.count as number) : 1;
  const period = window.duration / bursts;
  const height = Math.sqrt((2 * Math.max(rms * rms - mean * mean, 0)) / dutyCycle);
  const ringsOff = f > 0 && inBursts && height < constantHeight * peak;
  const omega = 2 * Math.PI * f;
  /** Standard uncertainty of a crossing from noise, in seconds; without a carrier the course jumps from level to level. */
  const moved = (amplitude: number): number => (f > 0 ? channel.disturbance / (omega * amplitude) : 0);
  // A burst that rings off ends where it is as low as the threshold.
  const [begins, ends] = ringsOff ? [peak, threshold * peak] : [height, height];
  const [early, late] = [moved(begins), moved(ends)];

  const parts: { -readonly [Figure in keyof TimingParts]: Part } = {};
  if (f > 0) {
    // Crossings of one stretch: only its first and its last count, since each between ends one cycle and begins another.
    const cycles = inBursts ? dutyCycle * period * f - 1 : (window.count ?? leastCycles);
    const errors = edges('carrier', sampleInterval, Math.hypot(early, late) / Math.sqrt(bursts));
    if (inBursts) {
      // A burst begins where the rise to the threshold comes from: what two samples there tell of its slope reaches far
      // back. Beyond a seventh of a cycle the interval is no longer taken for one.
      const back = (2 * Math.SQRT2 * threshold * peak) / (omega * begins * sampleInterval);
      bound(errors, 'carrier.begin', Math.min(back * early, 1 / (7 * f)), 'beginning of a burst');
    }
    if (ringsOff) {
      // The zero line is the mean of the pauses, in which up to half a cycle of what is left of a burst does not cancel.
      bound(errors, 'carrier.zero', 2 / (omega * omega * Math.max((1 - dutyCycle) * period, 1 / f)), 'zero line');
      // Noise makes several crossings of one where the slope is low, and the last of them is taken.
      bound(errors, 'carrier.late', 2 * (late - early), 'several crossings of one');
    }
    parts.carrierFrequency = ofRate(f, Math.max(cycles, leastCycles) / f, sumOf(errors), time);
  }
  if (repetitionRate !== undefined) {
    const beginnings = sumOf(edges('burst', sampleInterval, Math.SQRT2 * early));
    parts.repetitionRate = ofRate(repetitionRate, window.duration, beginnings, time);
    const errors = edges('burst', sampleInterval, Math.hypot(early, late) / Math.sqrt(bursts));
    if (ringsOff) {
      // The last half-cycle above the threshold, and as many more as noise of three times its rms value can lift or hide.
      const lifted = (6 * f * dutyCycle * period * channel.disturbance) / (threshold * peak * -Math.log(threshold));
      bound(errors, 'burst.end', (1 + lifted) / (2 * f), 'half-cycles more or less at the end');
    }
    const { inputs, term } = sumOf(errors);
    parts.dutyCycle = { inputs, term: (x, m) => m.add(dutyCycle, m.divide(term(x, m), period)) };
  }
  return parts;
}

/** A rate that was found over a span of time, which an error makes longer, on a time base. */
function ofRate(rate: number, span: number, error: Part, time: Part): Part {
  return combined([error, time], (x, m) =>
    m.multiply(m.multiply(rate, time.term(x, m)), m.add(1, m.divide(error.term(x, m), span))),
  );
}

type Errors = Record<string, UncertainInput>;

/** What moves the two crossings between which a time lies, in seconds. */
function edges(name: string, sampleInterval: number, standardUncertainty: number): Errors {
  const errors: Errors = {};
  bound(errors, `${name}.first`, sampleInterval / 2, 'first crossing between two samples');
  bound(errors, `${name}.last`, sampleInterval / 2, 'last crossing between two samples');
  const description = 'noise and steps at the crossings';
  errors[`${name}.noise`] = normalInput({ value: 0, standardUncertainty }, { description, unit: 's' });
  return errors;
}

/** Adds a time within which a crossing lies, in seconds. */
function bound(errors: Errors, name: string, halfWidth: number, description: string): void {
  errors[name] = rectangularInput({ value: 0, halfWidth }, { description, unit: 's' });
}

function sumOf(errors: Errors): Part {
  return {
    inputs: errors,
    term: (x, m) => Object.keys(errors).reduce((sum, name) => m.add(sum, at(x, name)), m.add(0, 0)),
  };
}
