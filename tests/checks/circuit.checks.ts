import {
  complexLoadPower,
  crestFactor,
  currentFromPower,
  currentFromVoltage,
  peakFromRms,
  peakVoltage,
  powerFromCurrent,
  powerFromVoltage,
  rmsFromPeak,
  solveOhmic,
  voltageFromCurrent,
  voltageFromPower,
} from '../../src/circuit/index.js';
import { type Check, rowsOf } from './check.js';

const degrees = 180 / Math.PI;
const inductive = (frequency: number, inductance: number): number => 2 * Math.PI * frequency * inductance;
const capacitive = (frequency: number, capacitance: number): number => -1 / (2 * Math.PI * frequency * capacitance);

const published = rowsOf('circuit');

const collegeAt = (f: number) =>
  complexLoadPower({ resistance: 40, reactance: inductive(f, 0.003) + capacitive(f, 5e-6), voltage: 120 });
const resonance = 1 / (2 * Math.PI * Math.sqrt(0.003 * 5e-6));
const university = complexLoadPower({
  resistance: 4,
  reactance: inductive(200, 0.003) + capacitive(200, 0.0008),
  voltage: rmsFromPeak(0.1, Math.SQRT2),
});
/** Of v = 4.00 sin(1e4 t). The book's 0.801 W comes from squaring rounded values (exact: 0.800 W): it is no check. */
const sourceOf4 = complexLoadPower({
  resistance: 5,
  reactance: 1e4 * 0.002 - 1 / (1e4 * 4e-6),
  voltage: rmsFromPeak(4, Math.SQRT2),
});

const series = complexLoadPower({
  resistance: 250,
  reactance: inductive(60, 0.65) + capacitive(60, 1.5e-6),
  voltage: 120,
});
const coil = complexLoadPower({ resistance: 5, reactance: inductive(60, 0.01), voltage: 10 });
const lagging = complexLoadPower({ resistance: 60, reactance: inductive(60, 0.16), voltage: 120 });

/** Three branches at one voltage: their active and reactive powers add, and so give the current of the source. */
function sourceCurrent(voltage: number, branches: readonly (readonly [number, number])[]): number {
  const powers = branches.map(([resistance, reactance]) => complexLoadPower({ resistance, reactance, voltage }));
  const active = powers.reduce((sum, { activePower }) => sum + activePower, 0);
  const reactive = powers.reduce((sum, { reactivePower }) => sum + reactivePower, 0);
  return Math.hypot(active, reactive) / voltage;
}

/** Rms value of a sine of peak 1, by summing squares over whole periods. */
function rmsOfSampledSine(samples: number): number {
  let sum = 0;
  for (let k = 0; k < samples; k++) sum += Math.sin((2 * Math.PI * 3 * k) / samples) ** 2;
  return Math.sqrt(sum / samples);
}

const leakage = 'HF leakage in 200 ohm, from the limits by Ohm and Joule';

