import { contains, explainBandAround } from '../band/index.js';
import type { Step } from '../working/index.js';
import type { PointFinding, RuleFinding, Verdict } from './findings.js';
import { deviationText, percentText } from './percent-text.js';
import type { Plan, PlanPoint, PlanRule } from './plan.js';
import { settingLadders } from './plan-rules.js';
import { namingOf, roundedText } from './quantity-text.js';
import type { Phase, Reading } from './readings.js';
import type { Output } from './specification.js';
import { relativeDifference } from './steps.js';

/** Readings of one state of the unit, ready for the rules. */
export interface StateOfUnit {
  readonly phase: Phase;
  /** Rows with a plausible reading, by point. */
  readonly rows: ReadonlyMap<string, readonly PointFinding[]>;
  /** Readings after an interruption of the supply, by point, with the power that each implies. */
  readonly afterInterruption: ReadonlyMap<string, readonly { readonly reading: Reading; readonly power: number }[]>;
}

/** A rule of the plan against one state of the unit. */
export function assessRule(plan: Plan, rule: PlanRule, output: Output, state: StateOfUnit): RuleFinding {
  const byId = new Map(plan.points.map((point) => [point.id, point]));
  const points = rule.points.map((id) => byId.get(id) as PlanPoint);
  const outcome = outcomeOf[rule.rule](rule, points, output, state);
  return {
    rule: rule.rule,
    output: rule.output,
    outputName: rule.outputName,
    clause: rule.definition.clause,
    phase: state.phase,
    working: [],
    ...outcome,
  };
}

interface Outcome {
  readonly verdict: Verdict;
  readonly message: string;
  readonly points: readonly string[];
  readonly working?: readonly Step[];
}

type Assess = (rule: PlanRule, points: readonly PlanPoint[], output: Output, state: StateOfUnit) => Outcome;

