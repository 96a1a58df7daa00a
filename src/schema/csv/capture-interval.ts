import type { Fault } from '../../checks/index.js';
import { safeParseQuantity } from '../../units/index.js';
import { faultOf } from '../fault-list.js';
import { splitHeading, unitIn } from './capture-heading.js';
import { type DecimalMark, numberIn } from './capture-number.js';
import type { CsvRow } from './split-csv.js';

const intervalNames =
  /^(sampl(e|ing) (interval|period|time)|time (step|increment|interval)|interval|increment|dt|delta t)$/;
const rateNames = /^(sampl(e|ing) (rate|frequency)|rate|fs)$/;

/** The sample interval that the rows above the numbers state, as `key,value` or `key,value,unit`. */
export function statedInterval(
  above: readonly CsvRow[],
  mark: DecimalMark,
): { readonly interval?: number; readonly faults: readonly Fault[] } {
  for (const { line, cells } of above) {
    const { name, unit: ofName } = splitHeading((cells[0] ?? '').replace(/[:=]\s*$/, '').replace(/[_-]/g, ' '));
    const isRate = rateNames.test(name);
    if (!isRate && !intervalNames.test(name)) continue;
    const [, value = '', next = ''] = cells;
    const unit = (ofName === '' ? next : ofName).replace(/Sa?\/s$/, 'Hz');
    const number = numberIn(value, mark);
    const text =
      number === undefined
        ? value.replace(/Sa?\/s$/, 'Hz')
        : `${number} ${unit === '' ? (isRate ? 'Hz' : 's') : symbolOf(unit)}`;
    const read = safeParseQuantity(text, { expect: isRate ? 'frequency' : 'time' });
    const path = `line ${line}, column 2`;
    if (!read.ok) return { faults: [faultOf(read.fault.code, path, value, read.fault.requirement, read.fault.hint)] };
    if (!(read.value.value > 0)) return { faults: [faultOf('not-positive', path, value, 'must be greater than 0')] };
    return { interval: isRate ? 1 / read.value.value : read.value.value, faults: [] };
  }
  return { faults: [] };
}

/** A unit of time in words as its symbol. */
function symbolOf(unit: string): string {
  const known = unitIn(unit);
  return known?.column === 'time' && known.unit === 1 ? 's' : unit.replace(/^[([]|[)\]]$/g, '');
}

/**
 * The sample interval of a column of times: that from the first to the last, if every step is as long within half of it
 * and what the last digit of the times leaves open.
 */
export function intervalOfTimes(
  times: Float64Array,
  resolutionOf: (sample: number) => number,
  lineOf: (sample: number) => number,
): { readonly interval?: number; readonly faults: readonly Fault[] } {
  const last = times.length - 1;
  const interval = ((times[last] as number) - (times[0] as number)) / last;
  if (!(interval > 0)) {
    return {
      faults: [faultOf('not-ascending', `line ${lineOf(last)}`, times[last], 'must be later than the first time')],
    };
  }
  for (let k = 1; k <= last; k++) {
    const stepped = (times[k] as number) - (times[k - 1] as number);
    const open = Math.max(resolutionOf(k), resolutionOf(k - 1));
    if (Math.abs(stepped - interval) <= 0.5 * interval + open) continue;
    const path = `line ${lineOf(k)}`;
    return stepped <= 0
      ? { faults: [faultOf('not-ascending', path, times[k], 'must be later than the time before it')] }
      : {
          faults: [
            faultOf(
              'contradiction',
              path,
              times[k],
              `must follow after ${interval} s like the others: a row is missing`,
            ),
          ],
        };
  }
  return { interval, faults: [] };
}
