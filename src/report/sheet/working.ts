import { quantityUnits } from '../../circuit/index.js';
import type { Findings, Plan, PlanPoint } from '../../procedure/index.js';
import { type SourceId, type Step, sources } from '../../working/index.js';
import { plainText } from '../escape/plain-text.js';
import { valueText } from '../numbers/value-text.js';
import { budgetResultText, budgetTable } from './budget-table.js';
import { measuredFromText } from './measured-from-text.js';
import { loadOf } from './point-numbers.js';
import type { Block, Section, Table, Working, WorkingPart, WorkingStep } from './sheet.js';
import type { SheetOptions } from './sheet-options.js';
import { substituteNumbers, workingNumber } from './substitute-numbers.js';

/** Identifier of the working of a point. */
export function workingId(number: number): string {
  return `working-${number}`;
}

/** The steps of every number, and the sources that they name. */
export function workingSections(plan: Plan, options: SheetOptions, findings?: Findings): readonly Section[] {
  if (options.working === false) return [leftOut];
  const numbered = new SourceNumbers();
  const partsByPoint = new Map<string, WorkingPart[]>();
  for (const finding of [...(findings?.points ?? []), ...(findings?.leakage ?? [])]) {
    if (finding.working.length === 0) continue;
    const part = { heading: `Reading, ${finding.phase.replace('-', ' ')}`, steps: stepsOf(finding.working, numbered) };
    const parts = partsByPoint.get(finding.point);
    if (parts === undefined) partsByPoint.set(finding.point, [part]);
    else parts.push(part);
  }
  const blocks: Block[] = [];
  for (const point of plan.points) {
    const limits: WorkingPart[] =
      point.working.length === 0
        ? []
        : [{ heading: 'Expected values and limits', steps: stepsOf(point.working, numbered) }];
    const parts = [...limits, ...(partsByPoint.get(point.id) ?? [])];
    const load = valueText(loadOf(point), 'resistance', 6);
    const heading = plainText(`Point ${point.number}: ${point.outputName}, ${point.settingText} at ${load}`);
    const remarks = [point.measurement?.statement, point.effect?.statement]
      .filter((text) => text !== undefined)
      .map(plainText);
    const tables = budgetTables(point);
    if (parts.length > 0) blocks.push(block({ id: workingId(point.number), heading, remarks, tables, parts }));
  }
  const rules = (findings?.rules ?? []).filter((rule) => rule.working.length > 0);
  rules.forEach((rule, i) => {
    const title = plan.rules.find((entry) => entry.rule === rule.rule)?.definition.title ?? rule.rule;
    const heading = plainText(`Rule: ${title}, ${rule.outputName}, ${rule.phase.replace('-', ' ')}`);
    blocks.push(
      block({
        id: `working-rule-${i + 1}`,
        heading,
        remarks: [],
        tables: [],
        parts: [{ heading: '', steps: stepsOf(rule.working, numbered) }],
      }),
    );
  });
  for (const planned of plan.leakage) {
    const limits =
      planned.working.length === 0 ? [] : [{ heading: 'Limit', steps: stepsOf(planned.working, numbered) }];
    const parts = [...limits, ...(partsByPoint.get(planned.id) ?? [])];
    const from = measuredFromText(planned);
    const heading = plainText(
      `HF leakage ${planned.number}: ${planned.outputName}, ${planned.settingText}${from === undefined ? '' : `, ${from}`}`,
    );
    const id = `working-leakage-${planned.number}`;
    if (parts.length > 0) blocks.push(block({ id, heading, remarks: [], tables: [], parts }));
  }
  const monitorParts: WorkingPart[] = [
    ...(plan.monitorThresholds?.thresholds ?? [])
      .filter(({ working }) => working.length > 0)
      .map(({ limit, baseline, working }) => ({
        heading: `Challenges of ${limit === 'rise' ? 'a rise' : `the ${limit} limit`}${baseline === undefined ? '' : ` from ${valueText(baseline, 'resistance')}`}`,
        steps: stepsOf(working, numbered),
      })),
    ...(findings?.monitor ?? [])
      .filter(({ working }) => working.length > 0)
      .map(({ number, phase, working }) => ({
        heading: `Reading ${number} of its display, ${phase.replace('-', ' ')}`,
        steps: stepsOf(working, numbered),
      })),
    ...(findings?.monitorTrips ?? [])
      .filter(({ working }) => working.length > 0)
      .map(({ phase, working }) => ({
        heading: `Sweeps, ${phase.replace('-', ' ')}`,
        steps: stepsOf(working, numbered),
      })),
    ...(findings?.monitorTraces ?? [])
      .filter(({ working }) => working.length > 0)
      .map(({ number, working }) => ({ heading: `Trace ${number}`, steps: stepsOf(working, numbered) })),
  ];
  if (monitorParts.length > 0) {
    const heading = 'Return-electrode monitor';
    blocks.push(block({ id: 'working-monitor', heading, remarks: [], tables: [], parts: monitorParts }));
  }
  if (blocks.length === 0) return [];
  const text =
    'Every number with its formula, the numbers that went in, and the result. All values are in SI units, rms unless named peak, and printed to eight significant digits; the JSON document holds all digits. A number in brackets is a source of the list below.';
  return [
    {
      id: 'working',
      heading: 'Working',
      newPage: true,
      blocks: [{ kind: 'paragraph', text, tone: 'small' }, ...blocks],
    },
    { id: 'sources', heading: 'Sources', blocks: [{ kind: 'list', tone: 'plain', items: numbered.list() }] },
  ];
}

