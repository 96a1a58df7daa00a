import type { Verdict } from '../../procedure/index.js';
import { escapeHtml } from '../escape/escape-html.js';
import { marginText } from '../numbers/percent-text.js';
import type { ShownVerdict } from '../sheet/shown-verdict.js';
import { mark } from './mark.js';
import { ink } from './palette.js';
import { element } from './svg.js';

/** What a margin picture shows. */
export interface MarginPicture {
  /** 0 at nominal, −1 at the lower limit, +1 at the upper. */
  readonly margin: number;
  readonly verdict: Verdict | 'close';
}

const width = 96;
const height = 14;
/** Beyond this margin the mark stands at the edge, with an arrow. */
const reach = 1.5;

/**
 * One margin as a bar: the box is the tolerance from −100 % to +100 %, the stroke in it is the nominal, the mark
 * is the reading by the shape of its verdict.
 *
 * @param picture Margin and verdict
 * @returns One `svg` element, 96 by 14
 */
export function marginPicture({ margin, verdict }: MarginPicture): string {
  const middle = width / 2;
  const scale = (middle - 8) / reach;
  const shown = Math.max(-reach, Math.min(reach, margin));
  const x = middle + shown * scale;
  const y = height / 2;
  const title = `margin ${marginText(margin)}, ${words[verdict]}`;
  const half = scale;
  const arrow = margin > reach ? `M${width - 4} ${y - 3.5}l3.5 3.5l-3.5 3.5` : `M4 ${y - 3.5}l-3.5 3.5l3.5 3.5`;
  return element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${width} ${height}`, width, height, role: 'img' },
    `<title>${escapeHtml(title)}</title>`,
    element('path', { d: `M2 ${y}H${width - 2}`, style: `fill:none;stroke:${ink('rule')}` }),
    element('rect', {
      x: middle - half,
      y: 2.5,
      width: 2 * half,
      height: height - 5,
      style: `fill:${ink('band')};stroke:${ink('accent')}`,
      'stroke-width': 0.8,
    }),
    element('path', { d: `M${middle} 2.5V${height - 2.5}`, style: `fill:none;stroke:${ink('accent')}` }),
    mark(verdict, x, y, 3.8),
    Math.abs(margin) > reach
      ? element('path', { d: arrow, style: `fill:none;stroke:${ink('fail')}`, 'stroke-width': 1.4 })
      : '',
  );
}

const words: Readonly<Record<ShownVerdict, string>> = {
  pass: 'pass',
  close: 'pass, close to a limit',
  fail: 'fail',
  'not judged': 'not judged',
  incomplete: 'incomplete',
};
