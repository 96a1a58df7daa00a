import { bandChecks } from './band.checks.js';
import { benchEffectsChecks } from './bench-effects.checks.js';
import type { Check } from './check.js';
import { circuitChecks } from './circuit.checks.js';
import { curveChecks } from './curve.checks.js';
import { decisionChecks } from './decision.checks.js';
import { electrodeChecks } from './electrode.checks.js';
import { leakageChecks } from './leakage.checks.js';
import { modelChecks } from './model.checks.js';
import { monitorChecks } from './monitor.checks.js';
import { numericChecks } from './numeric.checks.js';
import { procedureChecks } from './procedure.checks.js';
import { uncertaintyChecks } from './uncertainty.checks.js';
import { unitsChecks } from './units.checks.js';
import { waveformChecks } from './waveform.checks.js';

/** Every published check: the tests, `npm run checks` and the documentation read this one list. */
export const checks: readonly Check[] = [
  ...circuitChecks,
  ...benchEffectsChecks,
  ...waveformChecks,
  ...bandChecks,
  ...curveChecks,
  ...unitsChecks,
  ...numericChecks,
  ...uncertaintyChecks,
  ...procedureChecks,
  ...decisionChecks,
  ...modelChecks,
  ...monitorChecks,
  ...leakageChecks,
  ...electrodeChecks,
];
