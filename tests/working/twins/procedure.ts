import fc from 'fast-check';
import {
  carriedPower,
  correctedValue,
  difference,
  margin,
  middleOfBand,
  powerOfSetting,
  readingRatio,
  relativeDifference,
  scaledPower,
  sourceCurrentRatio,
  statedPower,
} from '../../../src/procedure/steps.js';
import { load, power, valueBetween } from '../../generators.js';
import type { Twins } from './twin.js';

const part = valueBetween(10, 80);
const whole = valueBetween(90, 110);
const beyond = valueBetween(120, 500);

export const twins: Twins = {
  'power-of-setting': { fast: ({ s }) => powerOfSetting(s!).value },
  'stated-power': { fast: ({ P_stated }) => statedPower(P_stated!).value },
  'power-scaled-with-setting': {
    fast: ({ P_c, s, s_c }) => scaledPower(P_c!, s!, s_c!).value,
    symbols: { s: power(), s_c: power() },
  },
  'power-carried-to-load': { fast: ({ P_a, P_ca, P_cb }) => carriedPower('', P_a!, P_ca!, P_cb!).value },
  'middle-of-band': {
    fast: ({ x_l, x_u }) => middleOfBand(x_l!, x_u!, 'W').value,
    symbols: { x_l: power(), x_u: power() },
  },
  'margin-below-nominal': {
    fast: ({ x, x_n, x_l }) => margin({ lower: x_l! }, x_n!, x!).margin,
    inputs: fc.record({ x: part, x_n: whole, x_l: part }),
  },
  'margin-above-nominal': {
    fast: ({ x, x_n, x_u }) => margin({ upper: x_u! }, x_n!, x!).margin,
    inputs: fc.record({ x: beyond, x_n: whole, x_u: beyond }),
  },
  'source-current-ratio': {
    fast: ({ Z, R, s, phi }) => sourceCurrentRatio({ Z: Z!, R: R!, s: s!, phi: phi! }).value,
    symbols: { Z: load(), R: load(), s: valueBetween(-1, 1), phi: valueBetween(-1.5, 1.5) },
  },
  'reading-ratio-current': {
    fast: ({ g, k }) => readingRatio('current', { g: g!, k: k!, Z: 1, X: 1, R: 1 }).value,
    symbols: { g: part, k: part },
  },
  'reading-ratio-voltage': {
    fast: ({ g, k, Z, R }) => readingRatio('voltage', { g: g!, k: k!, Z: Z!, X: 1, R: R! }).value,
    symbols: { g: part, k: part, Z: load(), R: load() },
  },
  'reading-ratio-power': {
    fast: ({ g, k, X, R }) => readingRatio('power', { g: g!, k: k!, Z: 1, X: X!, R: R! }).value,
    symbols: { g: part, k: part, X: load(), R: load() },
  },
  'corrected-for-strays': {
    fast: ({ f, x_i }) => correctedValue('', f!, x_i!, 'A').value,
    symbols: { f: part, x_i: power() },
  },
  difference: { fast: ({ x, y }) => difference('', x!, y!, 'W').value, symbols: { x: power(), y: power() } },
  'relative-difference': {
    fast: ({ x, y }) => relativeDifference('', x!, y!).value,
    symbols: { x: power(), y: power() },
  },
};
