import { fail } from '../checks/index.js';

/** A quantity in which RF output is read or limited: rms current, rms voltage or power. */
export type Quantity = 'power' | 'current' | 'voltage';

/** Symbol of each quantity in a working. */
export const quantitySymbols = { power: 'P', current: 'I', voltage: 'V' } as const;

/** SI unit of each quantity. */
export const quantityUnits = { power: 'W', current: 'A', voltage: 'V' } as const;

/** One of the three quantities, or an error. */
export function requireQuantity(value: Quantity, path: string): Quantity {
  if (value === 'power' || value === 'current' || value === 'voltage') return value;
  return fail('unknown-choice', path, value, 'must be one of: power, current, voltage');
}