export const circuitChecks: readonly Check[] = [
  ...published('OpenStax, College Physics 2e, section 23.12, RLC series circuit', 'published', [
    ['college-rlc-z-60', 'Z of 40 ohm, 3 mH, 5 uF at 60 Hz', 531, 'ohm', 0.5, () => collegeAt(60).impedance],
    ['college-rlc-i-60', 'I at 120 V, 60 Hz', 0.226, 'A', 0.0005, () => collegeAt(60).current],
    ['college-rlc-pf-60', 'power factor at 60 Hz', 0.0753, '1', 0.00005, () => collegeAt(60).powerFactor],
    // The book prints the magnitude: the load is capacitive there, and the phase of the voltage negative.
    ['college-rlc-phase-60', 'phase at 60 Hz, magnitude', 85.7, 'deg', 0.05, () => -collegeAt(60).phase * degrees],
    ['college-rlc-p-60', 'P at 60 Hz', 2.04, 'W', 0.005, () => collegeAt(60).activePower],
    ['college-rlc-z-10k', 'Z at 10 kHz', 190, 'ohm', 0.5, () => collegeAt(1e4).impedance],
    ['college-rlc-i-10k', 'I at 10 kHz', 0.633, 'A', 0.0005, () => collegeAt(1e4).current],
    ['college-rlc-i-resonance', 'I at resonance', 3, 'A', 0.05, () => collegeAt(resonance).current],
    ['college-rlc-p-resonance', 'P at resonance', 360, 'W', 0.5, () => collegeAt(resonance).activePower],
  ]),
  ...published('OpenStax, University Physics vol. 2, section 15.3, RLC series circuits with AC', 'published', [
    ['university-rlc-z', 'Z of 4 ohm, 3 mH, 0.8 mF at 200 Hz', 4.87, 'ohm', 0.005, () => university.impedance],
    [
      'university-rlc-i',
      'peak I at 0.1 V peak',
      0.0205,
      'A',
      0.00005,
      () => peakFromRms(university.current, Math.SQRT2),
    ],
    ['university-rlc-phase', 'phase', 0.607, 'rad', 0.0005, () => university.phase],
  ]),
  ...published('OpenStax, University Physics vol. 2, section 15.4, power in an AC circuit', 'published', [
    ['university-power-v', 'rms of 4.00 V peak', 2.83, 'V', 0.005, () => sourceOf4.voltage],
    ['university-power-z', 'Z of 5 ohm, 2 mH, 4 uF at 10 krad/s', 7.07, 'ohm', 0.005, () => sourceOf4.impedance],
  ]),
  ...published('OpenStax, University Physics vol. 2, section 15.2, simple AC circuits', 'published', [
    ['university-simple-r', 'I of 10 V in 100 ohm', 0.1, 'A', 0.0005, () => currentFromVoltage(10, 100)],
    [
      'university-simple-c',
      'I of 10 V in 10 uF at 60 Hz',
      0.038,
      'A',
      0.0005,
      () => complexLoadPower({ resistance: 0, reactance: capacitive(60, 1e-5), voltage: 10 }).current,
    ],
    [
      'university-simple-l',
      'I of 10 V in 15 mH at 60 Hz',
      1.8,
      'A',
      0.05,
      () => complexLoadPower({ resistance: 0, reactance: inductive(60, 0.015), voltage: 10 }).current,
    ],
  ]),
  ...published('Kuphaldt, Lessons in Electric Circuits vol. II, series R, L and C', 'published', [
    ['kuphaldt-series-i', 'I of 250 ohm, 0.65 H, 1.5 uF at 120 V, 60 Hz', 0.07773, 'A', 0.000005, () => series.current],
    ['kuphaldt-series-phase', 'phase of the current ahead', 80.68, 'deg', 0.005, () => -series.phase * degrees],
    ['kuphaldt-series-vr', 'V across R', 19.43, 'V', 0.005, () => voltageFromCurrent(series.current, 250)],
    [
      'kuphaldt-series-vl',
      'V across L',
      19.05,
      'V',
      0.005,
      () => complexLoadPower({ resistance: 0, reactance: inductive(60, 0.65), current: series.current }).voltage,
    ],
    [
      'kuphaldt-series-vc',
      'V across C: above the source',
      137.46,
      'V',
      0.005,
      () => complexLoadPower({ resistance: 0, reactance: capacitive(60, 1.5e-6), current: series.current }).voltage,
    ],
  ]),
  ...published('Kuphaldt, Lessons in Electric Circuits vol. II, parallel R, L and C', 'published', [
    ['kuphaldt-parallel-ir', 'I in R', 0.48, 'A', 0.005, () => currentFromVoltage(120, 250)],
    [
      'kuphaldt-parallel-il',
      'I in L',
      0.4897,
      'A',
      0.00005,
      () => complexLoadPower({ resistance: 0, reactance: inductive(60, 0.65), voltage: 120 }).current,
    ],
    [
      'kuphaldt-parallel-ic',
      'I in C',
      0.06786,
      'A',
      0.000005,
      () => complexLoadPower({ resistance: 0, reactance: capacitive(60, 1.5e-6), voltage: 120 }).current,
    ],
    [
      'kuphaldt-parallel-i',
      'I of the source, from the sums of active and reactive power',
      0.639,
      'A',
      0.0005,
      () =>
        sourceCurrent(120, [
          [250, 0],
          [0, inductive(60, 0.65)],
          [0, capacitive(60, 1.5e-6)],
        ]),
    ],
  ]),
  ...published('Kuphaldt, Lessons in Electric Circuits vol. II, series R and L', 'published', [
    ['kuphaldt-rl-z', 'Z of 5 ohm, 10 mH at 60 Hz', 6.262, 'ohm', 0.0005, () => coil.impedance],
    ['kuphaldt-rl-phase', 'phase', 37.016, 'deg', 0.0005, () => coil.phase * degrees],
    ['kuphaldt-rl-i', 'I at 10 V', 1.597, 'A', 0.0005, () => coil.current],
    ['kuphaldt-rl-vr', 'V across R', 7.9847, 'V', 0.00005, () => voltageFromCurrent(coil.current, 5)],
    [
      'kuphaldt-rl-vl',
      'V across L',
      6.0203,
      'V',
      0.00005,
      () => complexLoadPower({ resistance: 0, reactance: inductive(60, 0.01), current: coil.current }).voltage,
    ],
  ]),
  ...published('Kuphaldt, Lessons in Electric Circuits vol. II, power factor', 'published', [
    ['kuphaldt-pf-z', 'Z of 60 ohm, 160 mH at 60 Hz', 85.078, 'ohm', 0.0005, () => lagging.impedance],
    ['kuphaldt-pf-phase', 'phase', 45.152, 'deg', 0.0005, () => lagging.phase * degrees],
    ['kuphaldt-pf-i', 'I at 120 V', 1.41, 'A', 0.005, () => lagging.current],
    ['kuphaldt-pf-p', 'active power', 119.365, 'W', 0.0005, () => lagging.activePower],
    ['kuphaldt-pf-q', 'reactive power', 119.998, 'var', 0.0005, () => lagging.reactivePower],
    ['kuphaldt-pf-s', 'apparent power', 169.256, 'VA', 0.0005, () => lagging.apparentPower],
    ['kuphaldt-pf-pf', 'power factor', 0.705, '1', 0.0005, () => lagging.powerFactor],
    [
      'kuphaldt-pf-corrected',
      'I of the source with 22 uF in parallel',
      0.9947,
      'A',
      0.00005,
      () =>
        sourceCurrent(120, [
          [60, inductive(60, 0.16)],
          [0, capacitive(60, 2.2e-5)],
        ]),
    ],
  ]),
  ...published('Kuphaldt, Lessons in Electric Circuits vol. I, maximum power transfer', 'published', [
    [
      'kuphaldt-maximum-power',
      'P in 0.8 ohm of 11.2 V behind 0.8 ohm',
      39.2,
      'W',
      0.05,
      () => powerFromCurrent(currentFromVoltage(11.2, 1.6), 0.8),
    ],
  ]),
  ...published('crest factor and peak voltage from first principles', 'derived', [
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the value as it was published, not the constant
    ['sine-crest-factor', 'sine', 1.4142, '1', 0.00005, () => crestFactor({ peak: 1, rms: rmsOfSampledSine(1200) })],
    [
      'sine-peak-voltage',
      '300 W, 500 ohm, sine',
      547.7,
      'V',
      0.05,
      () => peakVoltage({ power: 300, load: 500, crestFactor: Math.SQRT2 }),
    ],
    [
      'coagulation-peak-voltage',
      '120 W, 500 ohm, crest factor 7',
      1714.6,
      'V',
      0.05,
      () => peakVoltage({ power: 120, load: 500, crestFactor: 7 }),
    ],
  ]),
  ...published('phase of a test load of 8.5 degrees, from first principles', 'derived', [
    [
      'phase-100-ohm',
      '100 ohm with 0.951 uH at 2.5 MHz',
      8.5,
      'deg',
      0.05,
      () => complexLoadPower({ resistance: 100, reactance: inductive(2.5e6, 0.951e-6), current: 1 }).phase * degrees,
    ],
    [
      'phase-power-factor',
      'power factor at tan = 0.14945',
      0.98902,
      '1',
      0.000005,
      () => complexLoadPower({ resistance: 1, reactance: 0.14945, current: 1 }).powerFactor,
    ],
  ]),
  ...published(leakage, 'derived', [
    ['leakage-150-ma-voltage', '150 mA', 30, 'V', 0.05, () => voltageFromCurrent(0.15, 200)],
    ['leakage-150-ma-power', '150 mA', 4.5, 'W', 0.005, () => powerFromCurrent(0.15, 200)],
    ['leakage-100-ma-voltage', '100 mA', 20, 'V', 0.5, () => solveOhmic({ current: 0.1, load: 200 }).voltage],
    ['leakage-100-ma-power', '100 mA', 2, 'W', 0.005, () => powerFromVoltage(voltageFromCurrent(0.1, 200), 200)],
    ['leakage-bipolar-50', '1 % of 50 W', 0.05, 'A', 0.000005, () => currentFromPower(0.5, 200)],
    ['leakage-bipolar-70', '1 % of 70 W', 0.05916, 'A', 0.000005, () => currentFromPower(0.7, 200)],
    ['leakage-bipolar-90', '1 % of 90 W', 0.06708, 'A', 0.000005, () => voltageFromPower(0.9, 200) / 200],
  ]),
];
