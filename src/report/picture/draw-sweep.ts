import { plainText } from '../escape/plain-text.js';
import { valueText } from '../numbers/value-text.js';
import { ink } from './palette.js';
import { element, pathData, textElement } from './svg.js';
import type { SweepPicture } from './sweep-picture.js';

const width = 340;
const height = 190;
const left = 54;
const right = 10;
const top = 26;
const bottom = 36;

/**
 * A sweep as a picture: resistance against the order of setting, the band in which the monitor may trip, and what it
 * did at each step. An alarm is a filled square, silence an open circle: shape tells them apart, not colour alone.
 *
 * @param picture Steps, threshold, response time
 * @returns An SVG element
 */
export function drawSweep({ title, steps, threshold, response }: SweepPicture): string {
  const values = [
    ...steps.map(({ set }) => set),
    ...(threshold === undefined ? [] : [threshold.lower, threshold.upper]),
  ];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const room = most > least ? (most - least) * 0.1 : Math.max(1, most * 0.1);
  const x = (i: number): number =>
    left +
    ((width - left - right) * (steps.length > 1 ? i / (steps.length - 1) : 0.5) * 0.94 + (width - left - right) * 0.03);
  const y = (value: number): number =>
    top + ((most + room - value) / (most - least + 2 * room)) * (height - top - bottom);
  // The label stands where the line is not.
  const rises = (steps.at(-1)?.set ?? 0) > (steps[0]?.set ?? 0);
  const soft = { 'font-size': 9, style: `fill:${ink('soft')}` };
  const frame = element('rect', {
    x: left,
    y: top,
    width: width - left - right,
    height: height - top - bottom,
    style: `fill:none;stroke:${ink('rule')}`,
  });
  const ticks = [least, (least + most) / 2, most].map(
    (value) =>
      element('line', { x1: left - 4, x2: left, y1: y(value), y2: y(value), style: `stroke:${ink('rule')}` }) +
      textElement(left - 6, y(value) + 3, valueText(value, 'resistance', 3), { ...soft, 'text-anchor': 'end' }),
  );
  const band =
    threshold === undefined
      ? ''
      : element('rect', {
          x: left,
          y: y(threshold.upper),
          width: width - left - right,
          height: Math.max(1.5, y(threshold.lower) - y(threshold.upper)),
          style: `fill:${ink('band')};stroke:${ink('accent')};stroke-dasharray:3 2`,
        }) +
        textElement(rises ? left + 4 : width - right - 4, y(threshold.upper) - 3, plainText(threshold.label), {
          ...soft,
          'text-anchor': rises ? 'start' : 'end',
        });
  const line = element('path', {
    d: pathData(steps.map(({ set }, i) => [x(i), y(set)] as const)),
    style: `fill:none;stroke:${ink('accent')}`,
  });
  const marks = steps.map(({ set, alarm }, i) =>
    alarm
      ? element('rect', { x: x(i) - 3.5, y: y(set) - 3.5, width: 7, height: 7, style: `fill:${ink('fail')}` })
      : element('circle', {
          cx: x(i),
          cy: y(set),
          r: 3.5,
          style: `fill:${ink('paper')};stroke:${ink('pass')};stroke-width:1.5`,
        }),
  );
  const legendY = height - 6;
  const legend = [
    element('circle', {
      cx: left + 4,
      cy: legendY - 3,
      r: 3.5,
      style: `fill:${ink('paper')};stroke:${ink('pass')};stroke-width:1.5`,
    }),
    textElement(left + 12, legendY, 'no alarm', soft),
    element('rect', { x: left + 66, y: legendY - 6.5, width: 7, height: 7, style: `fill:${ink('fail')}` }),
    textElement(left + 78, legendY, 'alarm', soft),
    textElement(width - right, legendY, plainText(responseText(response)), { ...soft, 'text-anchor': 'end' }),
    textElement((left + width - right) / 2, height - 22, 'order of setting', { ...soft, 'text-anchor': 'middle' }),
  ];
  return element(
    'svg',
    { viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-label': plainText(`${title}: ${spoken(steps)}`) },
    textElement(left, 14, plainText(title), { 'font-size': 11, 'font-weight': 'bold', style: `fill:${ink('ink')}` }),
    band,
    frame,
    ...ticks,
    line,
    ...marks,
    ...legend,
  );
}

function responseText(response: SweepPicture['response']): string {
  if (response === undefined) return '';
  const { time, permitted } = response;
  const limit = permitted === undefined ? '' : ` (permitted ${valueText(permitted, 'time')})`;
  return `alarm after ${valueText(time, 'time')}${limit}`;
}

function spoken(steps: SweepPicture['steps']): string {
  return steps.map(({ set, alarm }) => `${valueText(set, 'resistance', 4)} ${alarm ? 'alarm' : 'no alarm'}`).join(', ');
}
