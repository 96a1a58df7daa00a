export { currentFromPower } from './current-from-power.js';
export type { Quantity } from './quantity.js';