const outcomeOf: Readonly<Record<PlanRule['rule'], Assess>> = {
  'output-accuracy': (rule, points, _output, state) => {
    const tolerance = {
      relative: { below: rule.parameters['below'] as number, above: rule.parameters['above'] as number },
    };
    const outside: { point: PlanPoint; text: string }[] = [];
    const working: Step[] = [];
    for (const point of points) {
      const expected = point.expected?.power as number;
      const allowed = explainBandAround(expected, tolerance, namingOf('power'));
      for (const row of state.rows.get(point.id) ?? []) {
        const power = row.power as number;
        if (contains(allowed.band, power)) continue;
        const deviation = relativeDifference('deviation of the power', power, expected);
        outside.push({ point, text: `point ${point.number}: ${deviationText(deviation.value)}` });
        working.push(...allowed.working, deviation);
      }
    }
    if (outside.length > 0) {
      const list = outside.map((entry) => entry.text).join('; ');
      return {
        verdict: 'fail',
        message: `Power outside the permitted deviation at ${list}.`,
        points: outside.map((e) => e.point.id),
        working,
      };
    }
    return (
      missing(points, state) ?? {
        verdict: 'pass',
        message: `Power inside the permitted deviation at ${count(points.length, 'point')}.`,
        points: points.map((point) => point.id),
      }
    );
  },

  'output-monotone': (_rule, points, output, state) => {
    const rises: { ids: string[]; text: string }[] = [];
    const working: Step[] = [];
    for (const ladder of settingLadders(points, output)) {
      let highest: { point: PlanPoint; power: number } | undefined;
      for (const point of ladder) {
        const powers = (state.rows.get(point.id) ?? []).map((row) => row.power as number);
        if (powers.length === 0) continue;
        const low = Math.min(...powers);
        if (highest !== undefined && highest.point.setting !== point.setting && highest.power > low) {
          rises.push({
            ids: [highest.point.id, point.id],
            text: `${roundedText(highest.power, 'power')} at ${highest.point.settingText} and ${roundedText(low, 'power')} at ${point.settingText}`,
          });
          if (low > 0) working.push(relativeDifference('rise when the setting is lowered', highest.power, low));
        }
        const high = Math.max(...powers);
        if (highest === undefined || high > highest.power) highest = { point, power: high };
      }
    }
    if (rises.length > 0) {
      return {
        verdict: 'fail',
        message: `The output rises when the setting is lowered: ${rises.map((rise) => rise.text).join('; ')}.`,
        points: [...new Set(rises.flatMap((rise) => rise.ids))],
        working,
      };
    }
    return (
      missing(points, state) ?? {
        verdict: 'pass',
        message: `The output does not rise when the setting is lowered, at ${count(points.length, 'point')}.`,
        points: points.map((point) => point.id),
      }
    );
  },

  'peak-voltage': (_rule, points, output, state) => {
    const limit = output.maximumPeakVoltage as number;
    const ids = points.map((point) => point.id);
    const peaks = [...state.rows.values()].flat().flatMap((row) => {
      const peak = row.reading?.peakVoltage;
      return peak === undefined || !row.point.startsWith(`${output.id}/`) ? [] : [{ row, peak }];
    });
    const over = peaks.filter(({ peak }) => peak > limit);
    if (over.length > 0) {
      const list = over
        .map(({ row, peak }) => `${roundedText(peak, 'voltage')} peak at point ${row.number}`)
        .join('; ');
      return {
        verdict: 'fail',
        message: `${list}: above the stated ${roundedText(limit, 'voltage')} peak.`,
        points: over.map(({ row }) => row.point),
      };
    }
    if (!peaks.some(({ row }) => ids.includes(row.point))) {
      return { verdict: 'not judged', message: 'No peak voltage was read.', points: ids };
    }
    const highest = Math.max(...peaks.map(({ peak }) => peak));
    return {
      verdict: 'pass',
      message: `At most ${roundedText(highest, 'voltage')} peak against ${roundedText(limit, 'voltage')} peak.`,
      points: ids,
    };
  },

  'supply-interruption': (rule, points, _output, state) => {
    const rise = rule.parameters['above'] as number;
    const point = points[0] as PlanPoint;
    const before = (state.rows.get(point.id) ?? []).map((row) => row.power as number);
    const after = state.afterInterruption.get(point.id) ?? [];
    const ids = [point.id];
    if (before.length === 0 || after.length === 0) {
      const what = before.length === 0 ? 'before' : 'after';
      return {
        verdict: 'not judged',
        message: `No reading ${what} the interruption at point ${point.number}.`,
        points: ids,
      };
    }
    // The lowest before and the highest after: never the kinder pair.
    const y = Math.min(...before);
    const x = Math.max(...after.map((entry) => entry.power));
    const text = `${roundedText(y, 'power')} before, ${roundedText(x, 'power')} after`;
    const working = y > 0 ? [relativeDifference('rise after the interruption', x, y)] : [];
    if (x > y * (1 + rise)) {
      return { verdict: 'fail', message: `${text}: risen by more than ${percentText(rise)}.`, points: ids, working };
    }
    if (after.some((entry) => entry.reading.modeUnchanged === false)) {
      return { verdict: 'fail', message: 'The mode changed when the supply was interrupted.', points: ids, working };
    }
    if (after.some((entry) => entry.reading.modeUnchanged === undefined)) {
      return { verdict: 'not judged', message: `${text}: state whether the mode was unchanged.`, points: ids, working };
    }
    return { verdict: 'pass', message: `${text}; mode unchanged.`, points: ids, working };
  },
};

function missing(points: readonly PlanPoint[], state: StateOfUnit): Outcome | undefined {
  const without = points.filter((point) => !state.rows.has(point.id));
  if (without.length === 0) return undefined;
  return {
    verdict: 'not judged',
    message: `No usable reading at point ${without.map((point) => point.number).join(', ')}.`,
    points: without.map((point) => point.id),
  };
}

function count(n: number, noun: string): string {
  return `${n} ${noun}${n === 1 ? '' : 's'}`;
}
