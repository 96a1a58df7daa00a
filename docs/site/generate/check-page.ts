import { checks } from '../../../tests/checks/index.js';
import { type CheckRow, runCheck } from '../../../tests/checks/run-checks.js';
import { capital, page, table, text } from './text.js';

/** The worked checks, computed anew: what `npm run checks` prints. */
export function checkPage(): string {
  const rows = checks.map(runCheck);
  const failed = rows.filter(({ held }) => !held);
  if (failed.length > 0) throw new Error(`checks that do not hold: ${failed.map(({ id }) => id).join(', ')}`);
  const rooms = [...new Set(rows.map(({ room }) => room))];
  return page(
    'Worked checks',
    [
      `${rows.length} comparisons with values from outside, computed anew when this page was made; all hold. The tests and \`npm run checks\` read the same list. A tolerance is half a unit of the last published digit, or less.`,
      `By room: ${rooms.map((room) => `[${room}](#${room})`).join(' · ')}. What the standings mean is said with the [formulas](./formulas.md).`,
      ...rooms.map((room) => {
        const cells = rows.filter((row) => row.room === room).map(cellsOf);
        return `## ${capital(room)} {#${room}}\n\n${table(['Compared', 'Published', 'Ours', 'Difference', 'Tolerance', 'Source', 'Standing'], cells)}`;
      }),
    ],
    true,
  );
}

function cellsOf(row: CheckRow): string[] {
  const unit = row.unit === '1' ? '' : ` ${row.unit}`;
  return [
    `<span id="${row.id}"></span>${text(row.title)}`,
    text(`${row.published}${unit}`),
    text(Number(row.computed.toPrecision(10)).toString()),
    difference(row.difference),
    row.tolerance === 0 ? 'exact' : difference(row.tolerance),
    text(row.source),
    row.standing,
  ];
}

function difference(value: number): string {
  if (value === 0) return '0';
  const [digits, exponent] = value.toExponential(1).split('e');
  return `${digits?.replace('-', '−')}·10<sup>${exponent?.replace('+', '').replace('-', '−')}</sup>`;
}
