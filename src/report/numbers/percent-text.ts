import { formatQuantity } from '../../units/index.js';

/** A fraction as a signed percentage: one decimal below 10 %, none above, such as `−2.1 %` or `+35 %`. */
export function signedPercent(fraction: number): string {
  return signed(fraction, Math.abs(fraction) < 0.0995 ? 1 : 0);
}

/**
 * A margin as a percentage of the tolerance used: `+62 %`. Digits are added where rounding would carry it
 * onto a limit: 99.96 % inside never prints as 100 %, nor does 100.04 % outside.
 *
 * @example
 * ```ts
 * import { marginText } from 'esu-limits/report';
 * marginText(0.62); // → "+62 %"
 * marginText(0.9996); // → "+99.96 %"
 * ```
 */
export function marginText(margin: number): string {
  if (Math.abs(margin) === 1) return signed(margin, 0);
  for (let decimals = 0; decimals < 12; decimals++) {
    const text = signed(margin, decimals);
    if (!/^[+\u2212]100(\.0*)? %$/.test(text)) return text;
  }
  return signed(margin, 15);
}

function signed(fraction: number, decimals: number): string {
  if (!(Math.abs(fraction) < 1e6)) {
    return `${fraction < 0 ? '\u2212' : '+'}${Math.abs(fraction * 100).toExponential(1)} %`;
  }
  const text = formatQuantity(fraction, '%', { prefix: 'none', decimals, rounding: 'nearest' });
  const zero = /^-?0(\.0*)? %$/.test(text);
  return zero ? '0 %' : text.startsWith('-') ? `\u2212${text.slice(1)}` : `+${text}`;
}
