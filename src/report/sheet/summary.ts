import type { Findings, Summary } from '../../procedure/index.js';
import type { Row, Section } from './sheet.js';
import { verdictCell } from './verdict-word.js';

/** Verdict and counts of the state in which the unit came, and of the state in which it leaves. */
export function summarySection(findings: Findings): Section {
  return {
    id: 'result',
    heading: 'Result',
    blocks: [
      {
        kind: 'table',
        table: {
          id: 'summary',
          caption:
            'Verdict, and count of all that is judged: points, displays, rules of the standard, monitor, leakage',
          columns: [
            { id: 'state', title: 'State', align: 'left' },
            { id: 'verdict', title: 'Verdict', align: 'left' },
            { id: 'pass', title: 'Pass', align: 'right' },
            { id: 'close', title: 'of these close to a limit', short: 'Close', align: 'right' },
            { id: 'fail', title: 'Fail', align: 'right' },
            { id: 'not-judged', title: 'Not judged', align: 'right' },
          ],
          groups: [{ headings: [], notes: [], rows: rowsOf(findings) }],
        },
      },
    ],
  };
}

function rowsOf({ asFound, final }: Findings): readonly Row[] {
  return [...(asFound === undefined ? [] : [rowOf('As found', asFound)]), rowOf('Final', final)];
}

function rowOf(state: string, summary: Summary): Row {
  const counts = [summary.pass, summary.closeToLimit, summary.fail, summary.notJudged];
  return {
    cells: [
      { kind: 'text', text: state },
      verdictCell(summary.verdict),
      ...counts.map((count) => ({ kind: 'number', digits: String(count) }) as const),
    ],
    notes: [],
  };
}
