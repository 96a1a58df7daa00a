import type { CaptureAnalysis, CaptureEdges } from '../../waveform/index.js';
import { normalInput } from '../inputs/normal-input.js';
import { rectangularInput } from '../inputs/rectangular-input.js';
import type { UncertainInput } from '../uncertain-input.js';
import { at, type ChannelParts, combined, type Part } from './channel-errors.js';
import { type CrossingErrors, crossingErrors } from './crossing-errors.js';
import { liftedHalfCycles, ringsOff } from './noise-warnings.js';

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
 * Noise and steps move a crossing by their rms value over the slope that the samples have there, in each burst anew.
 * What two samples leave open of a crossing between them may be the same in every burst, so that many bursts do not make
 * it smaller.
 */
export function timingErrors({ analysis, sampleInterval, threshold, channel, time }: TimingInput): TimingParts {
  const { carrierFrequency: f = 0, repetitionRate, dutyCycle = 1, window, edges } = analysis;
  const bursts = window.kind === 'bursts' ? (window.count as number) : 0;
  const period = window.duration / Math.max(bursts, 1);
  const omega = 2 * Math.PI * f * sampleInterval;
  const sine = omega / threshold;
  const noise = channel.disturbance / (threshold * channel.figures.peak);
  const known: Known = {
    ...crossingErrors({ sampleInterval, omega, sine, noise, measured: edges !== undefined }),
    edges: { begin: sine, end: sine, crest: 1, ...(edges ?? { crossing: sine }) },
    ...{ f, omega, noise, threshold, sampleInterval, bursts, period },
    active: dutyCycle * period,
  };
  const parts: { -readonly [Figure in keyof TimingParts]: Part } = {};
  if (f > 0) {
    const cycles = bursts > 0 ? known.active * f - 1 : (window.count ?? leastCycles);
    parts.carrierFrequency = ofRate(f, Math.max(cycles, leastCycles) / f, sumOf(carrierErrors(known)), time);
  }
  if (repetitionRate !== undefined) {
    const { begin } = known.edges;
    const inside = known.within(begin, 1);
    const beginnings = crossings('burst', inside, inside, Math.SQRT2 * known.moved(known.slopeOf(begin)));
    parts.repetitionRate = ofRate(repetitionRate, window.duration, sumOf(beginnings), time);
    const { inputs, term } = sumOf(lengthErrors(known, window.duration / sampleInterval));
    parts.dutyCycle = { inputs, term: (x, m) => m.add(dutyCycle, m.divide(term(x, m), period)) };
  }
  return parts;
}

/** What the errors of the carrier and of the length of bursts follow from; times in seconds. */
interface Known extends CrossingErrors {
  readonly edges: Required<CaptureEdges>;
  readonly f: number;
  /** Radians of the carrier for one sample. */
  readonly omega: number;
  /** Rms value of noise and steps, in units of the threshold. */
  readonly noise: number;
  readonly threshold: number;
  readonly sampleInterval: number;
  /** 0 of a continuous output. */
  readonly bursts: number;
  readonly period: number;
  /** Length of a burst. */
  readonly active: number;
}

/** Of one stretch only the first and the last crossing count, since each between ends one cycle and begins another. */
function carrierErrors(known: Known): Errors {
  const { edges, f, omega, noise, threshold, sampleInterval, bursts, period, active, slopeOf, moved } = known;
  const { crossing, begin, crest } = edges;
  const within = known.within(crossing, 0.5 / threshold);
  const steady = moved(slopeOf(crossing));
  if (bursts === 0) return crossings('carrier', within, within, Math.SQRT2 * steady);
  // A burst begins where the rise to the threshold comes from: what two samples there tell of its slope reaches further.
  // Beyond a seventh of a cycle the interval is no longer taken for one.
  const told = slopeOf(begin) - 0.75 * noise;
  const early = Math.min(told > 0 ? moved(told) * Math.SQRT2 * (0.5 + 1 / told) : 1 / f, 1 / (12 * f));
  // Where they tell nothing of it, it comes from anywhere between them.
  const first = begin < 1 ? within : sampleInterval / 2;
  const falls = ringsOff(crest, threshold);
  // Bursts that ring off cross last near the threshold, where they are less steep.
  const late = falls ? moved(omega * threshold ** (-0.5 / Math.max(active * f, leastCycles))) : steady;
  const errors = crossings('carrier', first, within, Math.hypot(early, late) / Math.sqrt(bursts));
  if (falls) {
    // The zero line is the mean of the pauses, in which up to half a cycle of what is left of a burst does not cancel.
    const pause = Math.max(period - active, 1 / f);
    bound(errors, 'carrier.zero', 1 / (2 * Math.PI ** 2 * f * f * pause), 'zero line');
    // Noise makes several crossings of one where the slope is low, and the last of them is taken. Noise that comes near
    // the threshold makes crossings of its own.
    bound(errors, 'carrier.late', late * (noise < 0.2 ? 0.5 : 2), 'several crossings of one');
  }
  return errors;
}

/** The errors of the length of a burst above the threshold. */
function lengthErrors(known: Known, samples: number): Errors {
  const { edges, f, omega, noise, threshold, bursts, active, slopeOf, moved, within } = known;
  const { begin, end, crest } = edges;
  // A last crest that is hardly above the threshold comes down to it flatly.
  const over = Math.max(crest - noise, 1);
  const fall = f > 0 ? Math.min(slopeOf(end), omega * Math.sqrt(over * over - 1)) : slopeOf(end);
  const [early, late] = [moved(slopeOf(begin)), moved(fall)];
  const errors = crossings('burst', within(begin, 1), within(end, 1), Math.hypot(early, late) / Math.sqrt(bursts));
  // The peak that is found is the largest of many with noise, and the threshold is higher by a share of that.
  bound(errors, 'burst.threshold', Math.sqrt(2 * Math.log(samples)) * threshold * (early + late), 'threshold');
  if (f > 0 && crest < 1 + 3 * noise) {
    // The last half-cycle above the threshold, and as many more as noise of three times its rms value can lift or hide.
    const lifted = liftedHalfCycles(noise, f * active, threshold);
    bound(errors, 'burst.end', (1 + lifted) / (2 * f), 'half-cycles more or less at the end');
  }
  return errors;
}

/** A rate that was found over a span of time, which an error makes longer, on a time base. */
function ofRate(rate: number, span: number, error: Part, time: Part): Part {
  return combined([error, time], (x, m) =>
    m.multiply(m.multiply(rate, time.term(x, m)), m.add(1, m.divide(error.term(x, m), span))),
  );
}

type Errors = Record<string, UncertainInput>;

/** What moves the two crossings between which a time lies, in seconds. */
function crossings(name: string, first: number, last: number, standardUncertainty: number): Errors {
  const errors: Errors = {};
  bound(errors, `${name}.first`, first, 'first crossing between two samples');
  bound(errors, `${name}.last`, last, 'last crossing between two samples');
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
