import { escapeHtml } from '../escape/escape-html.js';
import { plainText } from '../escape/plain-text.js';
import { valueText } from '../numbers/value-text.js';
import { linearTicks } from './linear-ticks.js';
import type { PictureOptions } from './load-curve-picture.js';
import { ink } from './palette.js';
import { element, textElement } from './svg.js';
import { thinned } from './thinned.js';
import type { TracePicture, TraceSpan, TraceThreshold } from './trace-picture.js';

const width = 720;
const left = 56;
const right = 592;
const top = 34;
const bottom = 220;
/** Where an open circuit, or what lies beyond the axis, is drawn. */
const beyond = top + 9;
const lanes = { must: bottom + 52, noted: bottom + 80 } as const;
const laneHeight = 17;
const height = bottom + 142;

const soft = { style: `fill:${ink('soft')}` };

/**
 * A trace as a picture: resistance against time with the thresholds as named lines and their tolerance as a band; below
 * it, when an alarm had to stand and when it was noted. Hatching, filling and words tell these apart, not colour alone.
 *
 * @param picture What to show
 * @param options Start of the identifiers inside the picture; `trace` unless stated
 * @returns One `svg` element without script or external reference
 * @example
 * ```ts
 * import { monitorTracePicture } from 'esu-limits/report';
 * const svg = monitorTracePicture({
 *   title: 'Contact lost',
 *   description: 'An alarm must stand from 12 s to 20 s; one was noted from 13 s to 20 s.',
 *   time: [0, 10],
 *   resistance: [60, 170],
 *   end: 20,
 *   thresholds: [{ label: 'upper limit', value: 150 }],
 *   expected: [{ since: 10, from: 12, to: 20 }],
 *   noted: [{ from: 13, to: 20 }],
 *   late: [{ from: 12, to: 13, label: '1 s late' }],
 * });
 * svg.includes('1 s late'); // → true
 * ```
 */
