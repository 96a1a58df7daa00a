import { checks } from './index.js';
import { type CheckRow, runCheck } from './run-checks.js';

/** `npm run checks`: every published check in a row; `--json` gives the same as data; exit code 1 where one fails. */
const rows = checks.map(runCheck);
const short = (value: number): string => Number(value.toPrecision(10)).toString();
const columns: readonly (readonly [string, (row: CheckRow) => string])[] = [
  ['id', ({ id }) => id],
  ['published', ({ published, unit }) => `${published} ${unit}`],
  ['computed', ({ computed }) => short(computed)],
  ['difference', ({ difference }) => difference.toExponential(1)],
  ['tolerance', ({ tolerance }) => tolerance.toExponential(1)],
  ['held', ({ held }) => (held ? 'yes' : 'NO')],
  ['standing', ({ standing }) => standing],
  ['source', ({ source }) => source],
];

if (process.argv.includes('--json')) {
  console.log(JSON.stringify(rows, null, 2));
} else {
  const cells = [columns.map(([name]) => name), ...rows.map((row) => columns.map(([, text]) => text(row)))];
  const widths = columns.map((_, i) => Math.max(...cells.map((line) => (line[i] as string).length)));
  for (const line of cells)
    console.log(
      line
        .map((cell, i) => cell.padEnd(widths[i] as number))
        .join('  ')
        .trimEnd(),
    );
  const failed = rows.filter(({ held }) => !held).length;
  console.log(`\n${rows.length} checks, ${failed === 0 ? 'all hold' : `${failed} do NOT hold`}`);
}
if (rows.some(({ held }) => !held)) process.exitCode = 1;
