import type { Caution } from '../working/index.js';

const touch: Caution = {
  id: 'pass-is-hazardous',
  text: 'A leakage that passes is still hazardous to touch: guidance for contact currents from 100 kHz to 10 MHz is 40 mA at work and 20 mA for the public. Touch nothing while the output is active.',
  standing: 'secondary',
};

const burns: Caution = {
  id: 'rf-burns',
  text: 'RF burns: do not touch electrodes, leads, measuring resistor or trolley while the output is active. Keep others away.',
  standing: 'published',
};

const outputOff: Caution = {
  id: 'connect-output-off',
  text: 'Connect, disconnect and move leads only with the output off. With no load between the electrodes the voltage is highest: activate so only where the procedure asks for it, and briefly.',
  standing: 'published',
};

const maker: Caution = {
  id: 'no-release',
  text: 'This result does not release equipment for clinical use: the maker\u2019s procedure, local codes and licensed practice decide.',
  standing: 'common practice',
};

/** Cautions of every leakage result, whatever was measured. */
export const leakageCautions: readonly Caution[] = [touch, burns, outputOff, maker];
