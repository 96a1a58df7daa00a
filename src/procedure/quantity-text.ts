import type { Band, BandNaming } from '../band/index.js';
import { type Quantity, quantitySymbols, quantityUnits } from '../circuit/index.js';
import { formatBand, formatQuantity } from '../units/index.js';

/** Unit, symbol and name of a quantity, for the steps of a working. */
export function namingOf(quantity: Quantity): BandNaming {
  return { unit: quantityUnits[quantity], symbol: quantitySymbols[quantity], name: quantity };
}

/** A value as text with all its digits: `0.745 A` is `745 mA`. */
export function quantityText(value: number, quantity: Quantity): string {
  return formatQuantity(value, quantityUnits[quantity]);
}

/** A value as text to four significant digits, for messages. */
export function roundedText(value: number, quantity: Quantity): string {
  return formatQuantity(value, quantityUnits[quantity], { digits: 4, rounding: 'nearest' });
}

/** Limits as text: `439 mA to 536 mA`, `≤ 536 mA`, `≥ 439 mA`, `no limits`. */
export function bandText(band: Band, quantity: Quantity): string {
  if (band.lower === undefined && band.upper === undefined) return 'no limits';
  return formatBand(band, quantityUnits[quantity]);
}
