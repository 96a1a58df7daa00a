import {
  contactCurrentGuidance,
  leadCapacitance,
  leakageAtNominal,
  leakageFromStray,
  leakageLimit,
  strayFromLeakage,
} from '../../src/leakage/index.js';
import { type Check, type CheckRow, rowsOf } from './check.js';

const rows = rowsOf('leakage');

const atLeads = leakageLimit({ arrangement: 'isolated', measuredAt: 'leads' });
const atTerminals = leakageLimit({
  arrangement: 'earth-referenced-load-between-electrodes',
  measuredAt: 'terminals',
});
const bipolar = (ratedPower: number): number =>
  leakageLimit({ arrangement: 'bipolar', measuredAt: 'leads', ratedPower }).current * 1000;

/** Rated bipolar power in watts and its limit in milliamperes. */
const bipolarLimits = [
  [50, 50],
  [70, 59.16],
  [80, 63.25],
  [90, 67.08],
  [100, 70.71],
] as const;

/** 5 Ω and 100 µF in series at 10 V, 60 Hz: the book prints the voltage across the resistor and the current. */
const seriesRc = { voltage: 10, capacitance: 100e-6, frequency: 60, measuringResistance: 5 };

/** The two wires of a line are each other's image: a plane between them doubles the capacitance by length. */
const overPlane = leadCapacitance({
  length: 1,
  conductorDiameter: 1e-3,
  insulationDiameter: 1e-3,
  gap: 9.5e-3,
  relativePermittivity: 1,
});

/** Read at 210 Ω through 500 pF at 500 kHz, taken apart by hand: √(210² + X²)/√(200² + X²), X = 636.61977 Ω. */
const throughStray = leakageAtNominal({
  current: 0.12,
  measuringResistance: 210,
  source: { kind: 'capacitance', capacitance: 500e-12, frequency: 500e3 },
});

export const leakageChecks: readonly Check[] = [
  ...rows(
    'IEC 60601-2-2, HF leakage, from memory: check your copy of the standard',
    'from memory',
    [
      ['leakage-limit-leads', 'limit through 200 ohm at the leads', 150, 'mA', 0.5, () => atLeads.current * 1000],
      ['leakage-limit-terminals', 'limit at the terminals', 100, 'mA', 0.5, () => atTerminals.current * 1000],
    ],
    'iec-60601-2-2-memory',
  ),
  ...rows('Measuring resistor of IS 7583:1991', 'published', [
    ['leakage-resistor', 'measuring resistor', 200, 'ohm', 0.5, () => atLeads.measuringResistance],
  ]),
  ...rows('HF leakage in 200 ohm, from the limits by Ohm and Joule', 'derived', [
    ['leakage-leads-v', 'voltage of 150 mA in 200 ohm', 30, 'V', 0.05, () => atLeads.voltage],
    ['leakage-leads-p', 'power of 150 mA in 200 ohm', 4.5, 'W', 0.005, () => atLeads.power],
    ['leakage-terminals-v', 'voltage of 100 mA in 200 ohm', 20, 'V', 0.5, () => atTerminals.voltage],
    ['leakage-terminals-p', 'power of 100 mA in 200 ohm', 2, 'W', 0.005, () => atTerminals.power],
    ...bipolarLimits.map(
      ([power, limit]): CheckRow => [
        `leakage-bipolar-${power}w`,
        `bipolar limit at ${power} W rated`,
        limit,
        'mA',
        0.005,
        () => bipolar(power),
      ],
    ),
  ]),
  ...rows(
    'ICNIRP (2010), reference levels for contact currents, as reproduced in a textbook',
    'secondary',
    [
      ['contact-occupational', 'at work', 40, 'mA', 0.5, () => contactCurrentGuidance.occupational * 1000],
      ['contact-public', 'for the public', 20, 'mA', 0.5, () => contactCurrentGuidance.public * 1000],
    ],
    'icnirp-2010',
  ),
  ...rows('Kuphaldt, Lessons in Electric Circuits vol. II, series resistor-capacitor circuits', 'published', [
    [
      'kuphaldt-rc-i',
      'I of 10 V through 100 uF and 5 ohm at 60 Hz',
      0.3705,
      'A',
      0.00005,
      () => leakageFromStray(seriesRc).current,
    ],
    [
      'kuphaldt-rc-vr',
      'V across the resistor',
      1.8523,
      'V',
      0.00005,
      () => leakageFromStray(seriesRc).current * seriesRc.measuringResistance,
    ],
    [
      'kuphaldt-rc-z',
      'Z of 40 ohm and 88.42 uF at 60 Hz',
      50,
      'ohm',
      0.5,
      () => 1 / leakageFromStray({ voltage: 1, capacitance: 88.42e-6, frequency: 60, measuringResistance: 40 }).current,
    ],
    [
      'kuphaldt-rc-c',
      'C that makes 50 ohm with 40 ohm at 60 Hz',
      88.42,
      'uF',
      0.005,
      () => strayFromLeakage({ voltage: 50, current: 1, frequency: 60, measuringResistance: 40 }).capacitance * 1e6,
    ],
  ]),
  ...rows(
    'Electrostatics of two wires, computed independently: twice their capacitance to the plane between',
    'derived',
    [
      [
        'wire-over-plane-c',
        'wire of 1 mm, axis 10 mm over a plane',
        15.084,
        'pF',
        0.0005,
        () => overPlane.lower * 1e12,
      ],
    ],
  ),
  ...rows('A voltage behind a capacitance, computed independently', 'derived', [
    [
      'leakage-through-500pf',
      '120 mA at 210 ohm as at 200 ohm',
      120.551,
      'mA',
      0.0005,
      () => throughStray.current * 1e3,
    ],
  ]),
];
