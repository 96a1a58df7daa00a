// From a two-channel capture to power, crest factor and a verdict, each with its uncertainty. Everything here is invented:
// the bench is that of the equipment workshop of a veterinary teaching hospital.
//
// Such outputs burn and kill. Connect the probes with the output off, keep hands and other people away from the load and
// the leads, and use probes that are rated for the peak voltage at this frequency. The maker's procedure comes first.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { accessoryRating, bandAround, peakRatings } from 'esu-limits';
import { decide } from 'esu-limits/decision';
import { readCaptureCsv } from 'esu-limits/schema';
import { captureBudget, expandedUncertainty, roundUncertainty } from 'esu-limits/uncertainty';
import { analyseCapture } from 'esu-limits/waveform';

const here = new URL('.', import.meta.url);

// 1. The file. Both channels show volts, so it has to be said which of them is the current.
const samples = readCaptureCsv(readFileSync(new URL('coagulation.csv', here), 'utf8'), {
  columns: ['voltage', 'current'],
});

// 2. The figures: the current probe gives 1 V for 2 A.
const amperesForVolt = 2;
const analysis = analyseCapture({
  ...samples,
  currentFactor: amperesForVolt,
  expectedCarrier: 420e3,
  converter: { voltage: { lowest: -2048, highest: 2032 }, current: { lowest: -2.048, highest: 2.032 } },
});

// 3. Their uncertainty, from what the makers of oscilloscope and probes state.
const { figures, warnings } = captureBudget({
  analysis,
  sampleInterval: samples.sampleInterval,
  voltage: { step: 16, scale: 0.015, probe: 0.02, offset: 4, noise: 5 },
  current: { step: 0.016 * amperesForVolt, scale: 0.015, probe: 0.02, offset: 0.008, noise: 0.01 },
  skew: 4e-9,
  timeBase: 25e-6,
});

const lines = [];
const say = (text) => lines.push(text);

/** A figure with its expanded uncertainty, 95 %. */
function stated(figure, unit, scale = 1) {
  const { value, standardUncertainty, degreesOfFreedom } = figure;
  const { expandedUncertainty: U } = expandedUncertainty({ standardUncertainty, degreesOfFreedom });
  const rounded = roundUncertainty(value * scale, U * scale);
  const digits = Math.max(rounded.decimals, 0);
  return `${rounded.value.toFixed(digits)} ± ${rounded.uncertainty.toFixed(digits)} ${unit}`.trim();
}

const { window } = analysis;
say(`window: ${window.count} whole ${window.kind}, ${(window.duration * 1e6).toFixed(1)} µs`);
say(`power: ${stated(figures.activePower, 'W')}`);
say(`voltage: ${stated(figures.voltageRms, 'V')} rms, ${stated(figures.voltagePeak, 'V')} peak`);
say(`current: ${stated(figures.currentRms, 'mA', 1000)} rms`);
say(`crest factor: ${stated(figures.voltageCrestFactor, '')}`);
say(`power factor: ${stated(figures.powerFactor, '')}`);
say(`carrier: ${stated(figures.carrierFrequency, 'kHz', 1e-3)}`);
say(`bursts: ${stated(figures.repetitionRate, 'kHz', 1e-3)}`);
// Where the last crest of bursts that ring off is hardly above the threshold, noise decides whether it counts.
say(`duty cycle above a tenth of the peak: ${stated(figures.dutyCycle, '%', 100)}`);
say(`energy of a burst: ${stated(figures.burstEnergy, 'mJ', 1000)}`);

// 4. The verdict: 80 W into 500 ohm within 20 %, with a guard band of the expanded uncertainty.
const band = bandAround(80, { relative: 0.2 });
const { value, standardUncertainty } = figures.activePower;
const { coverageFactor } = expandedUncertainty({ standardUncertainty });
const verdict = decide({
  band,
  value,
  standardUncertainty,
  coverageFactor,
  rule: { kind: 'guarded-acceptance', ratio: 1 },
});
say(
  `verdict: ${verdict.decision} (limits ${band.lower} W to ${band.upper} W, accepted from ${verdict.acceptance.lower.toFixed(1)} W to ${verdict.acceptance.upper.toFixed(1)} W)`,
);

// 5. Is what meets this voltage rated for it? The rules are from memory: check your copy of the standard.
const peak = figures.voltagePeak;
const highest = peak.value + 2 * peak.standardUncertainty;
const ratings = peakRatings({ peakVoltage: highest, ratings: { instrument: 2500, leads: 3000, load: 2000 } });
say(
  `ratings: ${ratings.sufficient ? 'sufficient' : 'NOT sufficient'} for ${highest.toFixed(0)} V (${ratings.standing})`,
);
const accessory = accessoryRating({
  peakVoltage: highest,
  accessoryRating: 3000,
  crestFactor: figures.voltageCrestFactor.value,
});
say(`accessory rated 3000 V peak: ${accessory.verdict} (${accessory.standing})`);
for (const { message } of warnings) say(`warning: ${message}`);

const out = new URL('out/', here);
mkdirSync(out, { recursive: true });
writeFileSync(new URL('capture.txt', out), `${lines.join('\n')}\n`);
console.log(lines.join('\n'));
