import fc from 'fast-check';
import {
  acceptanceBand,
  type DecisionRule,
  decide,
  enNumber,
  explainAcceptanceBand,
  type MeasurementUncertainty,
  testUncertaintyRatio,
  type UncertaintyRatioMethod,
  uncertaintyRatioGuardBand,
  zetaScore,
} from '../../../src/decision/index.js';
import { normalSurvival } from '../../../src/numeric/index.js';
import type { Step } from '../../../src/working/index.js';
import { current, power, valueBetween } from '../../generators.js';
import type { Twins } from './twin.js';

const ratio = valueBetween(0, 3);
const width = valueBetween(0.01, 20);
const fraction = valueBetween(0.001, 0.1);

const expanded = (U: number): MeasurementUncertainty => ({ expandedUncertainty: U, coverageFactor: 2 });
const guarded = (r: number): DecisionRule => ({ kind: 'guarded-acceptance', ratio: r });

function stepValue(working: readonly Step[], formula: string): number {
  const found = working.find((step) => step.formula === formula);
  if (found === undefined) throw new Error(`No step ${formula} in the working.`);
  return found.value;
}

/** The guard band of a single limit that has a test uncertainty ratio. */
function byRatio(formula: string, method: UncertaintyRatioMethod, TUR: number, U: number): number {
  const rule = { kind: 'test-uncertainty-ratio', method, nominal: 0 } as const;
  return stepValue(explainAcceptanceBand({ upper: TUR * U }, rule, expanded(U)).working, formula);
}

/** The ratio at which the managed-risk formula gives a multiplier. */
const ratioOf = (M: number): number => Math.exp((Math.log(1.04 - M) + 0.54) / 0.38);

const simple = { kind: 'simple-acceptance' } as const;
const distance = { y: power(), u: width };
const results = { x: power(), X: power() };

export const twins: Twins = {
  'guard-band': {
    fast: ({ r, U }) => -acceptanceBand({ upper: 0 }, guarded(r!), expanded(U!)).upper!,
    symbols: { r: ratio, U: width },
  },
  'guard-band-outward': {
    fast: ({ r, U }) => -acceptanceBand({ upper: 0 }, { kind: 'guarded-rejection', ratio: r! }, expanded(U!)).upper!,
    symbols: { r: ratio, U: width },
  },
  'guard-band-of-risk': {
    fast: ({ z, u }) => {
      const rule = { kind: 'specific-consumer-risk', risk: normalSurvival(z!) } as const;
      return -acceptanceBand({ upper: 0 }, rule, { standardUncertainty: u! }).upper!;
    },
    symbols: { z: valueBetween(0.01, 8), u: width },
  },
  'acceptance-lower': {
    fast: ({ T_L, w }) => acceptanceBand({ lower: T_L! }, guarded(1), expanded(w!)).lower!,
    symbols: { T_L: power(), w: width },
  },
  'acceptance-upper': {
    fast: ({ T_U, w }) => acceptanceBand({ upper: T_U! }, guarded(1), expanded(w!)).upper!,
    symbols: { T_U: valueBetween(50, 400), w: width },
  },
  'acceptance-lower-relative': {
    fast: ({ T_L, w }) => {
      const uncertainty = { relativeStandardUncertainty: w!, coverageFactor: 1 };
      return acceptanceBand({ lower: T_L! }, guarded(1), uncertainty).lower!;
    },
    symbols: { T_L: current(), w: fraction },
  },
  'acceptance-upper-relative': {
    fast: ({ T_U, w }) => {
      const uncertainty = { relativeStandardUncertainty: w!, coverageFactor: 1 };
      return acceptanceBand({ upper: T_U! }, guarded(1), uncertainty).upper!;
    },
    symbols: { T_U: current(), w: fraction },
  },
  'test-uncertainty-ratio': {
    fast: ({ T_L, T_U, U }) => testUncertaintyRatio({ lower: T_L!, upper: T_U! }, U!),
    inputs: fc.record({ T_L: power(), span: width, U: width }).map(({ T_L, span, U }) => ({ T_L, T_U: T_L + span, U })),
  },
  'test-uncertainty-ratio-one-sided': {
    fast: ({ T, N, U }) =>
      T! > N!
        ? testUncertaintyRatio({ upper: T! }, U!, { nominal: N! })
        : testUncertaintyRatio({ lower: T! }, U!, { nominal: N! }),
    inputs: fc.record({ T: power(), N: power(), U: width }).filter(({ T, N }) => T !== N),
  },
  'managed-risk-multiplier': {
    fast: ({ TUR }) => uncertaintyRatioGuardBand(TUR!, 'managed-risk').formulaMultiplier,
    symbols: { TUR: valueBetween(0.5, 20) },
  },
  'guard-band-of-multiplier': {
    fast: ({ M, U }) => byRatio('guard-band-of-multiplier', 'managed-risk', ratioOf(M!), U!),
    symbols: { M: fc.oneof(valueBetween(0.05, 0.6), valueBetween(-0.5, -0.01)), U: width },
  },
  'guard-band-root-sum-square': {
    fast: ({ TUR, U }) => byRatio('guard-band-root-sum-square', 'root-sum-square', TUR!, U!),
    symbols: { TUR: valueBetween(1.05, 50), U: width },
  },
  'guard-band-relaxed': {
    fast: ({ TUR, U }) => byRatio('guard-band-relaxed', 'relaxed-below-four', TUR!, U!),
    symbols: { TUR: fc.oneof(valueBetween(0.3, 3.9), valueBetween(4.1, 20)), U: width },
  },
  'distance-to-lower': {
    fast: ({ y, T_L, u }) => {
      const input = { band: { lower: T_L! }, value: y!, standardUncertainty: u!, rule: simple };
      return stepValue(decide(input).working, 'distance-to-lower');
    },
    symbols: { ...distance, T_L: power() },
  },
  'distance-to-upper': {
    fast: ({ y, T_U, u }) => {
      const input = { band: { upper: T_U! }, value: y!, standardUncertainty: u!, rule: simple };
      return stepValue(decide(input).working, 'distance-to-upper');
    },
    symbols: { ...distance, T_U: power() },
  },
  'en-number': {
    fast: ({ x, X, U_x, U_X }) =>
      enNumber({ value: x!, reference: X!, expandedUncertainty: U_x!, referenceExpandedUncertainty: U_X! }).score,
    symbols: { ...results, U_x: width, U_X: width },
  },
  'zeta-score': {
    fast: ({ x, X, u_x, u_X }) =>
      zetaScore({ value: x!, reference: X!, standardUncertainty: u_x!, referenceStandardUncertainty: u_X! }).score,
    symbols: { ...results, u_x: width, u_X: width },
  },
};
