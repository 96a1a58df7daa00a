/**
 * Sum of values, with the digits that each addition loses carried along: the error does not grow with their number.
 *
 * @source A. Neumaier, Z. Angew. Math. Mech. 54 (1974) 39
 */
export function sum(values: ArrayLike<number>): number {
  let total = 0;
  let lost = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    const next = total + value;
    lost += Math.abs(total) >= Math.abs(value) ? total - next + value : value - next + total;
    total = next;
  }
  return total + lost;
}
