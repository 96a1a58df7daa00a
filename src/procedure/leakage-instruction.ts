import { type LeakageCondition, leakageArrangements } from '../leakage/index.js';
import { formatQuantity } from '../units/index.js';
import type { BenchLoad } from './bench.js';
import type { LeakageTest, Output } from './specification.js';

/** What is connected and read in one measurement of leakage, in sentences. */
export function leakageInstruction(
  { arrangement }: LeakageTest,
  { measuredFrom, loading }: LeakageCondition,
  { ratedLoad }: Output,
  load: BenchLoad | undefined,
): string {
  const { text, loadBetween } = leakageArrangements[arrangement];
  if (loading === undefined) return text;
  const read = `Read the leakage from the ${measuredFrom} through the measuring resistor to earth`;
  if (loading === 'unloaded') {
    return `${read}, with nothing between ${loadBetween}: the voltage is highest there, so activate briefly.`;
  }
  const ofBench = load === undefined ? '' : ` (${load.id}, ${formatQuantity(load.resistance, 'ohm')})`;
  return `${read}, with the rated load of ${formatQuantity(ratedLoad, 'ohm')}${ofBench} between ${loadBetween}.`;
}
