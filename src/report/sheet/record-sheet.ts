import type { Reading, VerificationRecord } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { valueText } from '../numbers/value-text.js';
import { challengesMadeAgain, challengesRead, challengesRecord, tripsRead } from './challenge-tables.js';
import { benchTimeSection, cautionsSection, picturesSection, warningsSection } from './common-sections.js';
import { displayRecord } from './display-table.js';
import { facts, generatorText, identification, notesSection } from './identification.js';
import { leakageRecord } from './leakage-table.js';
import { measurementSection } from './measurement-section.js';
import { extraMonitorText, monitorRecord } from './monitor-table.js';
import { pointFinder } from './point-finder.js';
import { pointsRecord } from './points-record.js';
import { rulesRecord } from './rules-table.js';
import type { FormLine, Section, Sheet } from './sheet.js';
import type { SheetOptions } from './sheet-options.js';
import { summarySection } from './summary.js';
import { tracesRecord } from './trace-section.js';
import { workingSections } from './working.js';

/** A record as neutral sections: what was found, and on what it stands. */
export function recordSheet(record: VerificationRecord, options: SheetOptions = {}): Sheet {
  const { plan, readings, findings } = record;
  const subtitle = generatorText(plan);
  const again = challengesMadeAgain(readings);
  return {
    kind: 'record',
    title: 'Record: verification of RF output',
    subtitle,
    foot: `Record — ${subtitle}`,
    sections: [
      ...notesSection([plan.specification.note, plan.bench.note, readings.note]),
      summarySection(findings),
      identification(plan),
      work(record),
      ...cautionsSection(plan),
      ...warningsSection([...findings.warnings, ...plan.warnings]),
      pointsRecord(plan, findings.points),
      ...displayRecord(plan, findings.points),
      ...rulesRecord(plan, findings.rules),
      ...monitorRecord(plan, findings.monitor, readings.monitor ?? [], findings.monitorDisplay),
      ...challengesRecord(
        plan,
        challengesRead(findings.monitorChallenges, again),
        tripsRead(findings.monitorTrips, again.size > 0),
      ),
      ...tracesRecord(plan, readings.monitorTraces ?? [], findings.monitorTraces),
      ...leakageRecord(plan, findings.leakage),
      ...interruptionSection(record),
      ...extraSection(record),
      ...benchTimeSection(plan),
      signing(record),
      ...measurementSection(plan, findings.points),
      ...picturesSection(plan, findings),
      ...workingSections(plan, options, findings),
    ],
  };
}

function work({ readings, signature }: VerificationRecord): Section {
  const list = facts([
    ['Reason of the verification', signature.occasion],
    ['Read by', readings.by],
    ['Read on', readings.date],
  ]);
  return { id: 'work', blocks: list.length === 0 ? [] : [{ kind: 'facts', facts: list }] };
}

/** Readings after an interruption of the supply: the rules judge them, no limit of a point does. */
function interruptionSection({ plan, readings }: VerificationRecord): readonly Section[] {
  const find = pointFinder(plan);
  const items = readings.readings.flatMap((reading) => {
    const point = reading.afterInterruption === true ? find(reading.point) : undefined;
    if (point === undefined) return [];
    const mode = reading.modeUnchanged === undefined ? '' : `; mode ${reading.modeUnchanged ? 'unchanged' : 'CHANGED'}`;
    return [plainText(`${readingText({ ...reading, point: `${point.number} (${point.id})` })}${mode}`)];
  });
  if (items.length === 0) return [];
  return [
    {
      id: 'interruption',
      heading: 'Readings after an interruption of the supply',
      blocks: [{ kind: 'list', tone: 'plain', items }],
    },
  ];
}

function extraSection({ findings }: VerificationRecord): readonly Section[] {
  const items = [
    ...findings.extra.map((reading) => plainText(readingText(reading))),
    ...findings.extraMonitor.map((reading) => extraMonitorText(reading)),
  ];
  if (items.length === 0) return [];
  return [
    {
      id: 'extra',
      heading: 'Readings without a place in the plan',
      blocks: [
        { kind: 'paragraph', text: 'These readings belong to no point of the plan and were not judged.' },
        { kind: 'list', tone: 'plain', items },
      ],
    },
  ];
}

function readingText({ point, phase, quantity, value, note }: Reading): string {
  const remark = note === undefined ? '' : ` — ${note}`;
  return `Point ${point}: ${quantity} ${valueText(value, quantity, 6)} (${phase.replace('-', ' ')})${remark}`;
}

function signing({ signature }: VerificationRecord): Section {
  const lines: FormLine[] = [
    line('Remarks', signature.remarks),
    line('Name', signature.by),
    line('Date', signature.date),
    { name: 'Signature' },
  ];
  return { id: 'signature', heading: 'Signature', blocks: [{ kind: 'lines', lines }] };
}

function line(name: string, value: string | undefined): FormLine {
  return value === undefined ? { name } : { name, value: plainText(value) };
}
