import {
  accessoryRating,
  coaxialLine,
  heatingFactor,
  peakRatings,
  peakVoltage,
  roundWireResistance,
  skinDepth,
  solenoidInductance,
  straightWireInductance,
  straysAtPhase,
  testLoadPhase,
  twoWireLine,
} from '../../src/circuit/index.js';
import { type Check, type CheckRow, rowsOf } from './check.js';

const rows = rowsOf('circuit');

/** L in microhenries and C in picofarads that turn a load by 8.5° at 2.5 MHz. */
const phaseLoads: readonly (readonly [load: number, L: number, toleranceL: number, C: number, toleranceC: number])[] = [
  [50, 0.476, 0.0005, 190, 0.5],
  [100, 0.951, 0.0005, 95, 0.5],
  [200, 1.9, 0.005, 47.6, 0.05],
  [500, 4.76, 0.005, 19, 0.05],
  [1000, 9.51, 0.005, 9.5, 0.05],
];
const strays = (resistance: number) => straysAtPhase({ resistance, frequency: 2.5e6 });

const inch = 0.0254;
/** Diameters: the source states the radii of its line. */
const line = coaxialLine({
  innerDiameter: 2 * 0.0445 * inch,
  outerDiameter: 2 * 0.1425 * inch,
  relativePermittivity: 2.115,
});
/** Speed of light in vacuum, in metres a second. */
const light = 299_792_458;

const depths: readonly (readonly [name: string, frequency: number, micrometres: number])[] = [
  ['100k', 100e3, 206.3],
  ['300k', 300e3, 119.1],
  ['500k', 500e3, 92.3],
  ['1m', 1e6, 65.2],
  ['5m', 5e6, 29.2],
];
const copper = 1.68e-8;

const pair = twoWireLine({ spacing: 20e-3, diameter: 1e-3 });
const cable = coaxialLine({ innerDiameter: 1e-3, outerDiameter: 3.5e-3, relativePermittivity: 2.25 });

