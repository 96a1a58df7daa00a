// The main job, from three files to a record. Everything here is invented.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { assessReadings, makeRecord, planVerification } from 'esu-limits/procedure';
import * as report from 'esu-limits/report';
import { parseBench, parseSpecification, readMonitorTraceCsv, readReadingsCsv } from 'esu-limits/schema';

const here = new URL('.', import.meta.url);
const read = (name) => readFileSync(new URL(name, here), 'utf8');

// 1. The sheet of the generator and the description of the bench become a plan.
const specification = parseSpecification(JSON.parse(read('specification.json')));
const bench = parseBench(JSON.parse(read('bench.json')));
const plan = planVerification(specification, bench);

// 2. The sheet of readings, and a trace of what the monitor did, become findings.
const sheet = readReadingsCsv(read('readings.csv'), { by: 'Invented technician', date: '2026-11-20' });
const trace = readMonitorTraceCsv(read('monitor-trace.csv'), { name: 'Contact lost, broken lead, short circuit' });
const readings = { ...sheet, monitorTraces: [trace] };
const findings = assessReadings(plan, readings);

// 3. Plan, readings and findings become a record that someone signs.
const record = makeRecord(plan, readings, {
  occasion: 'periodic inspection',
  by: 'Invented technician',
  date: '2026-11-20',
});

const out = new URL('out/', here);
mkdirSync(out, { recursive: true });
const files = {
  'worksheet.txt': report.worksheetText(plan),
  'worksheet.md': report.worksheetMarkdown(plan),
  'worksheet.html': report.worksheetHtml(plan),
  'worksheet.csv': report.worksheetCsv(plan),
  'worksheet.json': report.worksheetJson(plan),
  'record.txt': report.recordText(record),
  'record.md': report.recordMarkdown(record),
  'record.html': report.recordHtml(record),
  'record.csv': report.recordCsv(record),
  'record.json': report.recordJson(record),
};
for (const [name, text] of Object.entries(files)) writeFileSync(new URL(name, out), text);

for (const row of findings.points.filter((point) => point.verdict !== 'pass')) {
  console.log(`point ${row.number} (${row.point}): ${row.verdict}. ${row.message}`);
}
const { asFound, final } = findings;
console.log(
  `as found: ${asFound?.verdict}; final: ${final.verdict} (${final.pass} pass, ${final.fail} fail, ${final.notJudged} not judged)`,
);
console.log(`written: ${Object.keys(files).length} files in examples/workshop/out`);
