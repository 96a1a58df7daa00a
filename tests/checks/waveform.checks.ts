import {
  crestFactorOfGatedSine,
  type DampedSine,
  dampedSine,
  type GatedSine,
  gatedSine,
  pulseTrain,
  sineWave,
  squareWave,
  triangleWave,
  type WaveformFigures,
} from '../../src/waveform/index.js';
import { type Check, type CheckRow, rowsOf } from './check.js';

const rows = rowsOf('waveform');

const gatedCrestFactors: readonly (readonly [duty: number, crestFactor: number])[] = [
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: the value as printed
  [1, 1.4142],
  [0.8, 1.5811],
  [0.75, 1.633],
  [0.6, 1.8257],
  [0.5, 2],
  [0.4, 2.2361],
  [0.25, 2.8284],
  [0.1, 4.4721],
  [0.06, 5.7735],
  [0.04, 7.0711],
];

const bursts: readonly (readonly [name: string, wave: DampedSine, rms: number, peak: number, crestFactor: number])[] = [
  ['500k-2us', { frequency: 500e3, timeConstant: 2e-6, repetitionRate: 30e3 }, 0.120952, 0.788685, 6.52064],
  ['400k-3us', { frequency: 400e3, timeConstant: 3e-6, repetitionRate: 20e3 }, 0.121411, 0.819088, 6.74639],
  ['500k-4us', { frequency: 500e3, timeConstant: 4e-6, repetitionRate: 30e3 }, 0.172659, 0.885293, 5.1274],
  ['1m-1us', { frequency: 1e6, timeConstant: 1e-6, repetitionRate: 50e3 }, 0.110414, 0.788685, 7.143],
  ['500k-10us', { frequency: 500e3, timeConstant: 10e-6, repetitionRate: 30e3 }, 0.273543, 0.951711, 3.4792],
];

const pulses: readonly (readonly [duty: number, rms: number])[] = [
  [0.1, 0.316],
  [0.25, 0.5],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: the value as printed
  [0.5, 0.707],
  [0.75, 0.866],
  [1, 1],
];

const halfWave: GatedSine = { dutyCycle: 0.5, frequency: 50, repetitionRate: 50 };
const full = 5e-15;

/** Rms, mean of the absolute value, crest and form factor, to the digits of the closed form. */
function table(id: string, name: string, figures: () => WaveformFigures, values: readonly number[]): CheckRow[] {
  const [rms = 0, average = 0, crest = 0, form = 0] = values;
  return [
    [`${id}-rms`, `rms of ${name} of peak 1`, rms, '1', full, () => figures().rms],
    [
      `${id}-average`,
      `average rectified value of ${name} of peak 1`,
      average,
      '1',
      full,
      () => figures().averageRectified,
    ],
    [`${id}-crest`, `crest factor of ${name}`, crest, '1', full, () => figures().crestFactor],
    [`${id}-form`, `form factor of ${name}`, form, '1', full, () => figures().formFactor],
  ];
}