export function monitorTracePicture(picture: TracePicture, options: PictureOptions = {}): string {
  const id = options.id ?? 'trace';
  const axes = axesOf(picture);
  const pattern = `${id}-hatch`;
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${width} ${height}`,
      width,
      height,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      'font-family': 'system-ui, "Segoe UI", "Helvetica Neue", Arial, sans-serif',
      'font-size': 12,
      style: `fill:${ink('ink')}`,
    },
    `<title id="${id}-title">${escapeHtml(plainText(picture.title))}</title>`,
    `<desc id="${id}-desc">${escapeHtml(plainText(picture.description))}</desc>`,
    hatch(pattern),
    textElement(left, 18, shortened(plainText(picture.title), 84), { 'font-weight': 600, 'font-size': 13.5 }),
    ...picture.noted.map((span) => shade(span, axes)),
    ...picture.thresholds.map((threshold) => tolerance(threshold, axes)),
    frame(axes),
    ...picture.thresholds.map((threshold) => thresholdLine(threshold, axes)),
    thresholdNames(picture.thresholds, axes),
    traceLine(picture, axes),
    valueLabels(picture, axes),
    laneNames(),
    ...picture.expected.map((span) => mustBar(span, axes, pattern)),
    ...picture.noted.map((span) => notedBar(span, axes)),
    ...picture.late.map((span) => lateBar(span, axes)),
    legend(pattern),
  );
}

interface Axes {
  readonly x: (time: number) => number;
  readonly y: (resistance: number) => number;
  readonly times: readonly number[];
  readonly resistances: readonly number[];
  readonly top: number;
}

function axesOf({ time, resistance, end, thresholds }: TracePicture): Axes {
  const start = time[0] as number;
  const span = end > start ? end - start : 1;
  const highest = Math.max(...thresholds.map(({ value, upper }) => upper ?? value));
  const finite = resistance.filter(Number.isFinite);
  // What lies far beyond every threshold, such as a box at its end, must not squeeze them together.
  const near = finite.filter((value) => !(thresholds.length > 0) || value <= 2.5 * highest);
  const most = 1.18 * [...near, ...(thresholds.length > 0 ? [highest] : [])].reduce((a, b) => Math.max(a, b), 0) || 1;
  return {
    x: (t) => left + ((right - left) * Math.min(Math.max(t - start, 0), span)) / span,
    y: (R) => (R > most ? beyond : bottom - ((bottom - top) * Math.max(R, 0)) / most),
    times: linearTicks(start, start + span, 8),
    resistances: linearTicks(0, most, 6),
    top: most,
  };
}

function hatch(id: string): string {
  const line = element('path', { d: 'M0 6L6 0', style: `stroke:${ink('ink')}`, 'stroke-width': 1.1 });
  return element('pattern', { id, width: 6, height: 6, patternUnits: 'userSpaceOnUse' }, line);
}

function frame({ x, y, times, resistances }: Axes): string {
  const grid = [
    ...times.map((t) => `M${cut(x(t))} ${top}V${bottom}`),
    ...resistances.map((R) => `M${left} ${cut(y(R))}H${right}`),
  ].join('');
  const place = `translate(14 ${(top + bottom) / 2}) rotate(-90)`;
  return [
    element('path', { d: grid, style: `fill:none;stroke:${ink('grid')}`, 'stroke-width': 0.8 }),
    element('path', { d: `M${left} ${top}V${bottom}H${right}`, style: `fill:none;stroke:${ink('soft')}` }),
    ...times.map((t) => rimmed(x(t), bottom + 15, tickText(t), 'middle', 12)),
    ...resistances.map((R) => textElement(left - 6, y(R) + 4, tickText(R), { 'text-anchor': 'end', ...soft })),
    rimmed((left + right) / 2, bottom + 32, 'Time in s', 'middle', 12),
    textElement(0, 0, 'Resistance in Ω', { 'text-anchor': 'middle', transform: place }),
  ].join('');
}

/** The stretch of a noted alarm across the picture, so that it can be seen beside the resistance. */
function shade({ from, to }: TraceSpan, { x }: Axes): string {
  const [a, b] = [x(from), Math.max(x(to), x(from) + 1)];
  const edge = { style: `fill:none;stroke:${ink('fail')}`, 'stroke-width': 1, 'stroke-dasharray': '1.5 2.5' };
  return (
    element('rect', { x: a, y: top, width: b - a, height: bottom - top, style: `fill:${ink('raised')}` }) +
    element('path', { d: `M${cut(a)} ${top}V${lanes.noted}M${cut(b)} ${top}V${lanes.noted}`, ...edge })
  );
}

function tolerance({ lower, upper, from, to }: TraceThreshold, { x, y }: Axes): string {
  if (lower === undefined || upper === undefined || !(upper > lower)) return '';
  const [a, b] = [from === undefined ? left : x(from), to === undefined ? right : x(to)];
  return element('rect', {
    x: a,
    y: y(upper),
    width: b - a,
    height: y(lower) - y(upper),
    style: `fill:${ink('band')}`,
  });
}

function thresholdLine({ value, from, to }: TraceThreshold, { x, y }: Axes): string {
  const [a, b] = [from === undefined ? left : x(from), to === undefined ? right : x(to)];
  return element('path', {
    d: `M${cut(a)} ${cut(y(value))}H${cut(b)}`,
    style: `fill:none;stroke:${ink('ink')}`,
    'stroke-width': 1.2,
    'stroke-dasharray': '7 4',
  });
}

/** Names beside the lines; those of lines that lie close are moved apart. */
function thresholdNames(thresholds: readonly TraceThreshold[], { y }: Axes): string {
  const least = 29;
  const rows = [...thresholds].sort((a, b) => b.value - a.value);
  let last = Number.NEGATIVE_INFINITY;
  const places = rows.map(({ value }) => {
    last = Math.max(y(value), last + least);
    return last;
  });
  // Names that were pushed below the axis move up again.
  let next = bottom + 8;
  for (let i = places.length - 1; i >= 0; i--) {
    next = Math.min(places[i] as number, next);
    places[i] = next;
    next -= least;
  }
  return rows
    .map(({ label, value, lower, upper }, i) => {
      const place = places[i] as number;
      const about = lower === undefined || upper === undefined ? '' : ` (${shortRange(lower, upper)})`;
      const line = `M${right} ${cut(y(value))}L${right + 7} ${cut(place - 3)}`;
      return (
        element('path', { d: line, style: `fill:none;stroke:${ink('soft')}`, 'stroke-width': 0.8 }) +
        textElement(right + 10, place - 3, plainText(label)) +
        textElement(right + 10, place + 10, `${valueText(value, 'resistance', 4)}${about}`, {
          'font-size': 11,
          ...soft,
        })
      );
    })
    .join('');
}

function shortRange(lower: number, upper: number): string {
  const digits = (value: number): string => valueText(value, 'resistance', 3).replace(/\s.*$/, '');
  return `${digits(lower)}–${digits(upper)}`;
}

function traceLine({ time, resistance, end }: TracePicture, { x, y }: Axes): string {
  const places = time.map((t, i) => [x(t), y(resistance[i] as number)] as const);
  const d = thinned(places, x(end))
    .map(([px, py], i) => (i === 0 ? `M${cut(px)} ${cut(py)}` : `L${cut(px)} ${cut(py)}`))
    .join('');
  return element('path', {
    d,
    style: `fill:none;stroke:${ink('accent')}`,
    'stroke-width': 2.2,
    'stroke-linejoin': 'round',
  });
}

/** What a long trace reaches beyond the axis: one number for each stretch. */
function beyondLabels({ time, resistance, end }: TracePicture, { x, y, top: most }: Axes): string {
  const labels: string[] = [];
  for (let i = 0; i < time.length; i++) {
    if ((resistance[i] as number) <= most) continue;
    const first = i;
    let highest = 0;
    for (; i < time.length && (resistance[i] as number) > most; i++)
      highest = Math.max(highest, resistance[i] as number);
    const middle = (x(time[first] as number) + x(time[i] ?? end)) / 2;
    const text = highest === Number.POSITIVE_INFINITY ? 'open' : `↑ ${valueText(highest, 'resistance', 4)}`;
    if (labels.length < 40) labels.push(rimmed(middle, y(highest) + 15, text, 'middle'));
  }
  return labels.join('');
}

/** The resistance of every step that is long enough to hold its number, and what lies beyond the axis. */
function valueLabels(picture: TracePicture, axes: Axes): string {
  const { time, resistance, end } = picture;
  const { x, y, top: most } = axes;
  if (time.length > 60) return beyondLabels(picture, axes);
  return time
    .map((t, i) => {
      const R = resistance[i] as number;
      const [from, to] = [x(t), x(time[i + 1] ?? end)];
      const text = R === Number.POSITIVE_INFINITY ? 'open' : valueText(R, 'resistance', 4);
      if (to - from < 6.4 * text.length + 4 || R === resistance[i - 1]) return '';
      const arrow = R > most && R !== Number.POSITIVE_INFINITY ? '↑ ' : '';
      const place = y(R) - 5 < top + 4 ? y(R) + 15 : y(R) - 5;
      return rimmed((from + to) / 2, place, `${arrow}${text}`, 'middle');
    })
    .join('');
}

function laneNames(): string {
  const place = { 'text-anchor': 'start' };
  return (
    textElement(right + 10, lanes.must + 13, 'alarm must stand', place) +
    textElement(right + 10, lanes.noted + 13, 'alarm noted', place) +
    element('path', {
      d: [lanes.must, lanes.noted].map((y) => `M${left} ${y + laneHeight}H${right}`).join(''),
      style: `fill:none;stroke:${ink('rule')}`,
    })
  );
}

function mustBar({ from, to, since, label }: TraceSpan, { x }: Axes, pattern: string): string {
  const [a, b] = [x(from), Math.max(x(to), x(from) + 2)];
  const middle = lanes.must + laneHeight / 2;
  const delay =
    since === undefined || !(from > since)
      ? ''
      : element('path', {
          d: `M${cut(x(since))} ${lanes.must + 3}V${lanes.must + laneHeight - 3}M${cut(x(since))} ${middle}H${cut(a)}`,
          style: `fill:none;stroke:${ink('ink')}`,
          'stroke-width': 1.4,
        });
  const bar = { x: a, y: lanes.must, width: b - a, height: laneHeight, 'stroke-width': 1.3 };
  const words = plainText(label ?? '');
  const isRoomy = b - a > 6.2 * words.length + 8;
  return (
    delay +
    element('rect', { ...bar, style: `fill:url(#${pattern});stroke:${ink('ink')}` }) +
    (isRoomy && words !== '' ? rimmed((a + b) / 2, middle + 4, words, 'middle', 11) : '')
  );
}

