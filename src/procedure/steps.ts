import { type Band, marginIn } from '../band/index.js';
import {
  carriedPowerFormula,
  correctedValueFormula,
  differenceFormula,
  marginAboveFormula,
  marginBelowFormula,
  middleOfBandFormula,
  powerOfSettingFormula,
  readingRatioCurrentFormula,
  readingRatioPowerFormula,
  readingRatioVoltageFormula,
  relativeDifferenceFormula,
  scaledPowerFormula,
  sourceCurrentRatioFormula,
  statedPowerFormula,
} from '../working/formulas/procedure.js';
import { type Step, step, type UnitName } from '../working/index.js';

// The arithmetic of this room, each as a step of a working: the value of the step is the value that is used.

/** Power of a setting in watts, into the rated load. */
export function powerOfSetting(setting: number): Step {
  return step(powerOfSettingFormula, 'expected power', { s: setting }, setting);
}

/** Power that the sheet states for a point. */
export function statedPower(power: number): Step {
  return step(statedPowerFormula, 'expected power', { P_stated: power }, power);
}

/** Power at a setting without a curve of its own, from a curve at another setting. */
export function scaledPower(curvePower: number, setting: number, curveSetting: number): Step {
  const value = (curvePower * setting) / curveSetting;
  const inputs = { P_c: curvePower, s: setting, s_c: curveSetting };
  return step(scaledPowerFormula, 'expected power at the setting', inputs, value);
}

/** A power at one load carried to another, in the ratio of the powers that the published data give. */
export function carriedPower(label: string, power: number, dataAtFirst: number, dataAtSecond: number): Step {
  const value = (power * dataAtSecond) / dataAtFirst;
  return step(carriedPowerFormula, label, { P_a: power, P_ca: dataAtFirst, P_cb: dataAtSecond }, value);
}

/** Middle of two limits. */
export function middleOfBand(lower: number, upper: number, unit: UnitName): Step {
  const inputs = { x_l: lower, x_u: upper };
  return step(middleOfBandFormula, 'middle of the row\u2019s limits', inputs, (lower + upper) / 2, { unit });
}

/** Difference of a value from another. */
export function difference(label: string, value: number, from: number, unit: UnitName): Step {
  return step(differenceFormula, label, { x: value, y: from }, value - from, { unit });
}

/** Difference of a value from another, over the other. */
export function relativeDifference(label: string, value: number, from: number): Step {
  return step(relativeDifferenceFormula, label, { x: value, y: from }, (value - from) / from);
}

/** Margin of a reading, with the step of the side on which it lies; no step on a side without a limit or a width. */
export function margin(
  band: Band,
  nominal: number,
  value: number,
): { readonly margin: number; readonly working: Step[] } {
  const m = marginIn(band, nominal, value);
  const limit = value < nominal ? band.lower : band.upper;
  if (limit === undefined || limit === nominal) return { margin: m, working: [] };
  const made =
    value < nominal
      ? step(marginBelowFormula, 'margin', { x: value, x_n: nominal, x_l: limit }, m)
      : step(marginAboveFormula, 'margin', { x: value, x_n: nominal, x_u: limit }, m);
  return { margin: m, working: [made] };
}

/** Current of the generator into an impedance over that into its resistance alone, by the slope of its curve. */
export function sourceCurrentRatio(inputs: { Z: number; R: number; s: number; phi: number }): Step {
  const { Z, R, s, phi } = inputs;
  const value = (Z / R) ** ((s - 1) / 2) * Math.cos(phi) ** ((Math.abs(s) - 1) / 2);
  return step(sourceCurrentRatioFormula, 'current of the generator over that into an ideal load', inputs, value);
}

/** What is read over what an ideal load would give. */
export function readingRatio(
  quantity: 'power' | 'current' | 'voltage',
  { g, k, Z, X, R }: { g: number; k: number; Z: number; X: number; R: number },
): Step {
  const label = `${quantity} that is read over that of an ideal load`;
  switch (quantity) {
    case 'current':
      return step(readingRatioCurrentFormula, label, { g, k }, g * k);
    case 'voltage':
      return step(readingRatioVoltageFormula, label, { g, k, Z, R }, (g * k * Z) / R);
    case 'power':
      return step(readingRatioPowerFormula, label, { g, k, X, R }, ((g * k) ** 2 * X) / R);
  }
}

/** A value at an ideal load, with the strays of load and leads. */
export function correctedValue(label: string, ratio: number, ideal: number, unit: UnitName): Step {
  return step(correctedValueFormula, label, { f: ratio, x_i: ideal }, ratio * ideal, { unit });
}
