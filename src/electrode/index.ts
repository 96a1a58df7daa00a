export { electrodeCautions } from './cautions.js';
export { contactAfterLoss } from './contact-after-loss.js';
export { type ContactImpedance, contactImpedance, type FoilContact } from './contact-impedance.js';
export {
  assessContact,
  type ContactFinding,
  type ContactLimits,
  type ContactMeasurement,
  contactLimits,
} from './contact-limit.js';
export { currentDensity, type ElectrodeArea } from './current-density.js';
export { type ElectrodeHeating, type ElectrodeHeatingInput, electrodeHeating } from './electrode-heating.js';
export {
  type Foil,
  type FoilCurrent,
  type FoilCurrents,
  type FoilCurrentsInput,
  foilCurrents,
} from './foil-currents.js';
export { type HeatingFigure, heatingFigures } from './heating-figures.js';
export { type ThermalTest, type ThermalTestFigures, thermalTest, thermalTests } from './thermal-test.js';
