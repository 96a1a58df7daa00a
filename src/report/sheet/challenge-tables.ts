import { alarmReasons } from '../../monitor/index.js';
import type { ChallengeFinding, Phase, Plan, PlanChallenge, Readings, TripFindings } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { valueText } from '../numbers/value-text.js';
import { sweepPictures } from '../picture/sweep-pictures.js';
import { isAnyReason, reasonCell, reasonColumn } from './alarm-reason-cell.js';
import { blank, none, stateCell, textCell } from './cells.js';
import { warningNotes } from './point-notes.js';
import type { Block, Column, Row, Section } from './sheet.js';
import { ruleText, tripTable } from './trip-table.js';
import { verdictCell } from './verdict-word.js';

/** Challenges of the monitor's thresholds, with room for what it does. */
export function challengesWorksheet(plan: Plan): readonly Section[] {
  const thresholds = plan.monitorThresholds;
  if (thresholds === undefined) return [];
  const columns: Column[] = [
    { id: 'number', title: 'No.', align: 'right' },
    { id: 'what', title: 'What to do', align: 'left' },
    { id: 'found', title: 'Alarm? As found', short: 'As found', align: 'left' },
    { id: 'left', title: 'Alarm? As left', short: 'As left', align: 'left' },
  ];
  const rows = thresholds.challenges.map(
    (challenge): Row => ({
      cells: [{ kind: 'number', digits: String(challenge.number) }, textCell(challenge.instruction), blank, blank],
      notes: [{ tone: 'plain', text: plainText(`${challenge.reason}${findsText(challenge)}`) }],
    }),
  );
  return [
    {
      id: 'monitor-challenges',
      heading: 'Thresholds of the return-electrode monitor',
      blocks: [
        { kind: 'paragraph', text: plainText(`Connection: ${thresholds.connection}`) },
        ...boxText(plan),
        tableOf('monitor-challenges', 'Resistances to set, and what the monitor must do', columns, rows),
        {
          kind: 'paragraph',
          tone: 'small',
          text: `Where the monitor says why it alarms, write it beside the alarm: ${alarmReasons.join(', ')}.`,
        },
        ...undecided(plan),
        ...cautions(plan),
      ],
    },
  ];
}

/** What a trip point of a sweep is worth, and what is accepted of it. */
function findsText(challenge: PlanChallenge): string {
  if (challenge.kind !== 'sweep' || challenge.finds === undefined) return '';
  const { expandedUncertainty, limits, acceptance } = challenge.finds;
  const band = acceptance === undefined ? limits : acceptance;
  const word = acceptance === undefined ? 'permitted' : 'accepted';
  const range =
    band === null ? 'none is accepted' : `${word}${sideText(' from', band.lower)}${sideText(' to', band.upper)}`;
  return ` It finds the point with U ${valueText(expandedUncertainty, 'resistance', 2)}: ${range}.`;
}

function sideText(word: string, limit: number | undefined): string {
  return limit === undefined ? '' : `${word} ${valueText(limit, 'resistance', 6)}`;
}

/** Challenges and sweeps of the monitor, judged, with a picture of each sweep. */
export function challengesRecord(
  plan: Plan,
  findings: readonly ChallengeFinding[],
  trips: readonly TripFindings[],
): readonly Section[] {
  const thresholds = plan.monitorThresholds;
  if (thresholds === undefined) return [];
  const pictures = sweepPictures(plan, trips);
  const hasReasons = isAnyReason(findings);
  const tripRows = trips.flatMap((trip) => trip.rows);
  return [
    {
      id: 'monitor-challenges',
      heading: 'Thresholds of the return-electrode monitor',
      blocks: [
        { kind: 'paragraph', text: plainText(`Connection: ${thresholds.connection}`) },
        ...boxText(plan),
        tableOf(
          'monitor-challenges',
          'Resistances that were set, and what the monitor did',
          hasReasons
            ? [...challengeColumns, reasonColumn, ...verdictColumns]
            : [...challengeColumns, ...verdictColumns],
          findings.map((finding) => challengeRow(finding, thresholds.challenges, hasReasons)),
        ),
        ...(tripRows.length === 0
          ? []
          : [ruleText(plan), tripTable('monitor-trips', 'Trip points and response times', tripRows)]),
        ...(pictures.length === 0 ? [] : [{ kind: 'sweeps', pictures } as const]),
        ...trips.flatMap((trip): Block[] =>
          trip.warnings.length === 0
            ? []
            : [{ kind: 'list', tone: 'warning', items: trip.warnings.map(({ message }) => plainText(message)) }],
        ),
        ...undecided(plan),
        ...cautions(plan),
      ],
    },
  ];
}

const challengeColumns: readonly Column[] = [
  { id: 'number', title: 'No.', align: 'right' },
  { id: 'set', title: 'Set', align: 'right' },
  { id: 'baseline', title: 'Baseline', align: 'right' },
  { id: 'must', title: 'Must', align: 'left' },
  { id: 'did', title: 'Did', align: 'left' },
];