export const waveformChecks: readonly Check[] = [
  ...rows('Lessons in Electric Circuits II, Measurements of AC magnitude', 'published', [
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the value as printed
    ['wave-sine-rms', 'rms of a sine of peak 1', 0.707, '1', 0.0005, () => sineWave().rms],
    ['wave-sine-average', 'average of a sine of peak 1', 0.637, '1', 0.0005, () => sineWave().averageRectified],
    ['wave-sine-form', 'form factor of a sine', 1.11, '1', 0.005, () => sineWave().formFactor],
    [
      'wave-average-multiplier',
      'multiplier of an average-responding meter',
      1.1107,
      '1',
      0.00005,
      () => squareWave().averageRespondingFactor,
    ],
    ['wave-square-crest', 'crest factor of a square wave', 1, '1', 0, () => squareWave().crestFactor],
    ['wave-square-form', 'form factor of a square wave', 1, '1', 0, () => squareWave().formFactor],
    ['wave-triangle-rms', 'rms of a triangle of peak 1', 0.577, '1', 0.0005, () => triangleWave().rms],
    ['wave-triangle-average', 'average of a triangle of peak 1', 0.5, '1', 0, () => triangleWave().averageRectified],
    ['wave-triangle-form', 'form factor of a triangle', 1.15, '1', 0.005, () => triangleWave().formFactor],
  ]),
  ...rows('Table of crest factors of an encyclopedia (Wikipedia, Crest factor: examples)', 'published', [
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the value as printed
    ['crest-table-sine', 'crest factor of a sine', 1.414, '1', 0.0005, () => sineWave().crestFactor],
    ['crest-table-half-wave-rms', 'rms of a half-wave rectified sine', 0.5, '1', full, () => gatedSine(halfWave).rms],
    [
      'crest-table-half-wave',
      'crest factor of a half-wave rectified sine',
      2,
      '1',
      full,
      () => gatedSine(halfWave).crestFactor,
    ],
    ['crest-table-triangle-rms', 'rms of a triangle', 0.577, '1', 0.0005, () => triangleWave().rms],
    ['crest-table-triangle', 'crest factor of a triangle', 1.732, '1', 0.0005, () => triangleWave().crestFactor],
    ['crest-table-square', 'crest factor of a square wave', 1, '1', 0, () => squareWave().crestFactor],
    [
      'crest-table-triangle-db',
      'crest factor of a triangle in decibels',
      4.77,
      'dB',
      0.005,
      () => 20 * Math.log10(triangleWave().crestFactor),
    ],
    [
      'crest-table-half-wave-db',
      'crest factor of a half-wave rectified sine in decibels',
      6.02,
      'dB',
      0.005,
      () => 20 * Math.log10(gatedSine(halfWave).crestFactor),
    ],
  ]),
  ...rows('Electricity and Semiconductors, an open course on GitHub: bonus lab 2, sections 5 and 9', 'published', [
    ['course-square-crest', 'crest factor of a square wave', 1, '1', 0, () => squareWave().crestFactor],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the value as printed
    ['course-sine-crest', 'crest factor of a sine', 1.414, '1', 0.0005, () => sineWave().crestFactor],
    ['course-triangle-crest', 'crest factor of a triangle', 1.732, '1', 0.0005, () => triangleWave().crestFactor],
    ['course-sine-form', 'form factor of a sine', 1.111, '1', 0.0005, () => sineWave().formFactor],
    ['course-square-form', 'form factor of a square wave', 1, '1', 0, () => squareWave().formFactor],
    ['course-triangle-form', 'form factor of a triangle', 1.155, '1', 0.0005, () => triangleWave().formFactor],
    [
      'course-square-reading',
      'average-responding meter on a square wave: above true rms',
      0.111,
      '1',
      0.0005,
      () => squareWave().averageRespondingFactor - 1,
    ],
    [
      'course-triangle-reading',
      'average-responding meter on a triangle: below true rms',
      0.038,
      '1',
      0.0005,
      () => 1 - triangleWave().averageRespondingFactor,
    ],
    ...pulses.map(
      ([dutyCycle, rms]): CheckRow => [
        `course-pulse-${Math.round(dutyCycle * 100)}`,
        `rms of pulses of height 1 at ${Math.round(dutyCycle * 100)} % duty`,
        rms,
        '1',
        0.0005,
        () => pulseTrain({ dutyCycle }).rms,
      ],
    ),
  ]),
  ...rows('Definition of the quantities, computed independently', 'derived', [
    ...table(
      'wave-full-sine',
      'a sine',
      () => sineWave(),
      // biome-ignore lint/suspicious/noApproximativeNumericConstant: the value as printed
      [0.707106781186548, 0.636619772367581, 1.4142135623731, 1.11072073453959],
    ),
    ...table(
      'wave-half-sine',
      'a half-wave rectified sine',
      () => gatedSine(halfWave),
      [0.5, 0.318309886183791, 2, 1.5707963267949],
    ),
    ...table(
      'wave-full-triangle',
      'a triangle',
      () => triangleWave(),
      [0.577350269189626, 0.5, 1.73205080756888, 1.15470053837925],
    ),
    ...table(
      'wave-burst-quarter',
      'a sine burst of 25 % duty',
      () => gatedSine({ dutyCycle: 0.25 }),
      [0.353553390593274, 0.159154943091895, 2.82842712474619, 2.22144146907918],
    ),
  ]),
  ...rows('Definition of the crest factor, √(2/D)', 'derived', [
    ...gatedCrestFactors.map(
      ([duty, value]): CheckRow => [
        `gated-sine-${Math.round(duty * 100)}`,
        `crest factor of a gated sine of ${Math.round(duty * 100)} % duty`,
        value,
        '1',
        0.00005,
        () => crestFactorOfGatedSine(duty),
      ],
    ),
  ]),
  ...rows('Thieme, textbook of gastrointestinal endoscopy, chapter 7', 'published', [
    ['sine-continuous', 'crest factor of a continuous sine', 1.4, '1', 0.05, () => sineWave().crestFactor],
  ]),
  ...rows('Integral of the squared damped sine over its period; numerical integration', 'derived', [
    ...bursts.flatMap(([name, wave, rms, peak, crestFactor]): CheckRow[] => [
      [
        `damped-sine-${name}-rms`,
        `rms of a damped sine, ${name}, amplitude 1`,
        rms,
        '1',
        5e-7,
        () => dampedSine(wave).rms,
      ],
      [`damped-sine-${name}-peak`, `true peak, ${name}, amplitude 1`, peak, '1', 5e-7, () => dampedSine(wave).peak],
      [
        `damped-sine-${name}-crest`,
        `crest factor, ${name}`,
        crestFactor,
        '1',
        5e-6,
        () => dampedSine(wave).crestFactor,
      ],
    ]),
  ]),
];
