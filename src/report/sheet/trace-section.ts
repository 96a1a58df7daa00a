import type { MonitorTrace, Plan, TraceFindings } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { tracePictures } from '../picture/trace-pictures.js';
import type { Block, Section } from './sheet.js';
import { ruleText, tripTable } from './trip-table.js';

/** Traces of the monitor: pictures with thresholds and alarms, and every alarm judged. */
export function tracesRecord(
  plan: Plan,
  traces: readonly MonitorTrace[],
  findings: readonly TraceFindings[],
): readonly Section[] {
  if (findings.length === 0) return [];
  const assumptions = [...new Set(findings.flatMap(({ expected }) => expected.assumptions))];
  return [
    {
      id: 'monitor-traces',
      heading: 'Return-electrode monitor against time',
      blocks: [
        ruleText(plan),
        ...findings.flatMap((finding): Block[] => {
          const caption = `Alarms on trace ${finding.number}${finding.name === undefined ? '' : `: ${finding.name}`}`;
          return [
            { kind: 'traces', pictures: tracePictures(plan, traces, [finding]) },
            finding.rows.length === 0
              ? { kind: 'paragraph', text: `Trace ${finding.number}: no alarm had to stand, and none was noted.` }
              : tripTable(`monitor-trace-${finding.number}`, plainText(caption), finding.rows),
            ...(finding.warnings.length === 0
              ? []
              : [
                  {
                    kind: 'list',
                    tone: 'warning',
                    items: finding.warnings.map(({ message }) => plainText(message)),
                  } as const,
                ]),
          ];
        }),
        ...(assumptions.length === 0
          ? []
          : [{ kind: 'list', tone: 'plain', items: assumptions.map(plainText) } as const]),
      ],
    },
  ];
}
