// The rows of a benchmark as a table for people.

/** One line a row, columns aligned; numbers to three digits. */
export function tableOf(rows) {
  const cells = rows.map((row) => [
    row.case,
    `${row.tool} ${row.version}`.trim(),
    String(row.n),
    withUnit(row.min, row.unit),
    withUnit(row.median, row.unit),
    withUnit(row.max, row.unit),
    row.ratio === undefined ? '' : digits(row.ratio),
    goalText(row),
    row.met === undefined ? '' : row.met ? 'met' : 'MISSED',
  ]);
  const table = [['case', 'tool', 'n', 'min', 'median', 'max', 'ratio', 'goal', ''], ...cells];
  const widths = table[0].map((_, i) => Math.max(...table.map((row) => row[i].length)));
  return table
    .map((row) =>
      row
        .map((cell, i) => (i < 2 ? cell.padEnd(widths[i]) : cell.padStart(widths[i])))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}

function goalText(row) {
  if (row.goal === undefined) return '';
  return row.ratio === undefined ? `≤ ${withUnit(row.goal, row.unit)}` : `≤ ${digits(row.goal)}`;
}

function withUnit(value, unit) {
  if (unit === 'MB') return `${digits(value)} MB`;
  const size = Math.abs(value);
  if (size >= 1) return `${digits(value)} s`;
  return size >= 1e-3 ? `${digits(value * 1e3)} ms` : `${digits(value * 1e6)} µs`;
}

function digits(value) {
  return value >= 1000 ? value.toFixed(0) : String(Number(value.toPrecision(3)));
}
