import {
  carriedPower,
  difference,
  middleOfBand,
  powerOfSetting,
  relativeDifference,
  scaledPower,
  statedPower,
} from '../../../src/procedure/steps.js';
import { power } from '../../generators.js';
import type { Twins } from './twin.js';

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
  difference: { fast: ({ x, y }) => difference('', x!, y!, 'W').value, symbols: { x: power(), y: power() } },
  'relative-difference': {
    fast: ({ x, y }) => relativeDifference('', x!, y!).value,
    symbols: { x: power(), y: power() },
  },
};
