import type { DegreesOfFreedom } from '../uncertainty/index.js';
import {
  halfWidthUncertaintyFormula,
  stepUncertaintyFormula,
  tripDegreesFormula,
  tripExpandedFormula,
  tripUncertaintyFormula,
} from '../working/formulas/monitor.js';
import { type Step, step } from '../working/index.js';
import { type Coverage, factorAt } from './coverage.js';

/** What blurs a trip point, in ohms. */
export interface TripBlur {
  /** Largest step of the sweeps at the change. */
  readonly stepWidth: number;
  /** How far the box may be off. */
  readonly boxLimits: number;
  /** How far lead and fixture may be off. */
  readonly seriesLimits: number;
  /** Standard uncertainty of the mean over the sweeps. */
  readonly ofMean: number;
  /** How far the limit of a rise may be off because the baseline is; 0 of a limit of the window. */
  readonly baselineLimits: number;
}

/** An uncertainty with its parts, in ohms. */
export interface TripUncertainty {
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: DegreesOfFreedom;
  readonly coverageFactor: number;
  readonly expandedUncertainty: number;
  readonly working: readonly Step[];
}

/** The uncertainty of a trip point over n sweeps: anywhere inside a step, box and fixture anywhere inside their limits. */
export function tripUncertainty(blur: TripBlur, n: number, coverage: Coverage, what: string): TripUncertainty {
  const { stepWidth: d, boxLimits, seriesLimits, ofMean: u_m, baselineLimits } = blur;
  const u_d = d / Math.sqrt(12);
  const limits = [
    ['u_b', 'box', boxLimits],
    ['u_s', 'lead and fixture', seriesLimits],
    ['u_0', 'baseline', baselineLimits],
  ] as const;
  const [u_b, u_s, u_0] = limits.map(([, , halfWidth]) => halfWidth / Math.sqrt(3)) as [number, number, number];
  const u = Math.sqrt(u_d * u_d + u_b * u_b + u_s * u_s + u_0 * u_0 + u_m * u_m);
  const each = [u_b, u_s, u_0];
  const degreesOfFreedom = degreesOf(n, u, u_m);
  const k = factorAt(coverage, degreesOfFreedom);
  return {
    standardUncertainty: u,
    degreesOfFreedom,
    coverageFactor: k,
    expandedUncertainty: k * u,
    working: [
      step(stepUncertaintyFormula, `${what}: standard uncertainty of the step`, { d }, u_d),
      ...limits.flatMap(([symbol, name, a], i) =>
        a === 0
          ? []
          : [
              step(halfWidthUncertaintyFormula, `${what}: standard uncertainty of ${name}`, { a }, each[i] as number, {
                symbol,
                unit: 'ohm',
              }),
            ],
      ),
      step(tripUncertaintyFormula, `${what}: standard uncertainty`, { u_d, u_b, u_s, u_0, u_m }, u),
      ...(degreesOfFreedom === 'infinite'
        ? []
        : [step(tripDegreesFormula, `${what}: effective degrees of freedom`, { n, u, u_m }, degreesOfFreedom)]),
      step(tripExpandedFormula, `${what}: expanded uncertainty`, { k, u }, k * u, { unit: 'ohm' }),
    ],
  };
}

/** Effective degrees of freedom where only a mean over n sweeps has finite ones. */
export function degreesOf(n: number, u: number, u_m: number): DegreesOfFreedom {
  const degrees = (n - 1) * (u / u_m) ** 4;
  return Number.isFinite(degrees) ? degrees : 'infinite';
}
