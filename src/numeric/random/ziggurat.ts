import { reproducibleExp } from './reproducible-exp.js';
import { reproducibleLog } from './reproducible-log.js';

/** Where the tail begins, and the area of each of the 256 layers under exp(−x²/2), x > 0; made by coefficients.py. */
export const tailStart = 3.6541528853610088;
export const layerArea = 0.004928673233974655;

/** The layers of equal area that cover the normal density. */
export interface Ziggurat {
  /** Width of each layer times 2⁻⁵², for whole numbers below 2⁵². */
  readonly scales: Float64Array;
  /** Part of each layer that lies wholly under the density. */
  readonly cores: Float64Array;
  /** Height of the density at the width of each layer, and 1 behind the last. */
  readonly heights: Float64Array;
}

let tables: Ziggurat | undefined;

/**
 * The tables of the ziggurat, computed once.
 *
 * @source G. Marsaglia and W. W. Tsang, The ziggurat method for generating random variables, J. Stat. Softw. 5 (2000) 8
 */
export function ziggurat(): Ziggurat {
  tables ??= compute();
  return tables;
}

function compute(): Ziggurat {
  const density = (x: number): number => reproducibleExp((-x * x) / 2);
  const scales = new Float64Array(256);
  const cores = new Float64Array(256);
  const heights = new Float64Array(257);
  // Layer 0 is the rectangle below the tail's height and the tail: its width stands for both.
  let width = layerArea / density(tailStart);
  for (let layer = 0; layer < 256; layer++) {
    const height = layer === 0 ? 0 : density(width);
    const next =
      layer === 0 ? tailStart : layer === 255 ? 0 : Math.sqrt(-2 * reproducibleLog(layerArea / width + height));
    scales[layer] = width * 2.220446049250313e-16;
    cores[layer] = next;
    heights[layer] = height;
    width = next;
  }
  heights[256] = 1;
  return { scales, cores, heights };
}
