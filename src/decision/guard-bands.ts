import type { Band } from '../band/index.js';
import { fail, requireNonNegative, requirePositive, type Warning } from '../checks/index.js';
import {
  guardBandFormula,
  guardBandOfMultiplierFormula,
  guardBandOfRiskFormula,
  guardBandOutwardFormula,
  managedRiskFormula,
  oneSidedUncertaintyRatioFormula,
  relaxedGuardBandFormula,
  rootSumSquareFormula,
  testUncertaintyRatioFormula,
} from '../working/formulas/decision.js';
import { type Step, step, type UnitName } from '../working/index.js';
import { globalRiskGuardBand } from './global-risk-guard-band.js';
import { requireAbsolute, requireExpanded, type Spread } from './measurement.js';
import { type Range, rangeOf } from './range.js';
import { type DecisionRule, requireRatio, requireRisk, type UncertaintyRatioRule } from './rule.js';
import { specificRiskLimit } from './specific-risk-limit.js';
import { testUncertaintyRatio } from './test-uncertainty-ratio.js';
import { uncertaintyRatioGuardBand } from './uncertainty-ratio-guard-band.js';

/** The guard band of each limit, positive inward: in the unit of the band, or as a fraction of the acceptance limit. */
export interface GuardBands {
  readonly lower: number;
  readonly upper: number;
  readonly isRelative: boolean;
  /** Nothing can be accepted, whatever the widths say. */
  readonly isEmpty: boolean;
  readonly working: readonly Step[];
  readonly warnings: readonly Warning[];
}

/** The guard bands that a rule asks for. The uncertainty is looked at only where the rule needs it. */
export function guardBandsOf(band: Band, rule: DecisionRule, spread: () => Spread, unit: UnitName): GuardBands {
  switch (rule.kind) {
    case 'simple-acceptance':
      return { lower: 0, upper: 0, isRelative: false, isEmpty: false, working: [], warnings: [] };
    case 'guarded-acceptance':
    case 'non-binary':
      return ofExpanded(requireRatio(rule.ratio), 1, spread(), unit);
    case 'guarded-rejection':
      return ofExpanded(requireRatio(rule.ratio), -1, spread(), unit);
    case 'specific-consumer-risk':
      return ofSpecificRisk(rangeOf(band), 'consumer', requireRisk(rule.risk, 0.5), spread(), unit);
    case 'specific-producer-risk':
      return ofSpecificRisk(rangeOf(band), 'producer', requireRisk(rule.risk, 0.5), spread(), unit);
    case 'global-consumer-risk': {
      const risk = requireRisk(rule.risk, 1);
      const width = globalRiskGuardBand(rangeOf(band), rule.prior, requireAbsolute(spread()), risk);
      const message = `Without a guard band the global consumer's risk is already at most ${risk}.`;
      const warnings = width === 0 ? [{ code: 'guard-band-clamped' as const, message }] : [];
      return { lower: width, upper: width, isRelative: false, isEmpty: false, working: [], warnings };
    }
    case 'test-uncertainty-ratio':
      return ofUncertaintyRatio(band, rule, spread(), unit);
    default:
      return fail(
        'unknown-choice',
        'rule.kind',
        (rule as { kind: unknown }).kind,
        `must be one of: ${kinds.join(', ')}`,
      );
  }
}

const kinds: readonly DecisionRule['kind'][] = [
  'simple-acceptance',
  'guarded-acceptance',
  'guarded-rejection',
  'specific-consumer-risk',
  'specific-producer-risk',
  'global-consumer-risk',
  'test-uncertainty-ratio',
  'non-binary',
];

function ofExpanded(ratio: number, direction: 1 | -1, spread: Spread, unit: UnitName): GuardBands {
  const U = requireExpanded(spread);
  const width = direction * (ratio * U);
  const formula = direction === 1 ? guardBandFormula : guardBandOutwardFormula;
  const naming = { unit: spread.isRelative ? ('1' as const) : unit };
  const working = [step(formula, 'guard band', { r: ratio, U }, width, naming)];
  return { lower: width, upper: width, isRelative: spread.isRelative, isEmpty: false, working, warnings: [] };
}

