/** A fraction as percent, to a number of significant digits: `7 %`, never `7.000000000000001 %`. */
export function percentText(fraction: number, digits = 6): string {
  const size = `${Number((Math.abs(fraction) * 100).toPrecision(digits))} %`;
  return fraction < 0 ? `\u2212${size}` : size;
}

/** A deviation as percent with its sign, to one decimal: `+5.3 %`, `−22.6 %`, `0.0 %`. */
export function deviationText(fraction: number): string {
  const size = `${Math.abs(fraction * 100).toFixed(1)} %`;
  if (size === '0.0 %') return size;
  return `${fraction < 0 ? '\u2212' : '+'}${size}`;
}
