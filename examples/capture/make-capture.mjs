// Makes coagulation.csv, an invented capture: bursts of a damped sine into a load of 500 ohm with 12 pF across it, as an
// oscilloscope of 8 bits with noise writes them down. `node make-capture.mjs --write` writes the file; without it, the
// script only says whether the file is still what it makes.
import { readFileSync, writeFileSync } from 'node:fs';

const file = new URL('coagulation.csv', import.meta.url);
const samples = 12_500;
const sampleInterval = 40e-9;
const [frequency, timeConstant, repetitionRate, amplitude] = [420e3, 3e-6, 22e3, 1545];
const [load, capacitance] = [500, 12e-12];
// The voltage probe is allowed for in the oscilloscope; the current probe gives 1 V for 2 A, and its channel shows volts.
const [voltageStep, currentStep, amperesForVolt] = [16, 0.016, 2];

/** Voltage and its slope, a time after the last burst began. */
function outputAt(time) {
  const since = time - Math.floor(time * repetitionRate) / repetitionRate;
  const omega = 2 * Math.PI * frequency;
  const envelope = amplitude * Math.exp(-since / timeConstant);
  const voltage = envelope * Math.sin(omega * since);
  return { voltage, slope: envelope * omega * Math.cos(omega * since) - voltage / timeConstant };
}

/** Noise between -1 and 1 that is the same at every run: a linear congruential generator. */
let state = 20_261;
function noise() {
  state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
  return state / 2 ** 31 - 1;
}

const stepped = (value, step, decimals) =>
  (step * Math.round(value / step)).toFixed(decimals).replace(/^-0(\.0*)?$/, '0$1');
const rows = [
  'Note,Invented capture: no such generator exists',
  `Samples,${samples}`,
  'Sample interval,40,ns',
  'CH1,CH2',
  'V,V',
];
for (let k = 0; k < samples; k++) {
  const { voltage, slope } = outputAt(k * sampleInterval + 17e-6);
  const current = voltage / load + capacitance * slope;
  rows.push(
    [
      stepped(voltage + 8 * noise(), voltageStep, 0),
      stepped(current / amperesForVolt + 0.008 * noise(), currentStep, 3),
    ].join(','),
  );
}
const text = `${rows.join('\r\n')}\r\n`;

if (process.argv.includes('--write')) {
  writeFileSync(file, text);
} else if (readFileSync(file, 'utf8') !== text) {
  console.error('coagulation.csv is not what this script makes: run it with --write.');
  process.exitCode = 1;
} else {
  console.log(`coagulation.csv is what this script makes: ${samples} samples, ${text.length} characters`);
}
