import { fail, requireInteger } from '../../checks/index.js';

/**
 * The values of given ranks, in a time that grows only with the number of values, where sorting would cost several times
 * as much.
 *
 * The array is rearranged in place, as in a partial sort: what stands before a selected rank is not greater than its
 * value, and what stands behind it is not smaller. So a tail can afterwards be sorted alone.
 *
 * @param values Numbers without NaN; rearranged
 * @param ranks Ranks from 0, ascending
 * @returns The values, in the order of the ranks
 * @throws CalculationError `not-an-integer`, `out-of-range`, `not-ascending`, `not-a-number`
 * @source R. W. Floyd and R. L. Rivest, Algorithm 489: SELECT, Commun. ACM 18 (1975) 173
 */
export function selectRanks(values: Float64Array, ranks: readonly number[]): readonly number[] {
  for (let i = 0; i < values.length; i++) {
    if (Number.isNaN(values[i])) fail('not-a-number', `values[${i}]`, values[i], 'must be a number');
  }
  let from = 0;
  return ranks.map((rank, i) => {
    requireInteger(rank, `ranks[${i}]`, 0, values.length - 1);
    if (rank < from - 1) fail('not-ascending', `ranks[${i}]`, rank, 'must not be less than the rank before it');
    if (rank >= from) select(values, from, values.length - 1, rank);
    from = rank + 1;
    return values[rank] as number;
  });
}

/** Puts the value of a rank in its place within values[left … right]. */
function select(values: Float64Array, left: number, right: number, rank: number): void {
  let low = left;
  let high = right;
  // On data made to defeat the sampling the range shrinks slowly: then sorting is the safe end.
  for (let rounds = 0; high > low; rounds++) {
    if (rounds > 60) {
      values.subarray(low, high + 1).sort();
      return;
    }
    if (high - low > 600) {
      const count = high - low + 1;
      const place = rank - low + 1;
      // A sample of about n^(2/3) values around the rank gives a pivot just beside the value.
      const size = Math.cbrt(count) ** 2 / 2;
      const shift = Math.sqrt((size * (count - size)) / count) * (place < count / 2 ? -1 : 1) * 1.2;
      const sampleLow = Math.max(low, Math.floor(rank - (place * size) / count + shift));
      const sampleHigh = Math.min(high, Math.floor(rank + ((count - place) * size) / count + shift));
      select(values, Math.min(sampleLow, rank), Math.max(sampleHigh, rank), rank);
    }
    const pivot = values[rank] as number;
    let i = low;
    let j = high;
    while (i <= j) {
      while ((values[i] as number) < pivot) i++;
      while ((values[j] as number) > pivot) j--;
      if (i <= j) {
        const kept = values[i] as number;
        values[i++] = values[j] as number;
        values[j--] = kept;
      }
    }
    if (j < rank) low = i;
    if (rank < i) high = j;
  }
}
