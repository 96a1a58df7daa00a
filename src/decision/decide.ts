import { type Band, checkBand } from '../band/index.js';
import { fail, requireFinite, requireResult, type Warning } from '../checks/index.js';
import { distanceToLowerFormula, distanceToUpperFormula } from '../working/formulas/decision.js';
import { type Step, step } from '../working/index.js';
import { distributionOf, priorAssumptions } from './assumptions.js';
import { type Conformance, conformanceIn } from './conformance-probability.js';
import { type DecisionWord, decisionWord, isWithin } from './decision-word.js';
import { type AcceptanceOptions, explainAcceptanceBand } from './explain-acceptance-band.js';
import { type GlobalRisk, globalRisk } from './global-risk.js';
import { type MeasurementUncertainty, requireAbsolute, spreadOf } from './measurement.js';
import type { Prior } from './prior.js';
import { rangeOf } from './range.js';
import type { DecisionRule } from './rule.js';

/** A measured value with everything that its decision depends on. */
export interface DecisionInput extends MeasurementUncertainty, AcceptanceOptions {
  /** Tolerance limits; one may be absent. */
  readonly band: Band;
  /** Measured value, in the unit of the band. */
  readonly value: number;
  /** How the acceptance limits follow. */
  readonly rule: DecisionRule;
  /** What is known of the quantity before it is measured, for the global risks; that of the rule where it has one. */
  readonly prior?: Prior;
}

/** A decision, with rule, limits, probability, risks and assumptions. */
export interface Decision {
  readonly decision: DecisionWord;
  readonly rule: DecisionRule;
  /** Tolerance limits. */
  readonly tolerance: Band;
  /** Acceptance limits; `null` where no reading is accepted. */
  readonly acceptance: Band | null;
  /** Only of the rule `non-binary`: readings outside fail. */
  readonly failing?: Band;
  /** Distance of each acceptance limit inside its tolerance limit, negative outside; `null` where none is accepted. */
  readonly guardBand: Band | null;
  /** Standard uncertainty of the value, in the unit of the band. */
  readonly standardUncertainty: number;
  /** Whether the quantity conforms, as probabilities from this measurement alone. */
  readonly conformance: Conformance;
  /** Probability that this decision is wrong: of a favourable one, that the quantity does not conform; else that it does. */
  readonly specificRisk: number;
  /** Risks over all items, where a prior is given; of the rule `non-binary` only a pass counts as accepted. */
  readonly globalRisk?: GlobalRisk;
  readonly assumptions: readonly string[];
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/**
 * Decides on a measured value by a rule, and says how sure the decision is.
 *
 * A value within 1e-12 (relative) of a limit counts as on it, and the limits themselves are inside. Where the guard bands
 * leave nothing to accept, the value is rejected and a warning says why.
 *
 * @param input Tolerance, value, uncertainty, rule; prior, resolution and unit where there are such
 * @returns Decision, acceptance limits, conformance probability, risks, assumptions, steps
 * @throws CalculationError `not-a-number`, `band-reversed`, `no-limits`, `negative`, `not-positive`, `not-a-fraction`,
 * `out-of-range`, `missing-member`, `wrong-count`, `contradiction`, `unknown-choice`, `result-out-of-range`
 * @source JCGM 106:2012, clauses 7 to 9; ILAC-G8:09/2019, 4.2
 * @example
 * ```ts
 * import { decide } from 'esu-limits/decision';
 * const band = { lower: 240, upper: 360 };
 * const simple = { kind: 'simple-acceptance' } as const;
 * const guarded = { kind: 'guarded-acceptance', ratio: 1 } as const;
 * const reading = { band, value: 352, expandedUncertainty: 12, coverageFactor: 2 };
 * decide({ ...reading, rule: simple }).decision; // → "accept"
 * decide({ ...reading, rule: guarded }).decision; // → "reject"
 * decide({ ...reading, rule: { kind: 'non-binary', ratio: 1 } }).decision; // → "conditional-pass"
 * decide({ ...reading, rule: simple }).specificRisk.toFixed(4); // → "0.0912"
 * ```
 */
export function decide(input: DecisionInput): Decision {
  const { value, rule, unit = 'any' } = input;
  const tolerance = checkBand(input.band);
  if (tolerance.lower === undefined && tolerance.upper === undefined) {
    fail('no-limits', 'band', tolerance, 'must have a limit');
  }
  requireFinite(value, 'value');
  const spread = spreadOf(input);
  const u = spread.isRelative ? spread.u * Math.abs(value) : spread.u;
  const options = input.resolution === undefined ? { unit } : { unit, resolution: input.resolution };
  const limits = explainAcceptanceBand(tolerance, rule, input, options);
  const decision = decisionWord(value, { ...limits, tolerance });
  // An exact value that is on a limit but for rounding conforms, as it is accepted.
  const { from, to } = rangeOf(tolerance);
  const judged = u === 0 && isWithin(tolerance, value) ? Math.min(to, Math.max(from, value)) : value;
  const conformance = conformanceIn({ from, to }, judged, u, spread.tails);
  const isFavourable = decision === 'accept' || decision === 'pass' || decision === 'conditional-pass';
  const prior = input.prior ?? (rule.kind === 'global-consumer-risk' ? rule.prior : undefined);
  const { acceptance, failing, guardBand, warnings } = limits;
  const assumptions = new Set([
    ...limits.assumptions,
    ...distributionOf(spread),
    ...(prior === undefined ? [] : priorAssumptions(prior)),
  ]);
  return {
    decision,
    rule,
    tolerance,
    acceptance,
    ...(failing === undefined ? {} : { failing }),
    guardBand,
    standardUncertainty: u,
    conformance,
    specificRisk: isFavourable ? conformance.nonconforming : conformance.conforming,
    ...(prior === undefined
      ? {}
      : {
          globalRisk: globalRisk({
            band: tolerance,
            acceptance,
            prior,
            standardUncertainty: requireAbsolute(spread),
          }),
        }),
    assumptions: [...assumptions],
    warnings,
    working: [...limits.working, ...distancesOf(tolerance, value, u)],
  };
}

function distancesOf({ lower, upper }: Band, y: number, u: number): Step[] {
  if (u === 0) return [];
  const steps: Step[] = [];
  const label = (side: string) => `distance inside the ${side} limit, in standard uncertainties`;
  if (lower !== undefined) {
    steps.push(
      step(distanceToLowerFormula, label('lower'), { y, T_L: lower, u }, requireResult((y - lower) / u, 'value')),
    );
  }
  if (upper !== undefined) {
    steps.push(
      step(distanceToUpperFormula, label('upper'), { T_U: upper, y, u }, requireResult((upper - y) / u, 'value')),
    );
  }
  return steps;
}
