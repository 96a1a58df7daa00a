import { findRoot } from '../../numeric/index.js';
import type { Course } from './course.js';

const turn = 2 * Math.PI;
/** Halvings of a cell after which what is left of it no longer matters: its width is below 1e-6 of a fast cycle. */
const deepest = 20;
/** Cells for each cycle of the highest harmonic. */
const cellsPerCycle = 8;

/**
 * Largest absolute value, by cells of which those that cannot hold it are dropped: from the middle of a cell the course
 * strays no further than its slope there and its largest second derivative allow.
 */
export function extremeOf({ value, slope, mostBent, highestOrder }: Course): number {
  let best = 0;
  let count = cellsPerCycle * highestOrder;
  let cells = Array.from({ length: count }, (_, k) => k);
  for (let depth = 0; depth <= deepest && cells.length > 0; depth++) {
    const half = turn / count / 2;
    const bounds = cells.map((k) => {
      const middle = (turn * (k + 0.5)) / count;
      const height = Math.abs(value(middle));
      best = Math.max(best, height);
      return height + Math.abs(slope(middle)) * half + (mostBent * half * half) / 2;
    });
    // A gain of less than 1e-13 is no gain.
    cells = halved(cells.filter((_, i) => (bounds[i] as number) > best * (1 + 1e-13)));
    count *= 2;
  }
  return best;
}

/** Mean of the absolute value: the exact integral between neighbouring zeros, which are found cell by cell. */
export function rectifiedMeanOf(course: Course): number {
  const { value, slope, integral, mostBent, highestOrder } = course;
  const zeros: number[] = [];
  let count = cellsPerCycle * highestOrder;
  let cells = Array.from({ length: count }, (_, k) => k);
  for (let depth = 0; depth <= deepest && cells.length > 0; depth++) {
    const half = turn / count / 2;
    const bend = mostBent * half;
    const open: number[] = [];
    for (const k of cells) {
      const middle = (turn * (k + 0.5)) / count;
      const steep = Math.abs(slope(middle));
      if (Math.abs(value(middle)) > steep * half + (bend * half) / 2) continue;
      if (steep <= bend) open.push(k);
      else {
        // The slope keeps its sign: there is at most one zero, and the ends tell. Neighbours share theirs to the bit.
        const left = (turn * k) / count;
        const right = (turn * (k + 1)) / count;
        if (value(left) > 0 !== value(right) > 0) zeros.push(findRoot(value, left, right));
      }
    }
    cells = halved(open);
    count *= 2;
  }
  zeros.sort((a, b) => a - b);
  const ends = [0, ...zeros, turn];
  let sum = 0;
  for (let i = 1; i < ends.length; i++) {
    sum += Math.abs(integral(ends[i] as number) - integral(ends[i - 1] as number));
  }
  return sum / turn;
}

function halved(cells: readonly number[]): number[] {
  return cells.flatMap((k) => [2 * k, 2 * k + 1]);
}
