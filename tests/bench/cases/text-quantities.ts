import { parseQuantity } from 'esu-limits/units';
import { unit } from 'mathjs';
import type { BenchCase } from '../bench-case.js';
import { logUniform, versionOf } from '../inputs.js';

/** Spellings that both tools accept, with the SI unit that is asked of the peer. */
const units = [
  ['W', 'W'],
  ['kW', 'W'],
  ['mA', 'A'],
  ['A', 'A'],
  ['V', 'V'],
  ['kV', 'V'],
  ['ohm', 'ohm'],
  ['kohm', 'ohm'],
  ['kHz', 'Hz'],
  ['ms', 's'],
] as const;

const numbers = logUniform(2000, 0.1, 2000);
const texts = Array.from(numbers, (number, i) => `${Number(number.toPrecision(4))} ${units[i % units.length]![0]}`);
const byPeer = (text: string, i: number): number => unit(text).toNumber(units[i % units.length]![1]);

export const benchCase: BenchCase = {
  name: 'a text quantity parsed',
  n: texts.length,
  goal: 1 / 5,
  contenders: () => [
    {
      tool: 'esu-limits',
      version: versionOf('esu-limits'),
      values: () => texts.map((text) => parseQuantity(text).value),
      run: () => {
        let sum = 0;
        for (let i = 0; i < texts.length; i++) sum += parseQuantity(texts[i]!).value;
        return sum;
      },
    },
    {
      tool: 'mathjs',
      version: versionOf('mathjs'),
      values: () => texts.map(byPeer),
      run: () => {
        let sum = 0;
        for (let i = 0; i < texts.length; i++) sum += byPeer(texts[i]!, i);
        return sum;
      },
    },
  ],
};
