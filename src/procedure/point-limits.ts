import { type Band, deriveLimits, explainConvertBand, explainRoundBand, intersectBands } from '../band/index.js';
import type { Warning } from '../checks/index.js';
import { type Quantity, quantityUnits } from '../circuit/index.js';
import type { Step } from '../working/index.js';
import type { WantedPoint } from './choose-points.js';
import { carryPower, type ExpectedAtPoint } from './expected-at-point.js';
import type { LimitOrigin, PlanOptions } from './plan.js';
import { bandText, namingOf } from './quantity-text.js';
import type { StatedTolerance } from './specification.js';
import { correctedValue } from './steps.js';

/** Limits of a point in the quantity that is read. */
export interface PointLimits {
  readonly limits: Band;
  readonly from: LimitOrigin;
  readonly published?: Band;
  readonly derived?: Band;
  readonly working: readonly Step[];
  readonly warnings: readonly Warning[];
}

/** What the limits of a point are made from. */
export interface LimitInputs {
  readonly wanted: WantedPoint;
  readonly expected: ExpectedAtPoint;
  /** Resistance of the load on the bench, in ohms. */
  readonly load: number;
  readonly reads: Quantity;
  /** Resolution of the range in use. */
  readonly resolution: number;
  /** Tolerance of the accuracy rule, when the rule is chosen and applies at this point. */
  readonly ruleTolerance?: StatedTolerance;
  readonly options: Required<PlanOptions>;
  /** Reading over that of an ideal load, where the plan corrects for the strays. */
  readonly ratio?: number;
}

/** Limits from the published row, limits derived from expected value and tolerance, and which of them govern. */
export function pointLimits(inputs: LimitInputs): PointLimits {
  const { wanted, reads, options } = inputs;
  // The rule of the standard sets limits only where the maker states none; it is judged as a rule in any case.
  const tolerance = wanted.tolerance ?? (wanted.row === undefined ? inputs.ruleTolerance : undefined);
  const published = publishedLimits(inputs);
  const derived = tolerance === undefined ? undefined : derivedLimits(inputs, tolerance);
  const working = [...(derived?.working ?? []), ...(published?.working ?? [])];
  const warnings: Warning[] = [];
  const derivedFrom: LimitOrigin = wanted.tolerance === undefined ? 'standard' : 'tolerance';

  if (published === undefined || derived === undefined) {
    const only = published ?? derived;
    return {
      limits: only?.band ?? {},
      from: published !== undefined ? 'published row' : derived !== undefined ? derivedFrom : 'none',
      ...(published === undefined ? {} : { published: published.band }),
      ...(derived === undefined ? {} : { derived: derived.band }),
      working,
      warnings,
    };
  }
  const usesDerived = options.govern === 'derived';
  const limits =
    options.govern === 'tighter'
      ? intersectBands(published.band, derived.band)
      : (usesDerived ? derived : published).band;
  if (differ(published.band, derived.band, inputs.resolution)) {
    warnings.push({
      code: 'limits-differ',
      message:
        `The published row gives ${bandText(published.band, reads)}, expected value and tolerance give ` +
        `${bandText(derived.band, reads)}; ${governText[options.govern]}.`,
    });
  }
  return {
    limits,
    from: usesDerived ? derivedFrom : 'published row',
    published: published.band,
    derived: derived.band,
    working,
    warnings,
  };
}

const governText = {
  published: 'the published row governs',
  derived: 'the derived limits govern',
  tighter: 'the tighter of both governs on each side',
} as const;

function derivedLimits(inputs: LimitInputs, tolerance: StatedTolerance): { band: Band; working: readonly Step[] } {
  const { in: toleranceIn, ...rest } = tolerance;
  const { expected, load, reads, resolution, options, ratio } = inputs;
  const derived = { power: expected.power, load, tolerance: rest, toleranceIn, reads };
  if (ratio === undefined) {
    const result = deriveLimits({ ...derived, resolution, rounding: options.rounding });
    return { band: result.limits, working: result.working };
  }
  const result = deriveLimits(derived);
  const rounded = roundLimits(result.limits, inputs);
  return { band: rounded.band, working: [...result.working, ...rounded.working] };
}

/** Limits with the strays of load and leads, where the plan corrects for them, rounded to the display. */
function roundLimits(ideal: Band, inputs: LimitInputs): { band: Band; working: readonly Step[] } {
  const { reads, resolution, options, ratio } = inputs;
  const working: Step[] = [];
  const side = (name: 'lower' | 'upper'): Band => {
    const limit = ideal[name];
    if (limit === undefined || ratio === undefined) return limit === undefined ? {} : { [name]: limit };
    const corrected = correctedValue(`${name} limit with the strays`, ratio, limit, quantityUnits[reads]);
    working.push(corrected);
    return { [name]: corrected.value };
  };
  const band: Band = { ...side('lower'), ...side('upper') };
  const rounded = explainRoundBand(band, resolution, namingOf(reads), options.rounding);
  return { band: rounded.band, working: [...working, ...rounded.working] };
}

function publishedLimits(inputs: LimitInputs): { band: Band; working: readonly Step[] } | undefined {
  const { wanted, expected, load, reads } = inputs;
  const { row } = wanted;
  if (row === undefined) return undefined;
  const given: Band = {
    ...(row.lower === undefined ? {} : { lower: row.lower }),
    ...(row.upper === undefined ? {} : { upper: row.upper }),
  };
  // A row in the quantity that is read, at the load that is on the bench, keeps its printed digits.
  if (load === wanted.load && row.quantity === reads) {
    return roundLimits(given, inputs);
  }
  const inPower = explainConvertBand(given, { from: row.quantity, to: 'power', load: wanted.load });
  const working: Step[] = [...inPower.working];
  const carry = (side: 'lower' | 'upper'): number | undefined => {
    const limit = inPower.band[side];
    if (limit === undefined) return undefined;
    const carried = carryPower(limit, expected.carry, `${side} limit at the load of the bench`);
    working.push(...carried.working);
    return carried.power;
  };
  const lower = carry('lower');
  const upper = carry('upper');
  const carried: Band = { ...(lower === undefined ? {} : { lower }), ...(upper === undefined ? {} : { upper }) };
  const inReads = explainConvertBand(carried, { from: 'power', to: reads, load });
  const rounded = roundLimits(inReads.band, inputs);
  return { band: rounded.band, working: [...working, ...inReads.working, ...rounded.working] };
}

/** True when the limits of a side are more than one display step apart, or exist on one band only. */
function differ(a: Band, b: Band, resolution: number): boolean {
  const side = (x: number | undefined, y: number | undefined): boolean =>
    x === undefined || y === undefined ? x !== y : Math.abs(x - y) > resolution * (1 + 1e-9);
  return side(a.lower, b.lower) || side(a.upper, b.upper);
}
