import { type Bench, decisionRuleText, type Plan } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { unitFor } from '../numbers/print-unit.js';
import { significantDigits, valueText } from '../numbers/value-text.js';
import type { Fact, Section } from './sheet.js';

/** Notes of the documents, such as that an example is invented: each once, at the very top. */
export function notesSection(notes: readonly (string | undefined)[]): readonly Section[] {
  const items = [...new Set(notes.filter((note) => note !== undefined).map(plainText))].filter((note) => note !== '');
  return items.length === 0 ? [] : [{ id: 'notes', blocks: [{ kind: 'list', tone: 'note', items }] }];
}

/** Generator and bench, as far as the documents name them. */
export function identification(plan: Plan): Section {
  const { generator, source } = plan.specification;
  const { instrument } = plan.bench;
  return {
    id: 'identification',
    heading: 'Generator and bench',
    blocks: [
      {
        kind: 'facts',
        facts: facts([
          ['Generator', generator.name],
          ['Identification', generator.identification],
          ['Serial number', generator.serialNumber],
          ['Data from', source],
          ['Bench', plan.bench.name],
          ['Instrument', instrument.name],
          ['Instrument identification', instrument.identification],
          ['Calibrated until', instrument.calibratedUntil],
          ['Loads', loadsText(plan.bench)],
          ['Leads', leadsText(plan.bench)],
          ['Limits', limitsText(plan)],
          ['Decision rule', decisionRuleText(plan.options.decisionRule)],
          ['Computed by', `${plan.library.name} ${plan.library.version}`],
        ]),
      },
    ],
  };
}

/** Facts whose values are known, as plain text. */
export function facts(list: readonly (readonly [string, string | undefined])[]): readonly Fact[] {
  return list.flatMap(([name, value]) => (value === undefined ? [] : [{ name, value: plainText(value) }]));
}

/** Generator and its serial number in one line. */
export function generatorText(plan: Plan): string {
  const { name, identification: number, serialNumber } = plan.specification.generator;
  const parts = [name, number, serialNumber === undefined ? undefined : `serial number ${serialNumber}`];
  return plainText(parts.filter((part) => part !== undefined).join(', '));
}

function loadsText(bench: Bench): string {
  const unit = unitFor(
    'resistance',
    bench.loads.map((load) => load.resistance),
  );
  return bench.loads
    .map((load) => {
      const short =
        load.overload === undefined
          ? ''
          : `, ${valueText(load.overload.power, 'power')} for ${valueText(load.overload.on, 'time')}`;
      return `${load.id}: ${significantDigits(load.resistance, unit, 6)} ${unit.symbol}, ${valueText(load.powerRating, 'power')}${short}`;
    })
    .join('; ');
}

function leadsText(bench: Bench): string | undefined {
  if (bench.leads === undefined || bench.leads.length === 0) return undefined;
  return bench.leads.map((lead) => `${lead.name} (${lead.circuits.join(', ')})`).join('; ');
}

function limitsText(plan: Plan): string {
  const rounding =
    plan.options.rounding === 'inward'
      ? 'rounded inward to what the instrument shows'
      : 'rounded to the nearest value that the instrument shows';
  const govern = {
    published: 'published rows before derived limits',
    derived: 'derived limits before published rows',
    tighter: 'the tighter of published and derived limits',
  }[plan.options.govern];
  return `${rounding}; ${govern}`;
}
