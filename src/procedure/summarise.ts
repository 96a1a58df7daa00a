import type {
  ChallengeFinding,
  LeakageRow,
  MonitorFinding,
  PointFinding,
  RuleFinding,
  Summary,
  TripFinding,
  Verdict,
} from './findings.js';

/** Counts and verdict of one state of the unit, over everything that is judged. */
export function summarise(
  points: readonly PointFinding[],
  leakage: readonly LeakageRow[],
  rules: readonly RuleFinding[],
  monitor: readonly MonitorFinding[],
  challenges: readonly ChallengeFinding[],
  trips: readonly TripFinding[],
  unverified: number,
): Summary {
  // A release point, or a time, for which the sheet states no limits is only told.
  const stated = trips.filter((row) => row.isStated);
  const displays = points.flatMap((row) => (row.display?.limits === undefined ? [] : [row.display.verdict]));
  const verdicts: Verdict[] = [...points, ...leakage, ...rules, ...monitor, ...challenges, ...stated]
    .map((row) => row.verdict)
    .concat(displays);
  const of = (verdict: Verdict): number => verdicts.filter((entry) => entry === verdict).length;
  const fail = of('fail');
  // A point for which no limit exists is not judged and leaves nothing open.
  const withoutLimits = [...points, ...monitor].filter((row) => row.reason === 'no-limits').length;
  // A threshold that the box cannot verify passes with nobody.
  const open = of('not judged') + unverified - withoutLimits;
  return {
    verdict: fail > 0 ? 'fail' : open > 0 || of('pass') === 0 ? 'incomplete' : 'pass',
    pass: of('pass'),
    fail,
    notJudged: of('not judged') + unverified,
    closeToLimit: [...points, ...leakage, ...stated, ...monitor].filter((row) => row.reason === 'close-to-limit')
      .length,
  };
}