const verdictColumns: readonly Column[] = [
  { id: 'state', title: 'State', align: 'left' },
  { id: 'verdict', title: 'Verdict', align: 'left' },
];

function challengeRow(finding: ChallengeFinding, challenges: readonly PlanChallenge[], hasReasons: boolean): Row {
  const { number, set, baseline, mustAlarm, alarm, responseTime, response, phase, verdict, message, note } = finding;
  const isPlain = verdict === 'pass' && (response === undefined || response.reason === 'inside');
  const reason = challenges.find((entry) => entry.number === number)?.reason;
  const after = responseTime === undefined ? '' : ` after ${valueText(responseTime, 'time')}`;
  return {
    cells: [
      { kind: 'number', digits: String(number) },
      textCell(set === 'open' ? 'open' : ohms(set)),
      baseline === undefined ? none : textCell(ohms(baseline)),
      textCell(mustAlarm ? 'alarm' : 'no alarm'),
      alarm === undefined ? none : textCell(`${alarm ? 'alarm' : 'no alarm'}${after}`),
      ...(hasReasons ? [reasonCell(finding)] : []),
      stateCell(phase),
      verdictCell(verdict, response?.reason),
    ],
    notes: [
      ...(isPlain ? [] : [{ tone: verdict === 'pass' ? 'plain' : 'attention', text: plainText(message) } as const]),
      ...(verdict === 'pass' || reason === undefined ? [] : [{ tone: 'plain', text: plainText(reason) } as const]),
      ...warningNotes(finding.warnings ?? []),
      ...(note === undefined ? [] : [{ tone: 'plain', text: plainText(`Note: “${note}”`) } as const]),
    ],
  };
}

/** Which threshold this box cannot verify, and the stretch in which no verdict is possible. */
function undecided(plan: Plan): Block[] {
  const { thresholds, warnings } = plan.monitorThresholds ?? { thresholds: [], warnings: [] };
  const items = thresholds.map(({ limit, baseline, undecided: band, status, reason }) => {
    const name = `${limit === 'rise' ? 'Rise' : `The ${limit} limit`}${baseline === undefined ? '' : ` from ${ohms(baseline)}`}`;
    const from = band.lower === undefined ? '' : ` from ${valueText(band.lower, 'resistance')}`;
    const to = band.upper === undefined ? '' : ` to ${valueText(band.upper, 'resistance')}`;
    const between = from === '' && to === '' ? '' : ` An alarm at a set value${from}${to} proves nothing.`;
    return plainText(`${name}: ${status.replace('-', ' ')}.${reason === '' ? '' : ` ${reason}`}${between}`);
  });
  return [
    ...(items.length === 0 ? [] : [{ kind: 'list', tone: 'plain', items } as const]),
    ...(warnings.length === 0
      ? []
      : [{ kind: 'list', tone: 'warning', items: warningNotes(warnings).map(({ text }) => text) } as const]),
  ];
}

function cautions(plan: Plan): Block[] {
  const items = (plan.monitorThresholds?.cautions ?? []).map(plainText);
  return items.length === 0 ? [] : [{ kind: 'list', tone: 'caution', items }];
}

function boxText(plan: Plan): Block[] {
  const box = plan.bench.resistanceBox;
  if (box === undefined) return [];
  const { relative, absolute } = box.accuracy;
  const parts = [
    relative === undefined ? undefined : `${Number((relative * 100).toPrecision(6))} % of the value`,
    absolute === undefined ? undefined : ohms(absolute),
  ].filter((part) => part !== undefined);
  const text = `Resistance box: ${box.name === undefined ? '' : `${box.name}, `}good to ${parts.join(' + ')}.`;
  return [{ kind: 'paragraph', tone: 'small', text: plainText(text) }];
}

function tableOf(id: string, caption: string, columns: readonly Column[], rows: readonly Row[]): Block {
  return { kind: 'table', table: { id, caption, columns, groups: [{ headings: [], notes: [], rows }] } };
}

function ohms(value: number): string {
  return valueText(value, 'resistance', 6);
}

/** Numbers of the challenges that were made once more, on the unit as left. */
export function challengesMadeAgain({ monitorChallenges = [] }: Readings): ReadonlySet<number> {
  return new Set(monitorChallenges.filter(({ phase }) => phase === 'as-left').map(({ challenge }) => challenge));
}

/** Rows of a state that somebody made, or should have made. */
export function challengesRead(findings: readonly ChallengeFinding[], again: ReadonlySet<number>): ChallengeFinding[] {
  const asFound: Phase = 'as-found';
  const has = new Set(findings.filter(({ phase }) => phase === asFound).map(({ number }) => number));
  return findings.filter(({ phase, number }) => phase === asFound || !has.has(number) || again.has(number));
}

/** Sweeps of a state that somebody made: those as found do not count once more as left. */
export function tripsRead(trips: readonly TripFindings[], isReadAgain: boolean): readonly TripFindings[] {
  const hasFound = trips.some(({ phase }) => phase === 'as-found');
  return trips.filter(({ phase }) => phase === 'as-found' || !hasFound || isReadAgain);
}
