import { type Band, checkBand, explainRoundBand } from '../band/index.js';
import { fail, requireNonNegative, requirePositive, requireResult, type Warning } from '../checks/index.js';
import {
  acceptanceLowerFormula,
  acceptanceLowerRelativeFormula,
  acceptanceUpperFormula,
  acceptanceUpperRelativeFormula,
} from '../working/formulas/decision.js';
import { type Step, step, type UnitName } from '../working/index.js';
import { assumptionsOf } from './assumptions.js';
import { type GuardBands, guardBandsOf } from './guard-bands.js';
import { type MeasurementUncertainty, type Spread, spreadOf } from './measurement.js';
import type { DecisionRule } from './rule.js';

/** How acceptance limits are given out. */
export interface AcceptanceOptions {
  /** One step of what the instrument shows, in the unit of the band: the limits are rounded inward to it. Not rounded unless stated. */
  readonly resolution?: number;
  /** Unit of the band, for the working; `any` unless stated. */
  readonly unit?: UnitName;
}

/** Acceptance limits with everything that led to them. */
export interface AcceptanceLimits {
  /** Readings inside are accepted, limits included; `null` where the guard bands leave none. */
  readonly acceptance: Band | null;
  /** Only of the rule `non-binary`: readings outside fail, readings between this and the tolerance fail conditionally. */
  readonly failing?: Band;
  /** Distance of each acceptance limit inside its tolerance limit, negative outside; `null` where none is accepted. */
  readonly guardBand: Band | null;
  readonly assumptions: readonly string[];
  readonly warnings: readonly Warning[];
  readonly working: readonly Step[];
}

/**
 * `acceptanceBand` with its working. Where no reading can be accepted the result says so, and there is no error.
 *
 * @param band Tolerance limits; one may be absent
 * @param rule How the acceptance limits follow
 * @param uncertainty Uncertainty of the measurement; not needed for simple acceptance
 * @param options Resolution of the instrument, unit
 * @returns Acceptance limits, guard bands, assumptions, warnings, steps
 * @throws CalculationError as `acceptanceBand`, but for `acceptance-empty`, which is a warning here
 * @source JCGM 106:2012, clause 8; ILAC-G8:09/2019, 4.2
 * @example
 * ```ts
 * import { explainAcceptanceBand } from 'esu-limits/decision';
 * const rule = { kind: 'guarded-acceptance', ratio: 1 } as const;
 * const { acceptance, working } = explainAcceptanceBand({ upper: 360 }, rule, { expandedUncertainty: 12, coverageFactor: 2 });
 * acceptance; // → { "upper": 348 }
 * working.map(({ symbol, expression, value }) => `${symbol} = ${expression} = ${value}`);
 * // → ["w = r * U = 12", "A_U = T_U - w = 348"]
 * ```
 */
export function explainAcceptanceBand(
  band: Band,
  rule: DecisionRule,
  uncertainty: MeasurementUncertainty = {},
  { resolution, unit = 'any' }: AcceptanceOptions = {},
): AcceptanceLimits {
  const tolerance = checkBand(band, 'band');
  if (tolerance.lower === undefined && tolerance.upper === undefined) {
    fail('no-limits', 'band', tolerance, 'must have a limit');
  }
  if (resolution !== undefined) requirePositive(resolution, 'resolution');
  let spread: Spread | undefined;
  const guards = guardBandsOf(
    tolerance,
    rule,
    () => {
      spread ??= spreadOf(uncertainty);
      return spread;
    },
    unit,
  );
  const limits = limitsOf(tolerance, guards, unit, resolution, 'acceptance');
  const outer: GuardBands = { ...guards, lower: -guards.lower, upper: -guards.upper };
  const failing = rule.kind === 'non-binary' ? limitsOf(tolerance, outer, unit, resolution, 'failing') : undefined;
  const acceptance = guards.isEmpty ? null : closed(limits.band);
  const warnings = [...guards.warnings];
  if (acceptance === null) {
    warnings.push({ code: 'acceptance-empty', message: 'The guard bands leave no reading that is accepted.' });
  }
  return {
    acceptance,
    ...(failing === undefined ? {} : { failing: failing.band }),
    guardBand: acceptance === null ? null : widthsOf(tolerance, acceptance),
    assumptions: assumptionsOf(rule, spread),
    warnings,
    working: [...guards.working, ...(guards.isEmpty ? [] : limits.working), ...(failing?.working ?? [])],
  };
}

/** Tolerance limits moved by their guard bands, and rounded inward. */
function limitsOf(
  { lower, upper }: Band,
  guards: GuardBands,
  unit: UnitName,
  resolution: number | undefined,
  what: 'acceptance' | 'failing',
): { readonly band: Band; readonly working: readonly Step[] } {
  const working: Step[] = [];
  const letter = what === 'acceptance' ? 'A' : 'F';
  const moved = (side: 'lower' | 'upper', limit: number): number => {
    const w = guards[side];
    const shifted = guards.isRelative ? relative(side, limit, w) : side === 'lower' ? limit + w : limit - w;
    const value = requireResult(shifted, `${what}.${side}`);
    const naming = { unit, symbol: `${letter}_${side === 'lower' ? 'L' : 'U'}` };
    const label = what === 'acceptance' ? `${side} acceptance limit` : `${side} limit of failing`;
    if (side === 'lower') {
      const formula = guards.isRelative ? acceptanceLowerRelativeFormula : acceptanceLowerFormula;
      working.push(step(formula, label, { T_L: limit, w }, value, naming));
    } else {
      const formula = guards.isRelative ? acceptanceUpperRelativeFormula : acceptanceUpperFormula;
      working.push(step(formula, label, { T_U: limit, w }, value, naming));
    }
    if (resolution === undefined) return value;
    const rounded = explainRoundBand({ [side]: value }, resolution, { unit, symbol: letter, name: what });
    working.push(...rounded.working);
    return rounded.band[side] as number;
  };
  const low = lower === undefined ? {} : { lower: moved('lower', lower) };
  return { band: upper === undefined ? low : { ...low, upper: moved('upper', upper) }, working };
}

/**
 * A band whose limits may have met: `null` where they have crossed. Limits that lie on one value but for rounding accept
 * that value alone.
 */
function closed(band: Band): Band | null {
  const { lower, upper } = band;
  if (lower === undefined || upper === undefined || lower <= upper) return band;
  if (lower - upper > 1e-12 * Math.max(Math.abs(lower), Math.abs(upper))) return null;
  const middle = upper + (lower - upper) / 2;
  return { lower: middle, upper: middle };
}

/** The value y whose distance from the limit is w·y. */
function relative(side: 'lower' | 'upper', limit: number, w: number): number {
  requireNonNegative(limit, `band.${side}`);
  const divisor = side === 'lower' ? 1 - w : 1 + w;
  if (divisor > 0) return limit / divisor;
  return fail(
    'out-of-range',
    'relativeStandardUncertainty',
    w,
    'is so large that no value lies that far from the limit',
  );
}

function widthsOf(tolerance: Band, acceptance: Band): Band {
  const lower = tolerance.lower === undefined ? {} : { lower: (acceptance.lower as number) - tolerance.lower };
  return tolerance.upper === undefined ? lower : { ...lower, upper: tolerance.upper - (acceptance.upper as number) };
}
