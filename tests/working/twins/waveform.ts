import fc from 'fast-check';
import {
  type DampedSine,
  dampedSine,
  type GatedSine,
  gatedSine,
  pulseTrain,
  sineWave,
  triangleWave,
  type WaveformFigures,
} from '../../../src/waveform/index.js';
import { valueBetween, voltage } from '../../generators.js';
import { stepOf } from '../step-of.js';
import type { Twins } from './twin.js';

const duty = valueBetween(0.01, 1);

/** The value of the first step of a formula in the working of a waveform. */
function valueOfStep({ working }: WaveformFigures, formula: string): number {
  const found = working.find((step) => step.formula === formula);
  if (found === undefined) throw new Error(`No step ${formula} in the working.`);
  return found.value;
}

const gated = fc
  .record({
    dutyCycle: valueBetween(0.01, 1),
    peak: voltage(),
    repetitionRate: valueBetween(1e3, 1e5),
    cycles: valueBetween(1, 100),
    startPhase: valueBetween(-6.28, 6.28),
  })
  .filter(({ dutyCycle, cycles }) => dutyCycle * cycles > 0.02)
  .map(({ cycles, ...rest }): GatedSine => ({ ...rest, frequency: cycles * rest.repetitionRate }))
  .map(gatedSine);

/** Gates of a part of a half-cycle only. */
const shortGated = fc
  .record({
    dutyCycle: valueBetween(0.05, 0.4),
    peak: voltage(),
    startPhase: valueBetween(-1.5, 1.5),
  })
  .map((wave) => gatedSine({ ...wave, frequency: 3e4, repetitionRate: 3e4 }));

const damped = (rest: 'restarts' | 'overlaps'): fc.Arbitrary<WaveformFigures> =>
  fc
    .record({
      amplitude: voltage(),
      repetitionRate: valueBetween(1e3, 1e5),
      cycles: valueBetween(1, 100),
      // Time constant in cycles of the sine.
      ringing: valueBetween(0.05, 300),
    })
    .map(
      ({ cycles, ringing, ...wave }): DampedSine => ({
        ...wave,
        rest,
        frequency: cycles * wave.repetitionRate,
        timeConstant: ringing / (cycles * wave.repetitionRate),
      }),
    )
    .map(dampedSine);
const anyDamped = fc.oneof(damped('restarts'), damped('overlaps'));

export const twins: Twins = {
  'sine-rms': { fast: ({ x_p }) => sineWave({ peak: x_p! }).rms, symbols: { x_p: voltage() } },
  'sine-average': { fast: ({ x_p }) => sineWave({ peak: x_p! }).averageRectified, symbols: { x_p: voltage() } },
  'triangle-rms': { fast: ({ x_p }) => triangleWave({ peak: x_p! }).rms, symbols: { x_p: voltage() } },
  'triangle-average': {
    fast: ({ x_p }) => triangleWave({ peak: x_p! }).averageRectified,
    symbols: { x_p: voltage() },
  },
  'pulse-rms': {
    fast: ({ x_p, D }) => pulseTrain({ peak: x_p!, dutyCycle: D! }).rms,
    symbols: { x_p: voltage(), D: duty },
  },
  'pulse-average': {
    fast: ({ x_p, D }) => pulseTrain({ peak: x_p!, dutyCycle: D! }).averageRectified,
    symbols: { x_p: voltage(), D: duty },
  },
  'form-factor': stepOf('form-factor', gated),
  'average-responding-factor': stepOf('average-responding-factor', gated),
  'burst-energy-from-voltage': {
    fast: ({ x, R, f_r }) =>
      valueOfStep(pulseTrain({ dutyCycle: 1, peak: x!, load: R!, repetitionRate: f_r! }), 'burst-energy-from-voltage'),
    symbols: { f_r: valueBetween(1e3, 1e5) },
  },
  'burst-energy-from-current': {
    fast: ({ x, R, f_r }) =>
      pulseTrain({ dutyCycle: 1, peak: x!, load: R!, repetitionRate: f_r!, quantity: 'current' }).burstEnergy!,
    symbols: { f_r: valueBetween(1e3, 1e5) },
  },
  'gated-sine-rms': {
    fast: ({ A, D }) => gatedSine({ peak: A!, dutyCycle: D! }).rms,
    symbols: { A: voltage(), D: duty },
  },
  'gated-sine-average': {
    fast: ({ A, D }) => gatedSine({ peak: A!, dutyCycle: D! }).averageRectified,
    symbols: { A: voltage(), D: duty },
  },
  'gate-angle': {
    fast: ({ f, f_r, D }) =>
      valueOfStep(gatedSine({ dutyCycle: D!, frequency: f!, repetitionRate: f_r! }), 'gate-angle'),
    symbols: { f_r: valueBetween(1e3, 5e4), D: duty },
  },
  'gated-sine-rms-with-end': stepOf('gated-sine-rms-with-end', fc.oneof(gated, shortGated)),
  'gated-sine-average-inside': stepOf('gated-sine-average-inside', shortGated),
  'gated-sine-average-over': stepOf('gated-sine-average-over', gated),
  'gated-sine-peak': stepOf('gated-sine-peak', shortGated),
  ringing: stepOf('ringing', anyDamped),
  'phase-of-next-burst': stepOf('phase-of-next-burst', anyDamped),
  'damped-sine-remainder': stepOf('damped-sine-remainder', anyDamped),
  'damped-sine-overlap-amplitude': stepOf('damped-sine-overlap-amplitude', damped('overlaps')),
  'damped-sine-overlap-phase': stepOf('damped-sine-overlap-phase', damped('overlaps')),
  'damped-sine-rms': stepOf('damped-sine-rms', anyDamped),
  'damped-sine-average': stepOf('damped-sine-average', anyDamped),
  'damped-sine-peak': stepOf('damped-sine-peak', anyDamped),
};
