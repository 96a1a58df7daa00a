import type { Quantity } from '../circuit/index.js';

/**
 * Makes `source · factor + offset` of a column and converts it, row by row, with the arithmetic of `convertQuantity`.
 * Source and target may be one column. The values are the caller's to check.
 */
export function convertColumn(
  target: Float64Array,
  source: Float64Array,
  load: Float64Array,
  { factor, offset }: { readonly factor: number; readonly offset: number },
  from: Quantity,
  to: Quantity,
): void {
  // One loop for each conversion: a choice inside the loop would cost more than the arithmetic.
  const n = target.length;
  if (from === to) {
    for (let i = 0; i < n; i++) target[i] = (source[i] as number) * factor + offset;
  } else if (from === 'power' && to === 'current') {
    for (let i = 0; i < n; i++) target[i] = Math.sqrt(((source[i] as number) * factor + offset) / (load[i] as number));
  } else if (from === 'power') {
    for (let i = 0; i < n; i++) target[i] = Math.sqrt(((source[i] as number) * factor + offset) * (load[i] as number));
  } else if (from === 'current' && to === 'power') {
    for (let i = 0; i < n; i++) {
      const current = (source[i] as number) * factor + offset;
      target[i] = current * (load[i] as number) * current;
    }
  } else if (from === 'current') {
    for (let i = 0; i < n; i++) target[i] = ((source[i] as number) * factor + offset) * (load[i] as number);
  } else if (to === 'power') {
    for (let i = 0; i < n; i++) {
      const voltage = (source[i] as number) * factor + offset;
      target[i] = (voltage / (load[i] as number)) * voltage;
    }
  } else {
    for (let i = 0; i < n; i++) target[i] = ((source[i] as number) * factor + offset) / (load[i] as number);
  }
}
