import { fail, requirePositive } from '../checks/index.js';

/** The steps of a display: whole multiples of a resolution, as numerator over denominator where it is a decimal. */
export interface Grid {
  readonly resolution: number;
  readonly numerator: number;
  readonly denominator: number;
}

/** Relative distance within which a value counts as on a step: it absorbs the binary form of decimals. */
const onStep = 1e-12;

/**
 * The grid of a resolution.
 * A decimal such as 0.001 is kept as 1/1000, so that a step of the grid is the number nearest to its decimal:
 * 843/1000 is 0.843, where 843 · 0.001 need not be.
 */
export function gridOf(resolution: number): Grid {
  requirePositive(resolution, 'resolution');
  for (let denominator = 1; denominator <= 1e12; denominator *= 10) {
    const numerator = Math.round(resolution * denominator);
    if (numerator / denominator === resolution && numerator < 1e6) return { resolution, numerator, denominator };
  }
  return { resolution, numerator: resolution, denominator: 1 };
}

/** `Math.floor`, but a value within 1e-12 (relative) of a whole number counts as that number. */
function floorOnGrid(x: number): number {
  const floor = Math.floor(x);
  const part = x - floor;
  // Almost every value ends here: it is nowhere near a step.
  if (part > 1e-6 && part < 1 - 1e-6 && Math.abs(x) < 1e6) return floor;
  const nearest = Math.round(x);
  // Beyond 1e12 every value is that near to both neighbours: then nothing is snapped.
  return nearest !== floor && isNear(x, nearest) && !isNear(x, floor) ? nearest : floor;
}

function isNear(x: number, whole: number): boolean {
  return Math.abs(x - whole) <= Math.max(onStep * Math.max(Math.abs(x), Math.abs(whole)), 1e-15);
}

/** How a value is brought onto the grid: away from 0 at a tie. */
export type GridDirection = 'up' | 'down' | 'nearest';

/** The step of the grid that a value is rounded to. */
export function roundOnGrid(value: number, grid: Grid, direction: GridDirection): number {
  const { resolution, numerator, denominator } = grid;
  const x = numerator === 1 ? value * denominator : (value * denominator) / numerator;
  if (!(Math.abs(x) <= Number.MAX_SAFE_INTEGER)) {
    fail('out-of-range', 'resolution', resolution, `is too fine for the value ${value}`);
  }
  const steps =
    direction === 'up'
      ? -floorOnGrid(-x)
      : direction === 'down'
        ? floorOnGrid(x)
        : Math.sign(x) * floorOnGrid(Math.abs(x) + 0.5);
  // Adding 0 turns −0 into 0.
  return (steps * numerator) / denominator + 0;
}
