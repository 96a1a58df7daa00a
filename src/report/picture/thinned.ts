type Place = readonly [number, number];

/**
 * The corners of a line that holds each value until the next, as many as can be seen: of the samples that fall into one
 * column of the picture only the first, the extremes and the last are kept.
 */
export function thinned(places: readonly Place[], end: number): readonly Place[] {
  const kept: Place[] = [];
  let column: Place[] = [];
  const flush = (): void => {
    const heights = column.map(([, y]) => y);
    const [first, last] = [column[0], column.at(-1)];
    if (first === undefined || last === undefined) return;
    if (column.length <= 4) kept.push(...column);
    else {
      const x = first[0];
      kept.push(
        first,
        [x, heights.reduce((a, b) => Math.min(a, b))],
        [x, heights.reduce((a, b) => Math.max(a, b))],
        last,
      );
    }
    column = [];
  };
  for (const place of places) {
    if (column[0] !== undefined && Math.floor(place[0]) !== Math.floor(column[0][0])) flush();
    column.push(place);
  }
  flush();
  const corners: Place[] = [];
  for (const [x, y] of kept) {
    const before = corners.at(-1);
    if (before !== undefined && before[1] !== y) corners.push([x, before[1]]);
    corners.push([x, y]);
  }
  const last = corners.at(-1);
  return last === undefined ? corners : [...corners, [end, last[1]]];
}
