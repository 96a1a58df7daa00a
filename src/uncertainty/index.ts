export type { CaptureBudgetInput, ChannelAccuracy } from './captures/capture-accuracy.js';
export { type CaptureBudget, type CaptureFigure, captureBudget } from './captures/capture-budget.js';
export { type Correlation, type CorrelationMatrix, correlationMatrix } from './correlation.js';
export { type Arithmetic, numberArithmetic } from './differentiation/arithmetic.js';
export type {
  AnalyticModel,
  ArithmeticModel,
  DifferentiationMethod,
  Model,
  OrdinaryModel,
  Values,
} from './differentiation/model.js';
export { type DegreesTerm, type EffectiveDegrees, effectiveDegrees } from './effective-degrees.js';
export { type ExpandedUncertainty, type ExpansionInput, expandedUncertainty } from './expanded-uncertainty.js';
export { arcsineInput } from './inputs/arcsine-input.js';
export { type CertificateStatement, certificateInput } from './inputs/certificate-input.js';
export { curvilinearTrapezoidInput } from './inputs/curvilinear-trapezoid-input.js';
export type { LimitStatement } from './inputs/limit-statement.js';
export { type NormalStatement, normalInput } from './inputs/normal-input.js';
export { rectangularInput } from './inputs/rectangular-input.js';
export { repeatedReadingsInput } from './inputs/repeated-readings-input.js';
export { resolutionInput } from './inputs/resolution-input.js';
export { trapezoidalInput } from './inputs/trapezoidal-input.js';
export { triangularInput } from './inputs/triangular-input.js';
export type {
  AccuracyStatement,
  CrestFactorAddition,
  FrequencyAddition,
  ReadingConditions,
} from './instruments/accuracy-statement.js';
export { type CurvePlace, curveReading, type ReadableCurve } from './instruments/curve-reading.js';
export { type CurveReadingInput, curveReadingBudget } from './instruments/curve-reading-budget.js';
export { type LoadStatement, loadErrors } from './instruments/load-errors.js';
export { type PowerMeasurement, powerBudget, type StatedReading } from './instruments/power-budget.js';
export {
  type PowerColumns,
  type PowerColumnsInput,
  powerColumns,
  type UncertainColumn,
} from './instruments/power-columns.js';
export { type ReadingBudget, type ReadingBudgetInput, readingBudget } from './instruments/reading-budget.js';
export { type ReadingErrors, readingErrors } from './instruments/reading-errors.js';
export { type AdaptiveOptions, type AdaptiveResult, adaptiveMonteCarlo } from './monte-carlo/adaptive-monte-carlo.js';
export type { CoverageInterval } from './monte-carlo/coverage-interval.js';
export { type MonteCarloOptions, type MonteCarloResult, monteCarlo } from './monte-carlo/monte-carlo.js';
export { numericalTolerance } from './monte-carlo/numerical-tolerance.js';
export { type Validation, type ValidationInput, validateFirstOrder } from './monte-carlo/validate-first-order.js';
export { type Contribution, type Propagated, type PropagateOptions, propagate } from './propagate.js';
export { type PropagatedTogether, propagateAll } from './propagate-all.js';
export { type RoundedResult, roundUncertainty } from './round-uncertainty.js';
export type { SecondOrder } from './second-order.js';
export type { DegreesOfFreedom, Distribution, InputNaming, UncertainInput } from './uncertain-input.js';
export { type CovarianceContribution, covarianceContributions } from './vectors/covariance-contributions.js';
export { type CoverageEllipse, type CoverageEllipseInput, coverageEllipse } from './vectors/coverage-ellipse.js';
export { type JointEffectiveDegrees, jointEffectiveDegrees } from './vectors/joint-effective-degrees.js';
export {
  type CovarianceMatrix,
  type SimultaneousReadings,
  simultaneousReadings,
} from './vectors/simultaneous-readings.js';
