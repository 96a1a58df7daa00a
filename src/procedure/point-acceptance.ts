import type { Band } from '../band/index.js';
import { CalculationError, type Warning } from '../checks/index.js';
import { type AcceptanceLimits, type AcceptanceOptions, explainAcceptanceBand } from '../decision/index.js';
import type { ExpandedUncertainty } from '../uncertainty/index.js';
import type { Step, UnitName } from '../working/index.js';
import { type PlanDecisionRule, ruleAt } from './decision-rule.js';

/** What the acceptance limits of a point follow from. */
export interface AcceptanceQuestion {
  readonly rule: PlanDecisionRule;
  readonly limits: Band;
  readonly nominal: number;
  /** Unit of the limits. */
  readonly unit: UnitName;
  /** Resolution of the range that is used; not rounded to it where absent. */
  readonly resolution?: number;
  /** Uncertainty of a reading at each limit that there is. */
  readonly atLower?: ExpandedUncertainty;
  readonly atUpper?: ExpandedUncertainty;
}

/** Acceptance limits of a point, as far as the rule can be applied. */
export interface PointAcceptance {
  readonly acceptance?: Band | null;
  readonly failing?: Band;
  readonly assumptions: readonly string[];
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/** Acceptance limits by the rule of the plan, with the uncertainty of a reading at each limit. */
export function pointAcceptance(question: AcceptanceQuestion): PointAcceptance {
  const { rule, limits, nominal, atLower, atUpper } = question;
  if (rule.kind === 'simple-acceptance') return { acceptance: limits, assumptions: [], warnings: [], working: [] };
  try {
    switch (rule.kind) {
      case 'guarded-acceptance':
      case 'guarded-rejection':
      case 'non-binary':
        return bySide(question);
      default: {
        // These rules look at both limits at once: the larger uncertainty serves for both.
        const larger = (atLower?.expandedUncertainty ?? 0) > (atUpper?.expandedUncertainty ?? 0) ? atLower : atUpper;
        return explainAcceptanceBand(limits, ruleAt(rule, limits, nominal), larger ?? {}, optionsOf(question));
      }
    }
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
    const message = `The decision rule cannot be applied here: ${error.message}.`;
    return { assumptions: [], warnings: [{ code: 'rule-not-applicable', message }], working: [] };
  }
}

/** Each limit by itself, with its own uncertainty. */
function bySide(question: AcceptanceQuestion): PointAcceptance {
  const { rule, limits, nominal, atLower, atUpper } = question;
  const options = optionsOf(question);
  const side = (band: Band, at: ExpandedUncertainty | undefined): AcceptanceLimits =>
    explainAcceptanceBand(band, ruleAt(rule, band, nominal), at ?? {}, options);
  const below = limits.lower === undefined ? undefined : side({ lower: limits.lower }, atLower);
  const above = limits.upper === undefined ? undefined : side({ upper: limits.upper }, atUpper);
  const sides = [below, above].filter((entry) => entry !== undefined);
  const acceptance: Band = { ...below?.acceptance, ...above?.acceptance };
  const failing: Band = { ...below?.failing, ...above?.failing };
  const { lower, upper } = acceptance;
  const isEmpty = lower !== undefined && upper !== undefined && lower > upper;
  const message =
    'The guard bands leave no reading that is accepted: the measurement is not good enough for these limits.';
  return {
    acceptance: isEmpty ? null : acceptance,
    ...(rule.kind === 'non-binary' ? { failing } : {}),
    assumptions: [...new Set(sides.flatMap((entry) => entry.assumptions))],
    warnings: [
      ...sides.flatMap((entry) => entry.warnings),
      ...(isEmpty ? [{ code: 'acceptance-empty', message } as const] : []),
    ],
    working: sides.flatMap((entry) => entry.working),
  };
}

function optionsOf({ resolution, unit }: AcceptanceQuestion): AcceptanceOptions {
  return resolution === undefined ? { unit } : { resolution, unit };
}
