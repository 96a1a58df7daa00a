import type { Warning } from '../../checks/index.js';
import type { Findings, Plan } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { curvePictures } from '../picture/curve-pictures.js';
import type { Section } from './sheet.js';

/** Cautions, the maker's first, as the plan has them. */
export function cautionsSection(plan: Plan): readonly Section[] {
  if (plan.cautions.length === 0) return [];
  const items = plan.cautions.map((caution) => plainText(caution.text));
  return [{ id: 'cautions', heading: 'Cautions', blocks: [{ kind: 'list', tone: 'caution', items }] }];
}

/** Matters that concern no single row. */
export function warningsSection(warnings: readonly Warning[]): readonly Section[] {
  if (warnings.length === 0) return [];
  const items = [...new Set(warnings.map((warning) => plainText(warning.message)))];
  return [{ id: 'warnings', heading: 'To note', blocks: [{ kind: 'list', tone: 'warning', items }] }];
}

/** Estimated time at the bench, with its parts. */
export function benchTimeSection(plan: Plan): readonly Section[] {
  const { total, parts } = plan.benchTime;
  if (parts.length === 0) return [];
  const list = parts.map(({ what, count, each }) => `${what} ${count} × ${durationText(each)}`).join('; ');
  const text = plainText(`About ${durationText(total)}: ${list}. The times are those of the bench, or assumptions.`);
  return [{ id: 'bench-time', heading: 'Time at the bench', blocks: [{ kind: 'paragraph', text }] }];
}

/** Pictures of the load curves. */
export function picturesSection(plan: Plan, findings?: Findings): readonly Section[] {
  const pictures = curvePictures(plan, findings);
  if (pictures.length === 0) return [];
  const text =
    'Power against load, both axes logarithmic. Limits and readings are drawn as the powers that they mean at the load of the bench.';
  return [
    {
      id: 'curves',
      heading: 'Load curves',
      newPage: true,
      blocks: [
        { kind: 'paragraph', text, tone: 'small' },
        { kind: 'pictures', pictures },
      ],
    },
  ];
}

/** A time as a person says it: `45 s`, `34 min`, `1 h 12 min`. */
export function durationText(seconds: number): string {
  if (seconds < 120) return `${Number(seconds.toPrecision(3))} s`;
  const minutes = Math.round(seconds / 60);
  if (minutes < 120)
    return seconds % 60 === 0 || minutes >= 10 ? `${minutes} min` : `${Number((seconds / 60).toPrecision(2))} min`;
  return `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}
