import type { OverallVerdict, ReasonCode, Verdict } from '../../procedure/index.js';
import type { Cell } from './sheet.js';
import { type ShownVerdict, shownVerdict } from './shown-verdict.js';

const words: Readonly<Record<ShownVerdict, string>> = {
  pass: 'pass',
  close: 'pass, close',
  fail: 'FAIL',
  'not judged': 'not judged',
  incomplete: 'INCOMPLETE',
};

const reasons: Readonly<Record<ReasonCode, string>> = {
  inside: 'inside the limits',
  'close-to-limit': 'close to a limit',
  'below-lower': 'below the lower limit',
  'above-upper': 'above the upper limit',
  'in-guard-band': 'inside the guard band',
  'outside-in-guard-band': 'inside the guard band',
  'conditional-pass': 'conditional',
  'conditional-fail': 'conditional',
  'no-decision': 'rule not applicable',
  'no-reading': 'no reading',
  'false-alarm': 'false alarm',
  'early-release': 'released too early',
  'no-limits': 'no limits',
  'not-plausible': 'not plausible',
  'nothing-to-compare': 'nothing to compare',
};

/** Reasons that the row says already: in its verdict, or in the remark below. */
const needsNoWord: readonly ReasonCode[] = ['inside', 'close-to-limit', 'no-reading'];

/** The cell of a verdict: its word, and the reason in a few words where there is one. */
export function verdictCell(verdict: Verdict | OverallVerdict, reason?: ReasonCode): Cell {
  const shown = shownVerdict(verdict, reason);
  const because = reason === undefined || needsNoWord.includes(reason) ? undefined : reasons[reason];
  return { kind: 'verdict', verdict: shown, word: words[shown], ...(because === undefined ? {} : { reason: because }) };
}
