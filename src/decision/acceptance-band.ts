import type { Band } from '../band/index.js';
import { fail } from '../checks/index.js';
import { type AcceptanceOptions, explainAcceptanceBand } from './explain-acceptance-band.js';
import type { MeasurementUncertainty } from './measurement.js';
import type { DecisionRule } from './rule.js';

/**
 * Acceptance limits that follow from tolerance limits, a decision rule and the uncertainty of the measurement.
 *
 * A limit that is absent stays absent. With a resolution the limits are rounded inward, under every rule: a reading on
 * the instrument's own steps is accepted or not as before.
 *
 * @param band Tolerance limits; one may be absent
 * @param rule How the acceptance limits follow
 * @param uncertainty Uncertainty of the measurement; not needed for simple acceptance
 * @param options Resolution of the instrument
 * @returns Acceptance limits: readings inside are accepted, limits included
 * @throws CalculationError `acceptance-empty` (no reading can be accepted), `not-a-number`, `band-reversed`, `no-limits`,
 * `negative`, `not-positive`, `not-a-fraction`, `out-of-range`, `missing-member`, `wrong-count`, `contradiction`,
 * `unknown-choice`, `result-out-of-range`
 * @source JCGM 106:2012, clause 8; ILAC-G8:09/2019, 4.2
 * @accuracy Of a specific risk: limits good to 1e-14 of the standard uncertainty; of a global risk: the risk at the limits
 * is the stated one within 1e-12
 * @example
 * ```ts
 * import { acceptanceBand } from 'esu-limits/decision';
 * const tolerance = { lower: 240, upper: 360 };
 * const uncertainty = { expandedUncertainty: 12, coverageFactor: 2 };
 * acceptanceBand(tolerance, { kind: 'guarded-acceptance', ratio: 1 }, uncertainty); // → { "lower": 252, "upper": 348 }
 * acceptanceBand(tolerance, { kind: 'specific-consumer-risk', risk: 0.025 }, uncertainty, { resolution: 1 });
 * // → { "lower": 252, "upper": 348 }
 * ```
 */
export function acceptanceBand(
  band: Band,
  rule: DecisionRule,
  uncertainty: MeasurementUncertainty = {},
  options: AcceptanceOptions = {},
): Band {
  return (
    explainAcceptanceBand(band, rule, uncertainty, options).acceptance ??
    fail('acceptance-empty', 'band', band, 'is too narrow for the rule and the uncertainty')
  );
}
