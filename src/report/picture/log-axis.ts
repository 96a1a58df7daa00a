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

/** Where an axis lies on the page, and how close its labels may stand. */
export interface LogAxisOptions {
  /** Place of the lower end on the page. */
  readonly from: number;
  /** Place of the upper end on the page. */
  readonly to: number;
  /** Least distance of two labels. */
  readonly labelGap: number;
  /** Least ratio of the ends: a narrower range would show noise as hills. Default: 2. */
  readonly leastRatio?: number;
}

/** Steps of a decade that may have labels, from many to few. */
const ladders = [[1, 1.5, 2, 3, 4, 5, 6, 8], [1, 2, 3, 5], [1, 2, 5], [1, 3], [1]] as const;

const fineSteps = [1, 2, 3, 4, 5, 6, 7, 8, 9];

/** Room beyond the outermost values, as a ratio. */
const margin = 1.15;

/**
 * An axis that holds all values with a little room at both ends. Its labels stand at round values, as many as there is
 * room for.
 *
 * @param values Values that must lie on the axis, all greater than 0
 * @param options Place on the page, distance of labels, least ratio
 */
export function logAxis(values: readonly number[], options: LogAxisOptions): LogAxis {
  const { from, to, labelGap, leastRatio = 2 } = options;
  const smallest = values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY) / margin;
  const greatest = values.reduce((a, b) => Math.max(a, b), 0) * margin;
  const widen = Math.sqrt(Math.max(1, (leastRatio * smallest) / greatest));
  const minimum = smallest / widen;
  const maximum = greatest * widen;
  const span = Math.log(maximum / minimum);
  const at = (value: number): number => from + ((to - from) * Math.log(value / minimum)) / span;
  const isRoomy = (list: readonly number[]): boolean =>
    list.every((value, i) => i === 0 || Math.abs(at(value) - at(list[i - 1] as number)) >= labelGap);
  const decades = rungs([1], minimum, maximum);
  const labelled = ladders.map((ladder) => rungs(ladder, minimum, maximum)).find(isRoomy) ?? everyNth(decades, 9);
  const fine = rungs(maximum / minimum <= 1e3 ? fineSteps : [1], minimum, maximum);
  return { minimum, maximum, at, labelled, minor: fine.filter((value) => !labelled.includes(value)) };
}

/** Multiples of powers of ten inside a range, ascending. */
function rungs(ladder: readonly number[], minimum: number, maximum: number): number[] {
  const first = Math.floor(Math.log10(minimum));
  const last = Math.ceil(Math.log10(maximum));
  const all: number[] = [];
  for (let decade = first; decade <= last; decade++) {
    // The number that the decimal text means: 2e-1 is 0.2, which 2 * 10 ** -1 is not always.
    for (const m of ladder) all.push(Number(`${m}e${decade}`));
  }
  return all.filter((value) => value >= minimum && value <= maximum);
}

function everyNth(list: readonly number[], most: number): number[] {
  const n = Math.ceil(list.length / most);
  return list.filter((_, i) => i % n === 0);
}
