/** Round values inside a range, ascending: at most so many, a step of 1, 2 or 5 times a power of ten. */
export function linearTicks(from: number, to: number, most: number): number[] {
  const span = to - from;
  if (!(span > 0)) return [from];
  const exponent = Math.floor(Math.log10(span / most));
  const [mantissa, power] = ([1, 2, 5, 10]
    .map((m) => [m, exponent] as const)
    .find(([m]) => Number(`${m}e${exponent}`) * most >= span) ?? [10, exponent]) as [number, number];
  // The number that the decimal text means: 3e-1 is 0.3, which 3 * 0.1 is not.
  const at = (i: number): number => Number(`${i * mantissa}e${power}`);
  const step = at(1);
  const ticks: number[] = [];
  for (let i = Math.ceil(from / step - 1e-9); at(i) <= to + step * 1e-9; i++) ticks.push(at(i));
  return ticks;
}
