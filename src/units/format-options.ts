import type { PrefixSymbol, SiUnit } from './vocabulary.js';

/** Unit of a printed value: an SI unit, or `%` for a fraction, or `°C` for kelvins. */
export type DisplayUnit = SiUnit | '%' | '°C';

/** How a value is printed. Without `digits`, `decimals` or `resolution` it is printed exactly. */
export interface FormatOptions {
  /** Significant digits, 1 to 20. */
  readonly digits?: number;
  /** Digits after the point of the printed number, 0 to 20. */
  readonly decimals?: number;
  /** Step in the SI unit, greater than 0: 0.001 with a current prints whole milliamperes. */
  readonly resolution?: number;
  /**
   * Direction of rounding, needed with `digits`, `decimals` or `resolution`: `down` is towards minus infinity, `up`
   * towards plus infinity, `nearest` takes a tie away from zero. It works on the decimal that stands for the value, so
   * 0.843 A is 843 mA in every direction.
   */
  readonly rounding?: 'nearest' | 'down' | 'up';
  /** The fitting prefix, no prefix, or a given one. Default: `auto`. */
  readonly prefix?: 'auto' | 'none' | PrefixSymbol;
  /** Written behind a current or a voltage: a peak value says so. Default: `rms`, which is not written. */
  readonly form?: 'rms' | 'peak' | 'peak-to-peak';
  /** Whether `ohm`, `u` and `degC` are written in place of `Ω`, `µ` and `°C`. Default: false. */
  readonly ascii?: boolean;
}