function ofSpecificRisk(
  { from, to }: Range,
  whose: 'consumer' | 'producer',
  risk: number,
  { u, isRelative, tails }: Spread,
  unit: UnitName,
): GuardBands {
  const empty = { lower: 0, upper: 0, isRelative, isEmpty: true, working: [], warnings: [] };
  if (isRelative) {
    if (Number.isFinite(from)) requireNonNegative(from, 'band.lower');
    if (Number.isFinite(to)) requireNonNegative(to, 'band.upper');
  }
  if (u === 0) return { ...empty, isEmpty: false };
  const isSingle = !(Number.isFinite(from) && Number.isFinite(to));
  const question = { whose, risk, tails };
  const single = Number.POSITIVE_INFINITY;
  const zOf = (middle: number, toOther: (z: number) => number) =>
    specificRiskLimit({ ...question, middle: isSingle ? single : middle, toOther });
  let lower: number | null;
  let upper: number | null;
  if (isRelative) {
    // The value at the limit is T/(1 ± z·u), and its own uncertainty counts.
    const middle = (to - from) / (u * (to + from));
    lower = zOf(middle, (z) => (from === 0 ? single : ((1 - z * u) * (to / from) - 1) / u));
    upper = zOf(middle, (z) => (1 - (1 + z * u) * (from / to)) / u);
  } else {
    const span = (to - from) / u;
    lower = upper = zOf(span / 2, (z) => span - z);
  }
  if (lower === null || upper === null) return empty;
  const label = whose === 'consumer' ? 'guard band' : 'guard band, outward';
  const naming = { unit: isRelative ? ('1' as const) : unit };
  const at = (z: number, side: string) => step(guardBandOfRiskFormula, label + side, { z, u }, z * u, naming);
  const working = lower === upper ? [at(lower, '')] : [at(lower, ', lower limit'), at(upper, ', upper limit')];
  return { lower: lower * u, upper: upper * u, isRelative, isEmpty: false, working, warnings: [] };
}

function ofUncertaintyRatio(band: Band, rule: UncertaintyRatioRule, spread: Spread, unit: UnitName): GuardBands {
  requireAbsolute(spread);
  const U = requirePositive(requireExpanded(spread), 'expandedUncertainty');
  const { method, nominal } = rule;
  const { lower, upper } = band;
  const ratio = testUncertaintyRatio(band, U, nominal === undefined ? {} : { nominal });
  const { multiplier, formulaMultiplier, warnings } = uncertaintyRatioGuardBand(ratio, method);
  const width = multiplier * U;
  const label = 'test uncertainty ratio';
  const working: Step[] = [
    lower !== undefined && upper !== undefined
      ? step(testUncertaintyRatioFormula, label, { T_L: lower, T_U: upper, U }, ratio)
      : step(oneSidedUncertaintyRatioFormula, label, { T: (lower ?? upper) as number, N: nominal as number, U }, ratio),
  ];
  const naming = { unit };
  if (method === 'managed-risk') {
    working.push(step(managedRiskFormula, 'multiplier of the guard band', { TUR: ratio }, formulaMultiplier));
    working.push(step(guardBandOfMultiplierFormula, 'guard band', { M: formulaMultiplier, U }, width, naming));
  } else if (method === 'relaxed-below-four') {
    working.push(step(relaxedGuardBandFormula, 'guard band', { TUR: ratio, U }, width, naming));
  } else if (method === 'whole-below-four') {
    working.push(step(guardBandFormula, 'guard band', { r: multiplier, U }, width, naming));
  } else if (ratio >= 1) {
    working.push(step(rootSumSquareFormula, 'guard band', { TUR: ratio, U }, width, naming));
  }
  return { lower: width, upper: width, isRelative: false, isEmpty: width > ratio * U * (1 + 1e-12), working, warnings };
}