function notedBar({ from, to }: TraceSpan, { x }: Axes): string {
  const [a, b] = [x(from), Math.max(x(to), x(from) + 2)];
  return element('rect', { x: a, y: lanes.noted, width: b - a, height: laneHeight, style: `fill:${ink('fail')}` });
}

function lateBar({ from, to, label }: TraceSpan, { x }: Axes): string {
  const [a, b] = [x(from), Math.max(x(to), x(from) + 2)];
  const style = `fill:${ink('paper')};stroke:${ink('fail')}`;
  return (
    element('rect', {
      x: a,
      y: lanes.noted,
      width: b - a,
      height: laneHeight,
      style,
      'stroke-width': 1.4,
      'stroke-dasharray': '3 2',
    }) +
    (label === undefined
      ? ''
      : textElement((a + b) / 2, lanes.noted + laneHeight + 13, plainText(label), {
          'text-anchor': 'middle',
          'font-size': 11,
          'font-weight': 600,
        }))
  );
}

function legend(pattern: string): string {
  const y = height - 8;
  const bar = (x: number, style: string, dashes?: string): string =>
    element('rect', { x, y: y - 9, width: 16, height: 10, style, 'stroke-width': 1.2, 'stroke-dasharray': dashes });
  const whisker = `M${left + 172} ${y - 8}v8m0 -4h15`;
  return [
    bar(left, `fill:${ink('band')}`),
    textElement(left + 21, y, 'tolerance of a limit', { 'font-size': 11 }),
    element('path', { d: whisker, style: `fill:none;stroke:${ink('ink')}`, 'stroke-width': 1.4 }),
    textElement(left + 193, y, 'limit passed, delay runs', { 'font-size': 11 }),
    bar(left + 338, `fill:url(#${pattern});stroke:${ink('ink')}`),
    textElement(left + 359, y, 'must stand', { 'font-size': 11 }),
    bar(left + 434, `fill:${ink('fail')}`),
    textElement(left + 455, y, 'noted', { 'font-size': 11 }),
    bar(left + 504, `fill:${ink('paper')};stroke:${ink('fail')}`, '3 2'),
    textElement(left + 525, y, 'late', { 'font-size': 11 }),
  ].join('');
}

/** Text with a rim of paper, so that it can be read on lines. */
function rimmed(x: number, y: number, text: string, anchor: string, size = 11): string {
  const style = `fill:${ink('ink')};stroke:${ink('paper')}`;
  return textElement(x, y, text, {
    'font-size': size,
    'stroke-width': 3.5,
    'paint-order': 'stroke',
    'text-anchor': anchor,
    style,
  });
}

function tickText(value: number): string {
  if (Math.abs(value) >= 1e6 || (value !== 0 && Math.abs(value) < 1e-3))
    return value.toExponential().replace('e+', 'e');
  return String(value);
}

function shortened(text: string, length: number): string {
  const characters = [...text];
  return characters.length > length ? `${characters.slice(0, length - 1).join('')}…` : text;
}

function cut(value: number): number {
  return Math.round(value * 100) / 100;
}
