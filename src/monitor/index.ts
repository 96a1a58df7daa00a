export { type AlarmReason, alarmReasons, alarmReasonText } from './alarm-reason.js';
export { type AreaAtResistance, type AreaQuestion, areaAtResistance } from './area-at-resistance.js';
export type { BoxAccuracy, DecadeBox, ResistanceBox, SubstitutionBox } from './box.js';
export type { AlarmChallenge, MonitorChallenge, ReadingChallenge, SweepChallenge } from './challenge.js';
export { challengesFor, type MonitorChallenges } from './challenges-for.js';
export { checkMonitor } from './check-monitor.js';
export type { Coverage } from './coverage.js';
export {
  type DisplayFault,
  type DisplayFit,
  type DisplayFitInput,
  type DisplayFitRow,
  type DisplayReadingPair,
  displayFit,
} from './display-fit.js';
export { displayedResistance } from './displayed-resistance.js';
export { explainAlarm } from './explain-alarm.js';
export type { Monitor, MonitorDisplay, MonitorLimit, MonitorRise, SeriesResistance } from './monitor.js';
export {
  type MonitorAlarm,
  type MonitorState,
  type MonitorStates,
  type MonitorStatesOptions,
  monitorStates,
} from './monitor-states.js';
export type { Outcome } from './outcome.js';
export type { PadContact, PadReading, SplitPad } from './pad.js';
export { type PadImpedance, type PadPart, padImpedance } from './pad-impedance.js';
export { placeReading } from './place-reading.js';
export { type ReadingLimits, type ReadingQuestion, type ReadingRowsInput, readingRows } from './reading-rows.js';
export type { MonitorSweep, UnchangedSweep } from './sweep-events.js';
export type { BoxNeed, ThresholdPlan } from './threshold-plan.js';
export type { ResistanceTrace, SampledTrace, StepTrace, TimedTrace, TracedResistance } from './trace.js';
export type { HysteresisFound } from './trip-hysteresis.js';
export type { TripPoint } from './trip-point.js';
export {
  type ResponseTimes,
  type TripBench,
  type TripPoints,
  tripPoints,
  type UnchangedFinding,
} from './trip-points.js';
