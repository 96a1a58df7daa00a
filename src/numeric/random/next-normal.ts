import { nextUniform } from './next-uniform.js';
import { nextWord } from './next-word.js';
import type { Random } from './random.js';
import { reproducibleExp } from './reproducible-exp.js';
import { reproducibleLog } from './reproducible-log.js';
import { tailStart, ziggurat } from './ziggurat.js';

/** A standard normal number. */
export function nextNormal(random: Random): number {
  const { scales, cores } = ziggurat();
  const word = nextWord(random.state);
  const layer = word & 255;
  const place = (word >> 8) * 0x20000000 + (nextWord(random.state) >>> 3) + 0.5;
  const value = place * (scales[layer] as number);
  // Short enough to be compiled into its callers: the rest, and a value refused, is left to other functions.
  return Math.abs(value) < (cores[layer] as number) ? value : settled(random, layer, value);
}

function settled(random: Random, layer: number, value: number): number {
  return outsideCore(random, layer, value) ?? nextNormal(random);
}

/**
 * What becomes of a value outside the core of its layer, which happens to one in eighty: kept if a height drawn between
 * those of the layer lies under the density, replaced by one from the tail in layer 0, otherwise to be drawn anew.
 *
 * @source G. Marsaglia, Technometrics 6 (1964) 101: the tail
 */
export function outsideCore(random: Random, layer: number, value: number): number | undefined {
  if (layer === 0) {
    for (;;) {
      const beyond = -reproducibleLog(nextUniform(random)) / tailStart;
      if (-2 * reproducibleLog(nextUniform(random)) > beyond * beyond) {
        return value < 0 ? -tailStart - beyond : tailStart + beyond;
      }
    }
  }
  const { heights } = ziggurat();
  const low = heights[layer] as number;
  const height = low + nextUniform(random) * ((heights[layer + 1] as number) - low);
  return height < reproducibleExp((-value * value) / 2) ? value : undefined;
}
