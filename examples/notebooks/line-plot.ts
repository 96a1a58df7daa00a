/** A line of a plot: its points in the order of x. */
export interface PlotLine {
  readonly name: string;
  readonly points: readonly (readonly [x: number, y: number])[];
}

/** An axis with the values that are written beside it. */
export interface PlotAxis {
  readonly title: string;
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
  readonly scale?: 'linear' | 'log';
  readonly label?: (value: number) => string;
}

/** What is drawn. Verticals are dotted lines with a name, such as limits. */
export interface Plot {
  readonly title: string;
  readonly x: PlotAxis;
  readonly y: PlotAxis;
  readonly lines: readonly PlotLine[];
  readonly verticals?: readonly { readonly x: number; readonly name: string }[];
}

const width = 440;
const frame = { left: 52, right: 416, top: 44, bottom: 236 };

/** Lines differ in dash and width too, so that a grey print tells them apart. */
const pens = [
  { ink: 'accent', paper: '#1f5560', dash: 'none', width: 2 },
  { ink: 'fail', paper: '#ad3a12', dash: '8 4', width: 2 },
  { ink: 'open', paper: '#5c5668', dash: '2 3', width: 2.4 },
  { ink: 'pass', paper: '#1d5b8f', dash: '10 3 2 3', width: 1.6 },
];

/**
 * A line plot as one `svg` element, with what it shows in words. Its colours are custom properties with a fallback for
 * paper, as those of the report's own pictures.
 */
export function linePlot(plot: Plot): { readonly svg: string; readonly description: string } {
  return { svg: drawn(plot), description: described(plot) };
}

/** Where each line begins and ends, and its highest point between. */
function described({ title, x, y, lines }: Plot): string {
  const place = ([across, up]: readonly [number, number]) => `${Number(up.toPrecision(2))} at ${labelOf(x, across)}`;
  const sentences = lines.map(({ name, points }) => {
    const highest = points.reduce((best, point) => (point[1] > best[1] ? point : best));
    const shown = [points[0], highest, points.at(-1)].filter((point) => point !== undefined);
    return `${name}: ${[...new Set(shown.map(place))].join(', ')}.`;
  });
  return [`${title}; ${y.title} against ${x.title}.`, ...sentences].join(' ');
}

function drawn({ title, x, y, lines, verticals = [] }: Plot): string {
  const left = placeOn(x, frame.left, frame.right);
  const top = placeOn(y, frame.bottom, frame.top);
  const middle = (frame.left + frame.right) / 2;
  const height = frame.bottom + 46 + 17 * lines.length;
  const box = { x: frame.left, y: frame.top, width: frame.right - frame.left, height: frame.bottom - frame.top };
  const parts = [
    text(title, frame.left, 20, 'font-weight="600" font-size="13"'),
    ...x.ticks.map((value) => path(`M${round(left(value))} ${frame.top}V${frame.bottom}`, 'grid', '#e2e7e7')),
    ...y.ticks.map((value) => path(`M${frame.left} ${round(top(value))}H${frame.right}`, 'grid', '#e2e7e7')),
    ...x.ticks.map((value) => text(labelOf(x, value), left(value), frame.bottom + 15, 'text-anchor="middle"')),
    ...y.ticks.map((value) => text(labelOf(y, value), frame.left - 6, top(value) + 4, 'text-anchor="end"')),
    text(x.title, middle, frame.bottom + 32, 'text-anchor="middle"'),
    text(y.title, 14, (frame.top + frame.bottom) / 2, 'text-anchor="middle" class="y"'),
    ...verticals.map((mark) => path(`M${round(left(mark.x))} ${frame.top}V${frame.bottom}`, 'ink', '#1c2329', '1 3')),
    ...verticals.map((mark) => text(mark.name, left(mark.x), frame.top - 5, 'text-anchor="middle" font-size="10.5"')),
    `<rect ${attributes(box)} style="fill:none;stroke:var(--soft,#55606a)"/>`,
    ...lines.map(({ points }, i) => pen(i, lineData(points, left, top))),
    ...lines.map((_, i) => pen(i, `M${frame.left} ${keyLine(i) - 4}h34`)),
    ...lines.map(({ name }, i) => text(name, frame.left + 42, keyLine(i))),
  ];
  const whole = { xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${width} ${height}`, width, height, role: 'img' };
  const font = 'font-family="system-ui, sans-serif" font-size="11.5" style="fill:var(--ink,#1c2329)"';
  return `<svg ${attributes(whole)} aria-label="${escaped(title)}" ${font}>${parts.join('')}</svg>`;
}

function labelOf({ label }: PlotAxis, value: number): string {
  return label === undefined ? String(Number(value.toPrecision(6))) : label(value);
}

function placeOn({ from, to, scale }: PlotAxis, start: number, end: number): (value: number) => number {
  const at = scale === 'log' ? Math.log : (value: number) => value;
  return (value) => start + ((end - start) * (at(value) - at(from))) / (at(to) - at(from));
}

function lineData(points: PlotLine['points'], left: (x: number) => number, top: (y: number) => number): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${round(left(x))} ${round(top(y))}`).join('');
}

function keyLine(i: number): number {
  return frame.bottom + 54 + 17 * i;
}

function pen(i: number, data: string): string {
  const { ink, paper, dash, width: thick } = pens[i % pens.length] as (typeof pens)[number];
  const stroke = `fill:none;stroke:var(--${ink},${paper});stroke-width:${thick};stroke-dasharray:${dash}`;
  return `<path d="${data}" style="${stroke};stroke-linejoin:round"/>`;
}

function path(data: string, ink: string, paper: string, dash = 'none'): string {
  return `<path d="${data}" style="fill:none;stroke:var(--${ink},${paper});stroke-dasharray:${dash}"/>`;
}

function text(words: string, x: number, y: number, more = ''): string {
  const turned = more.includes('class="y"');
  const place = turned ? `transform="translate(${x} ${y}) rotate(-90)"` : `x="${round(x)}" y="${round(y)}"`;
  return `<text ${place} ${more.replace('class="y"', '').trim()}>${escaped(words)}</text>`;
}

function attributes(values: Readonly<Record<string, string | number>>): string {
  return Object.entries(values)
    .map(([name, value]) => `${name}="${value}"`)
    .join(' ');
}

function escaped(words: string): string {
  return words.replace(/[&<>"]/g, (sign) => `&#${sign.codePointAt(0)};`);
}

function round(value: number): number {
  return Math.round(value * 100) / 100;
}
