/** A logarithmic axis: where values lie, and which ticks to draw. */
export interface LogAxis {
  readonly minimum: number;
  readonly maximum: number;
  /** Place of a value on the page; values beyond the ends lie beyond the ends. */
  readonly at: (value: number) => number;
  /** Values with a label. */
  readonly labelled: readonly number[];
  /** Values with a grid line only. */
  readonly minor: readonly number[];
}

const ladders = [[1, 2, 5], [1, 3], [1]] as const;

/**
 * An axis from the 1–2–5 value at or below the smallest value to the one at or above the greatest.
 *
 * @param values Values that must lie on the axis, all greater than 0
 * @param from Place of the smallest value on the page
 * @param to Place of the greatest value on the page
 */
export function logAxis(values: readonly number[], from: number, to: number): LogAxis {
  const smallest = values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const greatest = values.reduce((a, b) => Math.max(a, b), 0);
  const minimum = roundToLadder(smallest, 'down');
  const above = roundToLadder(greatest, 'up');
  const maximum = above > minimum ? above : roundToLadder(minimum * 1.5, 'up');
  const span = Math.log(maximum / minimum);
  const at = (value: number): number => from + ((to - from) * Math.log(value / minimum)) / span;
  const labelled = ladders.map((ladder) => rungs(ladder, minimum, maximum)).find((list) => list.length <= 9);
  const shown = labelled ?? everyNth(rungs([1], minimum, maximum), 9);
  const fine =
    maximum / minimum <= 1e3
      ? rungs([1, 2, 3, 4, 5, 6, 7, 8, 9], minimum, maximum)
      : rungs([1, 2, 5], minimum, maximum);
  const minor = fine.filter((value) => !shown.includes(value));
  return { minimum, maximum, at, labelled: shown, minor: minor.length <= 60 ? minor : [] };
}

/** The nearest of 1, 2, 5 × 10^n at or beyond a value. */
function roundToLadder(value: number, direction: 'down' | 'up'): number {
  const decade = Math.floor(Math.log10(value));
  const candidates = [decade - 1, decade, decade + 1].flatMap((d) => [1, 2, 5].map((m) => power(m, d)));
  const fitting =
    direction === 'down' ? candidates.filter((c) => c <= value).at(-1) : candidates.find((c) => c >= value);
  return fitting ?? value;
}

function rungs(ladder: readonly number[], minimum: number, maximum: number): number[] {
  const first = Math.floor(Math.log10(minimum));
  const last = Math.ceil(Math.log10(maximum));
  const all: number[] = [];
  for (let decade = first; decade <= last; decade++) {
    for (const m of ladder) all.push(power(m, decade));
  }
  return all.filter((value) => value >= minimum && value <= maximum);
}

function everyNth(list: readonly number[], most: number): number[] {
  const n = Math.ceil(list.length / most);
  return list.filter((_, i) => i % n === 0);
}

/** m × 10^d as the number that its decimal text means: 2e-1 is 0.2, which 2 * 10 ** -1 is not always. */
function power(m: number, d: number): number {
  return Number(`${m}e${d}`);
}
