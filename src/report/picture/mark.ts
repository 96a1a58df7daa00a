import type { ShownVerdict } from '../sheet/shown-verdict.js';
import { ink } from './palette.js';
import { element, pathData } from './svg.js';

/**
 * The mark of a verdict around a centre: a disc passes, a half disc passes close to a limit, a cross fails,
 * an open diamond is not judged, an open triangle is incomplete.
 */
export function mark(verdict: ShownVerdict, x: number, y: number, r: number): string {
  const stroke = { 'stroke-width': r / 2.5, 'stroke-linejoin': 'round', 'stroke-linecap': 'round' };
  switch (verdict) {
    case 'pass':
      return element('circle', { cx: x, cy: y, r, style: `fill:${ink('pass')}` });
    case 'close': {
      const inner = r - r / 5;
      const half = `M${x - inner} ${y}A${inner} ${inner} 0 0 0 ${x + inner} ${y}Z`;
      return (
        element('circle', { cx: x, cy: y, r: inner, ...stroke, style: `fill:${ink('paper')};stroke:${ink('pass')}` }) +
        element('path', { d: half, style: `fill:${ink('pass')}` })
      );
    }
    case 'fail': {
      const a = r * 0.85;
      const d =
        pathData([
          [x - a, y - a],
          [x + a, y + a],
        ]) +
        pathData([
          [x - a, y + a],
          [x + a, y - a],
        ]);
      return element('path', { d, ...stroke, 'stroke-width': r / 1.7, style: `fill:none;stroke:${ink('fail')}` });
    }
    case 'not judged': {
      const d = pathData(
        [
          [x, y - r],
          [x + r, y],
          [x, y + r],
          [x - r, y],
        ],
        true,
      );
      return element('path', { d, ...stroke, style: `fill:${ink('paper')};stroke:${ink('open')}` });
    }
    case 'incomplete': {
      const d = pathData(
        [
          [x, y - r],
          [x + r, y + r * 0.8],
          [x - r, y + r * 0.8],
        ],
        true,
      );
      return element('path', { d, ...stroke, style: `fill:${ink('paper')};stroke:${ink('open')}` });
    }
  }
}
