import { escapeHtml } from '../escape/escape-html.js';

/** An SVG element with escaped attribute values; numbers are cut to hundredths, absent values are left out. */
export function element(
  name: string,
  attributes: Readonly<Record<string, string | number | undefined>>,
  ...children: readonly string[]
): string {
  const written = Object.entries(attributes)
    .filter((entry): entry is [string, string | number] => entry[1] !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? cut(value) : escapeHtml(value)}"`)
    .join('');
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`;
}

/** A text element. */
export function textElement(
  x: number,
  y: number,
  text: string,
  attributes: Readonly<Record<string, string | number | undefined>> = {},
): string {
  return element('text', { x, y, ...attributes }, escapeHtml(text));
}

/** A polyline through points, as path data. */
export function pathData(points: readonly (readonly [number, number])[], closed = false): string {
  const line = points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${cut(x)} ${cut(y)}`).join('');
  return closed ? `${line}Z` : line;
}

function cut(value: number): string {
  return String(Math.round(value * 100) / 100);
}
