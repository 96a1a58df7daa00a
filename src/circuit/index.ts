export { type ComplexLoad, type ComplexPower, complexLoadPower } from './complex-load-power.js';
export { type Conversion, convertQuantity } from './convert-quantity.js';
export { crestFactor, type PeakAndRms } from './crest-factor.js';
export { currentFromPower } from './current-from-power.js';
export { currentFromPowerAndVoltage } from './current-from-power-and-voltage.js';
export { currentFromVoltage } from './current-from-voltage.js';
export { type ConversionNaming, type ExplainedValue, explainConversion } from './explain-conversion.js';
export { type DutyHeating, type DutyQuestion, dutyHeating } from './heat/duty-heating.js';
export { explainHeatingFactor } from './heat/explain-heating-factor.js';
export { explainPauseFromRating } from './heat/explain-pause-from-rating.js';
export { explainResistanceAtTemperature } from './heat/explain-resistance-at-temperature.js';
export { type ElectrodeCurrent, heatingFactor } from './heat/heating-factor.js';
export { type Heating, type LoadHeating, loadHeating, type ThermalLoad } from './heat/load-heating.js';
export { pauseFromRating, type RatingQuestion } from './heat/pause-from-rating.js';
export { type ActivationQuestion, type PermittedActivation, permittedActivation } from './heat/permitted-activation.js';
export { type PauseQuestion, type RequiredPause, requiredPause } from './heat/required-pause.js';
export { type ResistanceDrift, resistanceAtTemperature } from './heat/resistance-at-temperature.js';
export { type CoaxialConductors, coaxialLine } from './leads/coaxial-line.js';
export { explainCoaxialLine } from './leads/explain-coaxial-line.js';
export type { ExplainedLine } from './leads/explain-line.js';
export { type ExplainedLeads, explainLoadThroughLeads } from './leads/explain-load-through-leads.js';
export {
  type ExplainedWireResistance,
  explainRoundWireResistance,
} from './leads/explain-round-wire-resistance.js';
export { explainSkinDepth } from './leads/explain-skin-depth.js';
export { explainSolenoidInductance } from './leads/explain-solenoid-inductance.js';
export { type ExplainedInductance, explainStraightWireInductance } from './leads/explain-straight-wire-inductance.js';
export { explainTwoWireLine } from './leads/explain-two-wire-line.js';
export type { LineConstants } from './leads/line.js';
export {
  type Leads,
  type LoadSeenThroughLeads,
  type LoadThroughLeads,
  loadThroughLeads,
} from './leads/load-through-leads.js';
export { type RoundWire, roundWireResistance, type WireResistance } from './leads/round-wire-resistance.js';
export { type ConductorAtFrequency, skinDepth } from './leads/skin-depth.js';
export { type Solenoid, solenoidInductance } from './leads/solenoid-inductance.js';
export { type StraightWire, straightWireInductance } from './leads/straight-wire-inductance.js';
export { type TwoWires, twoWireLine } from './leads/two-wire-line.js';
export { loadFromCurrentAndVoltage } from './load-from-current-and-voltage.js';
export { loadFromPowerAndCurrent } from './load-from-power-and-current.js';
export { loadFromPowerAndVoltage } from './load-from-power-and-voltage.js';
export { peakCurrent } from './peak-current.js';
export { peakFromRms } from './peak-from-rms.js';
export { type PeakInput, peakVoltage } from './peak-voltage.js';
export { powerFromCurrent } from './power-from-current.js';
export { powerFromCurrentAndVoltage } from './power-from-current-and-voltage.js';
export { powerFromVoltage } from './power-from-voltage.js';
export { type Quantity, quantitySymbols, quantityUnits, requireQuantity } from './quantity.js';
export { rmsFromPeak } from './rms-from-peak.js';
export { type OhmicSolution, type OhmicValues, solveOhmic } from './solve-ohmic.js';
export {
  type AccessoryQuestion,
  type AccessoryVerdict,
  type AccessoryVoltageRule,
  accessoryRating,
  accessoryVoltageRule,
} from './source/accessory-rating.js';
export { type EquivalentSource, equivalentSource, type LoadReading } from './source/equivalent-source.js';
export {
  type PartRating,
  type PeakRatingRule,
  type PeakRatings,
  type PeakRatingsQuestion,
  peakRatingRule,
  peakRatings,
  type RatedPart,
} from './source/peak-ratings.js';
export { type PowerTransfer, powerTransfer, type SourceAndLoad } from './source/power-transfer.js';
export { type ExplainedFrequency, explainFrequencyOfPhase } from './strays/explain-frequency-of-phase.js';
export { type ExplainedLoadRange, explainLoadsWithinPhase } from './strays/explain-loads-within-phase.js';
export { type ExplainedStrays, explainStraysAtPhase } from './strays/explain-strays-at-phase.js';
export { type FrequencyQuestion, frequencyOfPhase, type PhaseFrequency } from './strays/frequency-of-phase.js';
export { type LoadImpedance, loadImpedance } from './strays/load-impedance.js';
export type { LoadAtFrequency, LoadWithStrays } from './strays/load-with-strays.js';
export { type LoadRange, type LoadsQuestion, loadsWithinPhase } from './strays/loads-within-phase.js';
export { type PowerError, powerErrorFromStrays } from './strays/power-error-from-strays.js';
export { type PhaseQuestion, type StrayLimits, straysAtPhase } from './strays/strays-at-phase.js';
export { testLoadPhase } from './strays/test-load-phase.js';
export { voltageFromCurrent } from './voltage-from-current.js';
export { voltageFromPower } from './voltage-from-power.js';
export { voltageFromPowerAndCurrent } from './voltage-from-power-and-current.js';
