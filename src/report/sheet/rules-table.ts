import type { Plan, PlanRule, RuleFinding } from '../../procedure/index.js';
import { sources } from '../../working/index.js';
import { plainText } from '../escape/plain-text.js';
import { blank, stateCell, textCell } from './cells.js';
import type { Cell, Column, Row, Section } from './sheet.js';
import { verdictCell } from './verdict-word.js';

/** Rules of the standard that were chosen: what to do at the bench. */
export function rulesWorksheet(plan: Plan): readonly Section[] {
  if (plan.rules.length === 0) return [];
  const columns: Column[] = [
    ...columnsOf,
    { id: 'instruction', title: 'What to do', align: 'left' },
    { id: 'result', title: 'Result', align: 'left' },
  ];
  const rows = plan.rules.map((rule) => ({
    cells: [...nameCells(rule.definition.title, rule.outputName), textCell(rule.instruction), blank],
    notes: [],
  }));
  return section(plan, columns, rows);
}

/** Rules of the standard that were chosen, judged. */
export function rulesRecord(plan: Plan, findings: readonly RuleFinding[]): readonly Section[] {
  if (findings.length === 0) return [];
  const columns: Column[] = [
    ...columnsOf,
    { id: 'state', title: 'State', align: 'left' },
    { id: 'message', title: 'Finding', align: 'left' },
    { id: 'verdict', title: 'Verdict', align: 'left' },
  ];
  const rows = withoutRepetition(findings).map((finding) => {
    const title = plan.rules.find((rule) => rule.rule === finding.rule)?.definition.title ?? finding.rule;
    return {
      cells: [
        ...nameCells(title, finding.outputName),
        finding.both ? textCell('both') : stateCell(finding.phase),
        textCell(finding.message),
        verdictCell(finding.verdict),
      ],
      notes: [],
    };
  });
  return section(plan, columns, rows);
}

/** What holds for the unit as found and as left in the same words stands once. */
function withoutRepetition(findings: readonly RuleFinding[]): readonly (RuleFinding & { readonly both: boolean })[] {
  const same = (a: RuleFinding, b: RuleFinding): boolean =>
    a.phase !== b.phase &&
    a.rule === b.rule &&
    a.output === b.output &&
    a.verdict === b.verdict &&
    a.message === b.message;
  return findings
    .filter((finding) => finding.phase === 'as-found' || !findings.some((other) => same(finding, other)))
    .map((finding) => ({ ...finding, both: findings.some((other) => same(finding, other)) }));
}

const columnsOf: readonly Column[] = [
  { id: 'rule', title: 'Rule', align: 'left' },
  { id: 'output', title: 'Output', align: 'left' },
];

function nameCells(title: string, outputName: string): Cell[] {
  return [textCell(title), textCell(outputName)];
}

function section(plan: Plan, columns: readonly Column[], rows: readonly Row[]): readonly Section[] {
  const caption = 'Rules of the standard that were chosen';
  const texts = plan.rules.map(ruleText);
  return [
    {
      id: 'rules',
      heading: 'Rules of the standard',
      blocks: [
        { kind: 'table', table: { id: 'rules', caption, columns, groups: [{ headings: [], notes: [], rows }] } },
        { kind: 'list', tone: 'plain', items: [...new Set(texts)] },
      ],
    },
  ];
}

/** What a rule asks, with clause and standing; parameters that differ from the rule's own are named. */
function ruleText({ definition, parameters }: PlanRule): string {
  const { title, text, clause, standing, source } = definition;
  const document = Object.hasOwn(sources, source) ? (sources[source].title.split(',')[0] as string) : source;
  const own = Object.entries(parameters)
    .filter(([name, value]) => definition.parameters[name] !== value)
    .map(([name, value]) => `${name} ${Number((value * 100).toPrecision(6))} %`);
  const changed = own.length === 0 ? '' : ` Applied here with other parameters: ${own.join(', ')}.`;
  return plainText(`${title} (${document}, ${clause}, ${standing}): ${text}${changed}`);
}
