import { escapeHtml } from '../escape/escape-html.js';
import type { BandPoint, CurvePicture, PictureReading } from './curve-picture.js';
import { type LogAxis, logAxis } from './log-axis.js';
import { mark } from './mark.js';
import { ink } from './palette.js';
import { element, pathData, textElement } from './svg.js';

/** How a picture is drawn. */
export interface PictureOptions {
  /** Start of the identifiers inside the picture: two pictures on one page need different ones. Default: `curve`. */
  readonly id?: string;
}

const width = 400;
const height = 312;
const left = 50;
const right = 388;
const top = 30;
const bottom = 236;
const fontSize = 11.5;

/**
 * A load curve as SVG: power against load on logarithmic axes, the tolerance as a band, limits as bars between
 * two caps, published points as squares, readings by the shape of their verdict.
 *
 * A reading beyond the axes is drawn at the edge with an arrow.
 *
 * @param picture What to show, as `curvePictures` makes it
 * @param options Start of the identifiers
 * @returns One `svg` element: no script, no external reference; its colours are custom properties with a fallback for paper
 */
export function loadCurvePicture(picture: CurvePicture, options: PictureOptions = {}): string {
  const id = options.id ?? 'curve';
  const { x, y } = axesOf(picture);
  const attributes = {
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 ${width} ${height}`,
    width,
    height,
    role: 'img',
    'aria-labelledby': `${id}-title ${id}-desc`,
    'font-family': 'system-ui, "Segoe UI", "Helvetica Neue", Arial, sans-serif',
    'font-size': fontSize,
    style: `fill:${ink('ink')}`,
  };
  return element(
    'svg',
    attributes,
    `<title id="${id}-title">${escapeHtml(picture.title)}</title>`,
    `<desc id="${id}-desc">${escapeHtml(picture.description)}</desc>`,
    element(
      'clipPath',
      { id: `${id}-clip` },
      element('rect', { x: left, y: top, width: right - left, height: bottom - top }),
    ),
    textElement(left, 18, shortened(picture.title, 58), { 'font-weight': 600, 'font-size': 13 }),
    element('g', { 'clip-path': `url(#${id}-clip)` }, bandShapes(picture.band, x, y)),
    axes(x, y),
    element('g', { 'clip-path': `url(#${id}-clip)` }, limitBars(picture.limits, x, y), lineShape(picture, x, y)),
    published(picture, x, y),
    readings(picture.readings, x, y),
    legend(picture),
  );
}

function axesOf({ line, band, limits, readings }: CurvePicture): { x: LogAxis; y: LogAxis } {
  const loads = [...line, ...limits, ...readings].map((entry) => entry.load);
  const edges = [...band, ...limits].flatMap(({ lower, upper }) => [lower, upper]);
  const shown = [...line.map((point) => point.power), ...edges].filter(
    (power) => power !== undefined && power > 0,
  ) as number[];
  const lowest = Math.min(...shown);
  const highest = Math.max(...shown);
  // A reading far outside, such as a keying error, must not squeeze the curve flat: it is drawn at the edge.
  const near = readings
    .map((reading) => reading.power)
    .filter((power) => power > lowest / 2.5 && power < highest * 2.5);
  const linePowers = line.map((point) => point.power);
  // A lower limit close to zero would stretch the axis without end.
  const floor = Math.min(...linePowers, ...near) / 4;
  const powers = [...shown, ...near].filter((power) => power >= floor);
  return {
    x: logAxis(loads, { from: left, to: right, labelGap: 27 }),
    y: logAxis(powers, { from: bottom, to: top, labelGap: 17, leastRatio: 3 }),
  };
}

function axes(x: LogAxis, y: LogAxis): string {
  const line = (value: 'grid' | 'rule', d: string): string =>
    element('path', { d, style: `fill:none;stroke:${ink(value)}`, 'stroke-width': 0.8 });
  const vertical = (values: readonly number[]): string =>
    values.map((v) => `M${cut(x.at(v))} ${top}V${bottom}`).join('');
  const horizontal = (values: readonly number[]): string =>
    values.map((v) => `M${left} ${cut(y.at(v))}H${right}`).join('');
  const soft = { style: `fill:${ink('soft')}` };
  return [
    line('grid', vertical(x.minor) + horizontal(y.minor)),
    line('rule', vertical(x.labelled) + horizontal(y.labelled)),
    element('rect', {
      x: left,
      y: top,
      width: right - left,
      height: bottom - top,
      style: `fill:none;stroke:${ink('soft')}`,
    }),
    ...x.labelled.map((v) => textElement(x.at(v), bottom + 15, tickText(v), { 'text-anchor': 'middle', ...soft })),
    ...y.labelled.map((v) => textElement(left - 6, y.at(v) + 4, tickText(v), { 'text-anchor': 'end', ...soft })),
    textElement((left + right) / 2, bottom + 31, 'Load in Ω', { 'text-anchor': 'middle' }),
    textElement(0, 0, 'Power in W', {
      'text-anchor': 'middle',
      transform: `translate(13 ${(top + bottom) / 2}) rotate(-90)`,
    }),
  ].join('');
}

/** Runs of the band between which it does not apply. */
function runs(band: readonly BandPoint[]): BandPoint[][] {
  const all: BandPoint[][] = [];
  for (const point of band) {
    if (point.starts === true || all.length === 0) all.push([point]);
    else all.at(-1)?.push(point);
  }
  return all;
}

function bandShapes(band: readonly BandPoint[], x: LogAxis, y: LogAxis): string {
  const edge = { style: `fill:none;stroke:${ink('accent')}`, 'stroke-width': 0.9, 'stroke-dasharray': '4 2.5' };
  return runs(band)
    .map((run) => {
      const side = (name: 'lower' | 'upper'): [number, number][] =>
        run.flatMap((point) => {
          const power = point[name];
          if (power === undefined) return [];
          return [[x.at(point.load), power > 0 ? y.at(power) : bottom + 5]];
        });
      const lower = side('lower');
      const upper = side('upper');
      const area =
        lower.length > 0 && upper.length > 0
          ? element('path', { d: pathData([...upper, ...lower.reverse()], true), style: `fill:${ink('band')}` })
          : '';
      return (
        area +
        [upper, lower]
          .filter((l) => l.length > 1)
          .map((l) => element('path', { d: pathData(l), ...edge }))
          .join('')
      );
    })
    .join('');
}

function lineShape({ line }: CurvePicture, x: LogAxis, y: LogAxis): string {
  const d = pathData(line.map(({ load, power }) => [x.at(load), y.at(power)]));
  return element('path', {
    d,
    style: `fill:none;stroke:${ink('accent')}`,
    'stroke-width': 1.8,
    'stroke-linejoin': 'round',
  });
}

function published(picture: CurvePicture, x: LogAxis, y: LogAxis): string {
  return picture.published.map(({ load, power }) => square(x.at(load), y.at(power))).join('');
}

function square(x: number, y: number): string {
  const style = `fill:${ink('paper')};stroke:${ink('accent')}`;
  return element('rect', { x: x - 2.4, y: y - 2.4, width: 4.8, height: 4.8, style });
}

function limitBars(limits: readonly BandPoint[], x: LogAxis, y: LogAxis): string {
  return limits
    .map(({ load, lower, upper }) => limitBar(x.at(load), sidePlace(lower, y), sidePlace(upper, y)))
    .join('');
}

function sidePlace(power: number | undefined, y: LogAxis): number | undefined {
  if (power === undefined) return undefined;
  return power > 0 ? y.at(power) : bottom + 20;
}

function limitBar(x: number, lower: number | undefined, upper: number | undefined): string {
  if (lower === undefined && upper === undefined) return '';
  const cap = (y: number | undefined): string => (y === undefined ? '' : `M${cut(x - 5)} ${cut(y)}h10`);
  // A side without limit runs out of the picture.
  const d = `M${cut(x)} ${cut(lower ?? bottom + 20)}V${cut(upper ?? top - 20)}${cap(lower)}${cap(upper)}`;
  return element('path', { d, style: `fill:none;stroke:${ink('ink')}`, 'stroke-width': 1.1 });
}

function readings(list: readonly PictureReading[], x: LogAxis, y: LogAxis): string {
  return list
    .map(({ number, load, power, verdict, phase }) => {
      const px = x.at(load);
      const low = power <= 0 || y.at(power) > bottom;
      const high = !low && y.at(power) < top;
      const py = low ? bottom - 12 : high ? top + 12 : y.at(power);
      const arrow = low
        ? `M${cut(px)} ${bottom - 7}v6m-3 -3.5l3 3.5l3 -3.5`
        : `M${cut(px)} ${top + 7}v-6m-3 3.5l3 -3.5l3 3.5`;
      const beyond =
        low || high ? element('path', { d: arrow, style: `fill:none;stroke:${ink('ink')}`, 'stroke-width': 1.2 }) : '';
      const ring = phase === 'as-left' ? asLeftRing(px, py) : '';
      return ring + mark(verdict, px, py, 4.2) + beyond + numberLabel(px + 8, py + 3.5, String(number));
    })
    .join('');
}

function asLeftRing(x: number, y: number): string {
  return element('circle', { cx: x, cy: y, r: 7, style: `fill:none;stroke:${ink('ink')}`, 'stroke-width': 0.9 });
}

/** A number with a rim of paper, so that it can be read on lines. */
function numberLabel(x: number, y: number, text: string): string {
  const style = `fill:${ink('ink')};stroke:${ink('paper')}`;
  return textElement(x, y, text, { 'font-size': 10, 'stroke-width': 2.6, 'paint-order': 'stroke', style });
}

interface LegendItem {
  readonly text: string;
  readonly sign: (x: number, y: number) => string;
}

function legend(picture: CurvePicture): string {
  const verdicts = new Set(picture.readings.map((reading) => reading.verdict));
  const items: LegendItem[] = [
    {
      text: picture.published.length > 0 ? 'published curve' : 'expected',
      sign: lineSign(picture.published.length > 0),
    },
  ];
  if (picture.band.length > 0) items.push({ text: picture.bandName ?? 'tolerance', sign: bandSign });
  if (picture.limits.length > 0) {
    items.push({ text: 'limits', sign: (x, y) => limitBar(x, y + 6, y - 6) });
  }
  const marks = [
    ['pass', 'pass'],
    ['close', 'pass, close to a limit'],
    ['fail', 'fail'],
    ['not judged', 'not judged'],
  ] as const;
  for (const [verdict, text] of marks) {
    if (verdicts.has(verdict)) items.push({ text, sign: (x, y) => mark(verdict, x, y, 4.2) });
  }
  if (picture.readings.some((reading) => reading.phase === 'as-left'))
    items.push({ text: 'as left', sign: asLeftRing });
  return placeLegend(items);
}

function placeLegend(items: readonly LegendItem[]): string {
  let x = 10;
  let y = bottom + 50;
  return items
    .map(({ text, sign }) => {
      // Widths are estimates: no text is measured without a browser.
      const needed = 28 + text.length * 6.2;
      if (x > 10 && x + needed > width) {
        x = 10;
        y += 17;
      }
      const drawn = sign(x + 7, y - 4) + textElement(x + 18, y, text, { 'font-size': 11 });
      x += needed;
      return drawn;
    })
    .join('');
}

function lineSign(withKnots: boolean): (x: number, y: number) => string {
  return (x, y) =>
    element('path', {
      d: `M${cut(x - 7)} ${cut(y)}h14`,
      style: `fill:none;stroke:${ink('accent')}`,
      'stroke-width': 1.8,
    }) + (withKnots ? square(x, y) : '');
}

function bandSign(x: number, y: number): string {
  const style = `fill:${ink('band')};stroke:${ink('accent')}`;
  return element('rect', {
    x: x - 7,
    y: y - 5,
    width: 14,
    height: 10,
    style,
    'stroke-width': 0.9,
    'stroke-dasharray': '4 2.5',
  });
}

function tickText(value: number): string {
  if (value >= 1e6 || value < 1e-3) return value.toExponential(0).replace('e+', 'e');
  return value >= 1000 ? `${value / 1000}k` : String(value);
}

function shortened(text: string, length: number): string {
  const characters = [...text];
  return characters.length > length ? `${characters.slice(0, length - 1).join('')}…` : text;
}

function cut(value: number): number {
  return Math.round(value * 100) / 100;
}
