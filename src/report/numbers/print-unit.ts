/** What a printed number measures. */
export type PrintKind = 'power' | 'current' | 'voltage' | 'resistance' | 'time' | 'frequency';

/** A unit as it is printed: SI unit and prefix, and the power of ten between them. */
export interface PrintUnit {
  readonly symbol: string;
  readonly si: 'W' | 'A' | 'V' | 'ohm' | 's' | 'Hz';
  readonly prefix: 'none' | 'm' | 'k' | 'M';
  /** The printed number is the SI value times ten to this power. */
  readonly shift: number;
}

function choices(
  si: PrintUnit['si'],
  symbol: string,
  prefixes: readonly PrintUnit['prefix'][],
): readonly [PrintUnit, ...PrintUnit[]] {
  const shifts = { m: 3, none: 0, k: -3, M: -6 } as const;
  return prefixes.map((prefix) => ({
    symbol: prefix === 'none' ? symbol : prefix + symbol,
    si,
    prefix,
    shift: shifts[prefix],
  })) as unknown as readonly [PrintUnit, ...PrintUnit[]];
}

const units: Readonly<Record<PrintKind, readonly [PrintUnit, ...PrintUnit[]]>> = {
  power: choices('W', 'W', ['m', 'none']),
  current: choices('A', 'A', ['m', 'none']),
  voltage: choices('V', 'V', ['m', 'none', 'k']),
  resistance: choices('ohm', 'Ω', ['m', 'none', 'k', 'M']),
  time: choices('s', 's', ['none']),
  frequency: choices('Hz', 'Hz', ['none', 'k', 'M']),
};

/**
 * One unit for all values of a column: the largest in which the smallest value is 1 or more, as long as the
 * greatest has no more than four digits before the point. For currents from 276 mA to 2.74 A that is mA.
 */
export function unitFor(kind: PrintKind, values: readonly number[]): PrintUnit {
  const all = units[kind];
  let greatest = 0;
  let smallest = Number.POSITIVE_INFINITY;
  for (const value of values) {
    const magnitude = Math.abs(value);
    if (magnitude === 0) continue;
    greatest = Math.max(greatest, magnitude);
    smallest = Math.min(smallest, magnitude);
  }
  if (greatest === 0) return all.find(({ shift }) => shift === 0) as PrintUnit;
  const fitting = all.filter(({ shift }) => greatest * 10 ** shift < 10_000);
  const candidates = fitting.length > 0 ? fitting : all.slice(-1);
  return candidates.filter(({ shift }) => smallest * 10 ** shift >= 1).at(-1) ?? (candidates[0] as PrintUnit);
}
