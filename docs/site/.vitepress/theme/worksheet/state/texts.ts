import { type Band, type Fault, formatBand, formatQuantity, quantityUnits, type Step, sources } from 'esu-limits';
import { type OverallVerdict, type PlanPoint, type PointFinding, type Verdict } from 'esu-limits/procedure';
import type { ShownVerdict } from 'esu-limits/report';

export const noLimits = 'no limits';

/** A fault as a sentence for the person: what is needed, and what may help. */
export function faultSentence({ requirement, hint }: Fault): string {
  const needed = requirement.charAt(0).toUpperCase() + requirement.slice(1);
  return `${needed.replace(/\.$/, '')}.${hint === undefined ? '' : ` ${hint}`}`;
}

/** Limits as text, in the unit that suits them. */
export function bandText(band: Band, unit: 'W' | 'A' | 'V' | 'ohm' | 's'): string {
  return band.lower === undefined && band.upper === undefined ? noLimits : formatBand(band, unit);
}

/** A value as it is where four digits suffice for it, else rounded to four significant digits. */
export function shortText(value: number, unit: 'W' | 'A' | 'V' | 'ohm' | 's'): string {
  const exact = formatQuantity(value, unit);
  if (exact.replace(/\D/g, '').length <= 4) return exact;
  return formatQuantity(value, unit, { digits: 4, rounding: 'nearest' });
}

/** What is expected at a point, in the quantity that is read. */
export function expectedText(point: PlanPoint): string {
  const { nominal, reads } = point;
  return nominal === undefined ? 'nothing stated' : shortText(nominal, quantityUnits[reads]);
}

export function limitsText({ limits, reads }: PlanPoint): string {
  return bandText(limits, quantityUnits[reads]);
}

/** The verdict that is shown: a pass close to its limit has a mark of its own. */
export function shownVerdict(finding: Pick<PointFinding, 'verdict' | 'reason'>): Verdict | 'close' {
  return finding.verdict === 'pass' && finding.reason === 'close-to-limit' ? 'close' : finding.verdict;
}

const words: Readonly<Record<ShownVerdict, string>> = {
  pass: 'pass',
  close: 'pass, close',
  fail: 'FAIL',
  'not judged': 'not judged',
  incomplete: 'INCOMPLETE',
};

export function verdictWord(verdict: Verdict | OverallVerdict | 'close'): string {
  return words[verdict];
}

/** The numbers that went into a step: `P = 120, R = 500`. */
export function inputsText({ inputs }: Step): string {
  return Object.entries(inputs)
    .map(([name, value]) => `${name} = ${numberText(value)}`)
    .join(', ');
}

/** The result of a step with its unit. */
export function resultText({ value, unit }: Step): string {
  const symbol = unit === '1' || unit === 'any' ? '' : ` ${unit === 'ohm' ? 'Ω' : unit}`;
  return `${numberText(value)}${symbol}`;
}

/** Where a step comes from, with its standing. */
export function sourceText({ source, clause }: Step): string {
  if (!Object.hasOwn(sources, source)) return source;
  const { title, standing } = sources[source];
  return `${title}${clause === undefined ? '' : `, ${clause}`} (${standing})`;
}

/** A number to eight significant digits, as the sheets print workings. */
function numberText(value: number): string {
  const text = String(Number(value.toPrecision(8)));
  return text.replace('-', '−');
}
