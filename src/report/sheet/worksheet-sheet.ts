import type { Plan } from '../../procedure/index.js';
import { challengesWorksheet } from './challenge-tables.js';
import { benchTimeSection, cautionsSection, picturesSection, warningsSection } from './common-sections.js';
import { generatorText, identification, notesSection } from './identification.js';
import { leakageWorksheet } from './leakage-table.js';
import { measurementSection } from './measurement-section.js';
import { monitorWorksheet } from './monitor-table.js';
import { pointsWorksheet } from './points-worksheet.js';
import { rulesWorksheet } from './rules-table.js';
import type { FormLine, Section, Sheet } from './sheet.js';
import type { SheetOptions } from './sheet-options.js';
import { workingSections } from './working.js';

/** A plan as neutral sections: what to set, to connect and to expect, with room to write. */
export function worksheetSheet(plan: Plan, options: SheetOptions = {}): Sheet {
  const subtitle = generatorText(plan);
  return {
    kind: 'worksheet',
    title: 'Worksheet: verification of RF output',
    subtitle,
    foot: `Worksheet — ${subtitle}`,
    sections: [
      ...notesSection([plan.specification.note, plan.bench.note]),
      identification(plan),
      { id: 'work', blocks: [{ kind: 'lines', lines: headLines(plan) }] },
      ...cautionsSection(plan),
      ...warningsSection(plan.warnings),
      pointsWorksheet(plan),
      ...rulesWorksheet(plan),
      ...monitorWorksheet(plan),
      ...challengesWorksheet(plan),
      ...leakageWorksheet(plan),
      ...benchTimeSection(plan),
      signing(),
      ...measurementSection(plan),
      ...picturesSection(plan),
      ...workingSections(plan, options),
    ],
  };
}

function headLines(plan: Plan): readonly FormLine[] {
  const serial = plan.specification.generator.serialNumber === undefined ? [{ name: 'Serial number' }] : [];
  return [...serial, { name: 'Reason of the verification' }, { name: 'Date' }, { name: 'Read by' }];
}

function signing(): Section {
  return {
    id: 'signature',
    heading: 'Signature',
    blocks: [{ kind: 'lines', lines: [{ name: 'Remarks' }, { name: 'Signature' }, { name: 'Date' }] }],
  };
}
