import { CalculationError, type Fault } from 'esu-limits';

/** What came out, or what is wrong with what was typed. */
export type Attempt<T> =
  | { readonly value: T; readonly faults?: never }
  | { readonly faults: readonly Fault[]; readonly value?: never };

/** Does the work; bad input ends in faults for the reader, anything else is a defect and is thrown on. */
export function attempt<T>(work: () => T): Attempt<T> {
  try {
    return { value: work() };
  } catch (error) {
    if (error instanceof CalculationError) return { faults: error.faults };
    throw error;
  }
}

/** A fraction as percent, for reading. */
export function percent(fraction: number, digits = 3): string {
  return `${Number((fraction * 100).toPrecision(digits))} %`.replace('-', '\u2212');
}

/** A number to some digits, without a tail of zeros. */
export function digits(value: number, count = 4): string {
  return String(Number(value.toPrecision(count))).replace('-', '\u2212');
}

/** One point a line, load and power: `100 ohm, 121 W`. */
export function pointsOf<T>(text: string, read: (load: string, power: string, line: number) => T): T[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line, index) => {
      const [load = '', power = ''] = line.split(/[,;\t]/).map((cell) => cell.trim());
      return read(load, power, index);
    });
}
