export {
  compareSweep,
  type SweepComparison,
  type SweepGap,
  type SweepReading,
  type SweepRow,
  type SweepTolerance,
} from './compare-sweep.js';
export type { Curve, CurvePoint, CurveReading, LoadInterval, Regime, Stretch } from './curve.js';
export { explainReading } from './explain-reading.js';
export { type FittedPoint, fitRegimes, type RegimeFit, type UndeterminedRegime } from './fit-regimes.js';
export type { Interpolation } from './interpolant.js';
export { type LoadCurve, type LoadCurveOptions, loadCurve, type OutsideRule } from './load-curve.js';
export { type Corner, type RegimeCurve, type RegimeLimits, regimeCurve } from './regime-curve.js';
export { scaleCurve } from './scale-curve.js';
