import fc from 'fast-check';
import { explainLoadThroughLeads, explainTwoWireLine } from '../../../src/circuit/index.js';
import { frequency, load, valueBetween } from '../../generators.js';
import { stepOf } from '../step-of.js';
import type { Twins } from './twin.js';

const question = (form: 'line' | 'lumped') =>
  fc
    .record({
      load: fc.record({
        resistance: load(),
        seriesInductance: valueBetween(1e-9, 1e-6),
        parallelCapacitance: valueBetween(1e-13, 2e-11),
      }),
      leads: fc.record({
        length: valueBetween(0.1, 50),
        inductance: valueBetween(1e-7, 2e-6),
        capacitance: valueBetween(1e-12, 1e-10),
        resistance: valueBetween(0.01, 10),
      }),
      frequency: frequency(),
      current: valueBetween(0.01, 3),
    })
    .map((asked) => explainLoadThroughLeads({ ...asked, form }));
const line = question('line');
const lumped = question('lumped');
const pair = fc
  .record({ diameter: valueBetween(1e-4, 0.01), ratio: valueBetween(1.001, 1000) })
  .map(({ diameter, ratio }) => explainTwoWireLine({ spacing: diameter * ratio, diameter }));

const byLine = [
  'lead-reactance-part',
  'lead-resistance-part',
  'lead-capacitance-part',
  'line-phase',
  'line-attenuation',
  'line-share-real',
  'line-share-imaginary',
  'line-rest-real',
  'line-rest-imaginary',
  'added-voltage-real',
  'added-voltage-imaginary',
  'added-current-real',
  'added-current-imaginary',
  'resistance-through-leads',
  'reactance-through-leads',
  'voltage-ratio-of-leads',
  'current-ratio-of-leads',
  'bypass-ratio-of-leads',
  'current-error-through-leads',
  'voltage-error-through-leads',
  'voltage-at-load',
  'current-at-load',
  'bypass-current',
];
const byLumped = ['lumped-share-real', 'lumped-share-imaginary', 'lumped-rest-real', 'lumped-rest-imaginary'];
const ofLine = ['characteristic-impedance', 'line-velocity'];

export const twins: Twins = Object.fromEntries([
  ...byLine.map((id) => [id, stepOf(id, line)] as const),
  ...byLumped.map((id) => [id, stepOf(id, lumped)] as const),
  ...ofLine.map((id) => [id, stepOf(id, pair)] as const),
]);
