import {
  assessContact,
  contactImpedance,
  contactLimits,
  electrodeHeating,
  foilCurrents,
  heatingFigures,
  thermalTest,
} from '../../src/electrode/index.js';
import { type Check, rowsOf } from './check.js';

const rows = rowsOf('electrode');

const degrees = 180 / Math.PI;
const adult = thermalTest(70);
const limitAt = (frequency: number): number => assessContact({ kind: 'capacitive', impedance: 0, frequency }).limit;

/** 250 Ω beside 1.5 µF at 120 V, 60 Hz: two branches of a worked example as two foils. */
const branches = foilCurrents({
  current: 120 / contactImpedance({ resistance: 250, capacitance: 1.5e-6 }, 60).impedance,
  frequency: 60,
  foils: [{ resistance: 250 }, { capacitance: 1.5e-6 }],
});
const seriesOf5 = contactImpedance({ capacitance: 100e-6, seriesResistance: 5 }, 60);
const seriesOf40 = contactImpedance({ capacitance: 88.42e-6, seriesResistance: 40 }, 60);

/** 30 Ω beside 10 nF behind 40 Ω, against 300 Ω beside 1 nF behind 40 Ω, at 500 kHz. */
const worn = foilCurrents({
  current: 1,
  frequency: 500e3,
  foils: [
    { resistance: 30, capacitance: 10e-9, seriesResistance: 40 },
    { resistance: 300, capacitance: 1e-9, seriesResistance: 40 },
  ],
});

export const electrodeChecks: readonly Check[] = [
  ...rows(
    'ANSI/AAMI HF18, as cited in published abstracts',
    'published',
    [
      ['thermal-current', 'test current', 700, 'mA', 0.5, () => adult.current * 1000],
      ['thermal-duration', 'length of the test', 60, 's', 0.5, () => adult.duration],
      ['thermal-rise', 'highest rise', 6, 'K', 0.5, () => adult.maximumRise],
    ],
    'aami-hf18',
  ),
  ...rows('700 mA for 60 s, by the definition of the heating factor', 'derived', [
    ['thermal-heating-factor', 'heating factor of the test', 29.4, 'A^2 s', 0.05, () => adult.heatingFactor],
    [
      'thermal-heating-figure',
      'the figure that stands for it',
      29.4,
      'A^2 s',
      0.05,
      () => heatingFigures['thermal-test'].heatingFactor,
    ],
    [
      'thermal-heating-sum',
      'the same in three activations',
      29.4,
      'A^2 s',
      0.05,
      () =>
        electrodeHeating({ activations: [10, 20, 30].map((t) => ({ current: 0.7, duration: t })), figure: 30 })
          .heatingFactor,
    ],
  ]),
  ...rows('Heating factor that is commonly quoted (ECRI)', 'secondary', [
    ['heating-quoted', 'heating factor', 30, 'A^2 s', 0.5, () => heatingFigures['commonly-quoted'].heatingFactor],
  ]),
  ...rows(
    'IEC 60601-2-2, neutral electrodes, from memory: check your copy of the standard',
    'from memory',
    [
      ['thermal-small', 'test current below 5 kg', 350, 'mA', 0.5, () => thermalTest(4.9).current * 1000],
      ['thermal-medium', 'test current of 5 kg to 15 kg', 500, 'mA', 0.5, () => thermalTest(10).current * 1000],
      ['contact-conductive', 'contact impedance', 50, 'ohm', 0.5, () => contactLimits.conductiveImpedance],
      ['contact-capacitive', 'contact capacitance', 4, 'nF', 0.5, () => contactLimits.capacitance * 1e9],
    ],
    'iec-60601-2-2-memory',
  ),
  ...rows('Impedance of 4 nF, computed independently', 'derived', [
    ['contact-4nf-50k', 'at 50 kHz', 795.775, 'ohm', 0.0005, () => limitAt(50e3)],
    ['contact-4nf-500k', 'at 500 kHz', 79.5775, 'ohm', 0.00005, () => limitAt(500e3)],
    ['contact-4nf-5m', 'at 5 MHz', 7.95775, 'ohm', 0.000005, () => limitAt(5e6)],
  ]),
  ...rows('Kuphaldt, Lessons in Electric Circuits vol. II, parallel R, L and C', 'published', [
    ['foils-kuphaldt-ir', 'I of 250 ohm beside 1.5 uF', 0.48, 'A', 0.005, () => branches.foils[0].current],
    ['foils-kuphaldt-ic', 'I of 1.5 uF beside 250 ohm', 0.06786, 'A', 0.000005, () => branches.foils[1].current],
  ]),
  ...rows('Kuphaldt, Lessons in Electric Circuits vol. II, series resistor-capacitor circuits', 'published', [
    ['foil-kuphaldt-phase', 'phase of 5 ohm and 100 uF', -79.325, 'deg', 0.0005, () => seriesOf5.phase * degrees],
    ['foil-kuphaldt-z', 'Z of 40 ohm and 88.42 uF', 50, 'ohm', 0.5, () => seriesOf40.impedance],
    ['foil-kuphaldt-40-phase', 'phase of 40 ohm and 88.42 uF', -36.87, 'deg', 0.005, () => seriesOf40.phase * degrees],
  ]),
  ...rows('Current divider in complex arithmetic, computed independently', 'derived', [
    ['foils-worn-first', 'share of the good foil', 0.82059016, '1', 5e-9, () => worn.foils[0].share],
    ['foils-worn-second', 'share of the worn foil', 0.19071926, '1', 5e-9, () => worn.foils[1].share],
  ]),
];