export const benchEffectsChecks: readonly Check[] = [
  ...rows(
    'E. B. Rosa (1908), straight round wire',
    'published',
    [
      [
        'rosa-2mm',
        'inductance of 2 mm of wire of 1 mm diameter, uniform current',
        0.625574,
        'nH',
        5e-7,
        () => straightWireInductance({ length: 2e-3, diameter: 1e-3, current: 'uniform' }) * 1e9,
      ],
    ],
    'rosa-1908',
  ),
  ...rows(
    "Rosa's formula, computed independently",
    'derived',
    [
      [
        'rosa-1m-uniform',
        'inductance of 1 m of wire of 1 mm diameter, uniform current',
        1.5089,
        'uH',
        0.00005,
        () => straightWireInductance({ length: 1, diameter: 1e-3, current: 'uniform' }) * 1e6,
      ],
      [
        'rosa-1m-uniform-full',
        'the same to more digits',
        1.50890991552041,
        'uH',
        5e-15,
        () => straightWireInductance({ length: 1, diameter: 1e-3, current: 'uniform' }) * 1e6,
      ],
      [
        'rosa-10cm-uniform-full',
        'inductance of 10 cm of wire of 1 mm diameter, uniform current',
        0.10492916594255,
        'uH',
        5e-15,
        () => straightWireInductance({ length: 0.1, diameter: 1e-3, current: 'uniform' }) * 1e6,
      ],
      [
        'rosa-3m-uniform-full',
        'inductance of 3 m of wire of 2 mm diameter, uniform current',
        4.76990883225945,
        'uH',
        5e-15,
        () => straightWireInductance({ length: 3, diameter: 2e-3, current: 'uniform' }) * 1e6,
      ],
    ],
    'rosa-1908',
  ),
  ...rows('Coaxial line at 100 MHz, worked example of an uncertainty calculator (suncal)', 'published', [
    ['coax-l', 'inductance by length', 0.2328, 'uH/m', 0.00005, () => line.inductance * 1e6],
    ['coax-c', 'capacitance by length', 30.81, 'pF/ft', 0.005, () => line.capacitance * 12 * inch * 1e12],
    ['coax-velocity', 'velocity over that of light', 0.6876, '1', 0.00005, () => line.velocity / light],
    ['coax-z0', 'characteristic impedance', 47.98, 'ohm', 0.005, () => line.characteristicImpedance],
  ]),
  ...rows('Coil of one layer with the coefficient of Nagaoka, worked example (suncal)', 'published', [
    [
      'nagaoka-coil',
      'inductance of 100 turns of 2.7 mm radius and 9 mm length',
      25.22,
      'uH',
      0.005,
      () => solenoidInductance({ diameter: 5.4e-3, length: 9e-3, turns: 100 }) * 1e6,
    ],
  ]),
  ...rows('Constants of lines from electrostatics, computed independently', 'derived', [
    ['two-wire-l', 'two wires, spacing 20 diameters: inductance', 1.4753, 'uH/m', 0.00005, () => pair.inductance * 1e6],
    [
      'two-wire-c',
      'two wires, spacing 20 diameters: capacitance',
      7.542,
      'pF/m',
      0.0005,
      () => pair.capacitance * 1e12,
    ],
    [
      'coax-air-c',
      'coaxial 1:3.5, permittivity 2.25: capacitance',
      99.92,
      'pF/m',
      0.005,
      () => cable.capacitance * 1e12,
    ],
    ['coax-air-l', 'coaxial 1:3.5: inductance', 250.6, 'nH/m', 0.05, () => cable.inductance * 1e9],
    [
      'coax-air-z0',
      'coaxial 1:3.5: characteristic impedance',
      50.08,
      'ohm',
      0.005,
      () => cable.characteristicImpedance,
    ],
  ]),
  ...rows('Skin depth of copper, 1.68e-8 ohm m, computed independently', 'derived', [
    ...depths.map(
      ([name, frequency, micrometres]): CheckRow => [
        `skin-depth-${name}`,
        `skin depth of copper at ${frequency / 1e3} kHz`,
        micrometres,
        'um',
        0.05,
        () => skinDepth({ resistivity: copper, frequency }) * 1e6,
      ],
    ),
  ]),
  ...rows('Resistance of a round wire by Bessel functions, 40 digits (mpmath)', 'derived', [
    [
      'wire-ratio-5',
      'RF over DC resistance, radius of 5 skin depths',
      2.76810760073,
      '1',
      5e-12,
      () => {
        const conductor = { resistivity: copper, frequency: 1e6 };
        return roundWireResistance({ ...conductor, diameter: 10 * skinDepth(conductor), length: 1 }).ratio;
      },
    ],
  ]),
  ...rows('Phase of 8.5 degrees at 2.5 MHz, computed independently', 'derived', [
    ['phase-tan', 'tangent of 8.5 degrees', 0.14945, '1', 5e-6, () => Math.tan(testLoadPhase.phase)],
    ['phase-cos', 'power factor at 8.5 degrees', 0.98902, '1', 5e-6, () => Math.cos(testLoadPhase.phase)],
    ...phaseLoads.flatMap(([load, L, toleranceL, C, toleranceC]): CheckRow[] => [
      [
        `phase-l-${load}`,
        `L that turns ${load} ohm by 8.5 degrees`,
        L,
        'uH',
        toleranceL,
        () => strays(load).seriesInductance * 1e6,
      ],
      [
        `phase-c-${load}`,
        `C that turns ${load} ohm by 8.5 degrees`,
        C,
        'pF',
        toleranceC,
        () => strays(load).parallelCapacitance * 1e12,
      ],
    ]),
    [
      'phase-c-2000',
      'C that turns 2000 ohm by 8.5 degrees',
      4.76,
      'pF',
      0.005,
      () => strays(2000).parallelCapacitance * 1e12,
    ],
  ]),
  ...rows('Peak voltage from power, load and crest factor', 'derived', [
    [
      'peak-300-sine',
      '300 W in 500 ohm, sine',
      547.7,
      'V',
      0.05,
      () => peakVoltage({ power: 300, load: 500, crestFactor: Math.SQRT2 }),
    ],
    [
      'peak-120-cf7',
      '120 W in 500 ohm, crest factor 7',
      1714.6,
      'V',
      0.05,
      () => peakVoltage({ power: 120, load: 500, crestFactor: 7 }),
    ],
  ]),
  ...rows('Abstracts that cite ANSI/AAMI HF18: 700 mA for 60 s', 'published', [
    [
      'neutral-heating',
      'heating factor of the test of neutral electrodes',
      29.4,
      'A^2 s',
      0.05,
      () => heatingFactor({ current: 0.7, duration: 60 }),
    ],
  ]),
  ...rows(
    'IEC 60601-2-2, rating of the voltmeter: 150 % of the expected peak',
    'from memory',
    [['voltmeter-rating', 'rating of a voltmeter for a peak of 1000 V', 1500, 'V', 0.5, () => voltmeterRating(1000)]],
    'iec-60601-2-2-memory',
  ),
  ...rows(
    'IEC 60601-2-2, accessory voltage rule',
    'from memory',
    [
      ['accessory-1600', 'least crest factor just above 1600 V', 2, '1', 0.05, () => leastCrestFactor(1600.001)],
      ['accessory-4000', 'least crest factor at 4000 V', 6, '1', 0.05, () => leastCrestFactor(4000)],
    ],
    'iec-60601-2-2-memory',
  ),
];

function leastCrestFactor(volts: number): number {
  return accessoryRating({ peakVoltage: volts, accessoryRating: volts, crestFactor: 9 }).leastCrestFactor ?? 0;
}

function voltmeterRating(volts: number): number {
  return peakRatings({ peakVoltage: volts, ratings: { instrument: 1 } }).parts[0]?.neededRating ?? 0;
}
