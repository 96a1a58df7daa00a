import type { Formula } from './formula.js';
import * as bandFormulas from './formulas/band.js';
import * as circuitFormulas from './formulas/circuit.js';
import * as circuitEffectsFormulas from './formulas/circuit-effects.js';
import * as curveFormulas from './formulas/curve.js';
import * as decisionFormulas from './formulas/decision.js';
import * as electrodeFormulas from './formulas/electrode.js';
import * as leadsFormulas from './formulas/leads.js';
import * as leakageFormulas from './formulas/leakage.js';
import * as monitorFormulas from './formulas/monitor.js';
import * as procedureFormulas from './formulas/procedure.js';
import * as uncertaintyFormulas from './formulas/uncertainty.js';
import * as waveformFormulas from './formulas/waveform.js';
import { bandProse } from './prose/band.js';
import { circuitProse } from './prose/circuit.js';
import { circuitEffectsProse } from './prose/circuit-effects.js';
import { curveProse } from './prose/curve.js';
import { decisionProse } from './prose/decision.js';
import { electrodeProse } from './prose/electrode.js';
import { leadsProse } from './prose/leads.js';
import { leakageProse } from './prose/leakage.js';
import { monitorProse } from './prose/monitor.js';
import { procedureProse } from './prose/procedure.js';
import type { Prose } from './prose/prose.js';
import { uncertaintyProse } from './prose/uncertainty.js';
import { waveformProse } from './prose/waveform.js';

/** A formula with everything that documentation says of it. */
export interface CatalogueEntry extends Formula, Prose {
  /** The room whose formula it is. */
  readonly room: string;
}

function entriesOf(
  room: string,
  formulas: Readonly<Record<string, Formula>>,
  prose: Readonly<Record<string, Prose>>,
): CatalogueEntry[] {
  return Object.values(formulas).map((formula) => ({
    ...formula,
    ...(prose[formula.id] ?? { title: '', meanings: {} }),
    room,
  }));
}

/**
 * Every formula of the library, with title, meanings, units and source.
 * Documentation, reports and the worked checks are rendered from it.
 */
export const catalogue: readonly CatalogueEntry[] = /* @__PURE__ */ (() => [
  ...entriesOf('circuit', circuitFormulas, circuitProse),
  ...entriesOf('band', bandFormulas, bandProse),
  ...entriesOf('curve', curveFormulas, curveProse),
  ...entriesOf('circuit', circuitEffectsFormulas, circuitEffectsProse),
  ...entriesOf('circuit', leadsFormulas, leadsProse),
  ...entriesOf('waveform', waveformFormulas, waveformProse),
  ...entriesOf('uncertainty', uncertaintyFormulas, uncertaintyProse),
  ...entriesOf('decision', decisionFormulas, decisionProse),
  ...entriesOf('leakage', leakageFormulas, leakageProse),
  ...entriesOf('electrode', electrodeFormulas, electrodeProse),
  ...entriesOf('monitor', monitorFormulas, monitorProse),
  ...entriesOf('procedure', procedureFormulas, procedureProse),
])();