const leftOut: Section = {
  id: 'working',
  heading: 'Working',
  blocks: [
    {
      kind: 'paragraph',
      text: 'The working of the numbers was left out here: the JSON document holds it, and can be recomputed.',
    },
  ],
};

/** The budget of a reading at the expected value. */
function budgetTables({ number, reads, measurement }: PlanPoint): readonly Table[] {
  if (measurement === undefined) return [];
  const unit = quantityUnits[reads];
  const caption = `Budget at the expected value. ${budgetResultText(measurement.budget, measurement.expanded, unit)}`;
  return [budgetTable(measurement.budget, { id: `budget-${number}`, caption, unit })];
}

function block(working: Working): Block {
  return { kind: 'working', working };
}

/** Steps ready to print, with the numbers of their sources. */
export function stepsOf(steps: readonly Step[], numbered: SourceNumbers): WorkingStep[] {
  return steps.map((step) => {
    const unit = step.unit === '1' || step.unit === 'any' ? '' : ` ${step.unit === 'ohm' ? 'Ω' : step.unit}`;
    const number = numbered.of(step.source);
    const clause = step.clause === undefined ? '' : ` ${step.clause}`;
    return {
      label: plainText(step.label),
      symbol: plainText(step.symbol),
      expression: plainText(step.expression),
      substituted: plainText(substituteNumbers(step.expression, step.inputs)),
      result: `${workingNumber(step.value)}${unit}`,
      source: plainText(`[${number}]${clause}, ${standingOf(step.source)}`),
    };
  });
}

function standingOf(source: SourceId): string {
  return Object.hasOwn(sources, source) ? sources[source].standing : 'not in the list of sources';
}

/** Numbers sources in the order in which they are first named. */
export class SourceNumbers {
  private readonly ids: SourceId[] = [];

  of(id: SourceId): number {
    const known = this.ids.indexOf(id);
    return known >= 0 ? known + 1 : this.ids.push(id);
  }

  list(): string[] {
    return this.ids.map((id, i) => {
      const source: { title: string; standing: string; note?: string } = Object.hasOwn(sources, id)
        ? sources[id]
        : { title: id, standing: 'not in the list of sources' };
      const note = source.note === undefined ? '' : ` ${source.note}`;
      return plainText(`[${i + 1}] ${source.title}. Standing: ${source.standing}.${note}`);
    });
  }
}
