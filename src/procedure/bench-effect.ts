import {
  explainCoaxialLine,
  explainLoadThroughLeads,
  explainTwoWireLine,
  type Leads,
  loadImpedance,
  type Quantity,
} from '../circuit/index.js';
import type { Step } from '../working/index.js';
import type { Bench, BenchLoad, Lead, LeadGeometry } from './bench.js';
import type { CurveSlope } from './curve-slope.js';
import type { BenchEffect } from './plan.js';
import type { Output } from './specification.js';
import { readingRatio, sourceCurrentRatio } from './steps.js';

/** What the strays of load and leads do at a point, before it is known whether that counts. */
export type RawEffect = Omit<BenchEffect, 'applied' | 'statement'> & { readonly working: readonly Step[] };

/**
 * What the instrument reads with this load and these leads, over what it would read with an ideal load: for each
 * quantity. Undefined where neither strays nor the build of the leads are stated, or no carrier.
 */
export function benchEffect(
  bench: Bench,
  output: Output,
  load: BenchLoad,
  lead: Lead | undefined,
  slope: () => CurveSlope,
): RawEffect | undefined {
  const { carrierFrequency: frequency } = output;
  const leads = lead === undefined ? undefined : leadsOf(lead);
  const hasStrays = load.seriesInductance !== undefined || load.parallelCapacitance !== undefined;
  if (frequency === undefined || (!hasStrays && leads === undefined)) return undefined;
  const { resistance: R } = load;
  const strays = {
    resistance: R,
    ...(load.seriesInductance === undefined ? {} : { seriesInductance: load.seriesInductance }),
    ...(load.parallelCapacitance === undefined ? {} : { parallelCapacitance: load.parallelCapacitance }),
  };
  const own = loadImpedance({ ...strays, frequency });
  const seen = leads === undefined ? undefined : explainLoadThroughLeads({ load: strays, leads, frequency });
  const near = seen ?? { ...own, voltageRatio: 1, currentRatio: 1 };
  const s = Math.max(-1, Math.min(1, slope().slope));
  const source = sourceCurrentRatio({ Z: near.impedance, R, s, phi: near.phase });
  const atLoad = (bench.instrument.readsAt ?? 'load') === 'load';
  const ratio = (quantity: Quantity): Step =>
    readingRatio(quantity, {
      g: source.value,
      k: !atLoad ? 1 : quantity === 'voltage' ? near.voltageRatio : near.currentRatio,
      Z: near.impedance,
      X: atLoad ? own.resistance : near.resistance,
      R,
    });
  const steps = { power: ratio('power'), current: ratio('current'), voltage: ratio('voltage') };
  return {
    ratios: { power: steps.power.value, current: steps.current.value, voltage: steps.voltage.value },
    impedance: near.impedance,
    phase: near.phase,
    working: [...(leads?.working ?? []), ...(seen ?? own).working, source, steps.power, steps.current, steps.voltage],
  };
}

/** A pair of leads with the steps of its constants; undefined where its build is not stated. */
function leadsOf({ length, geometry }: Lead): (Leads & ConstantsOfLeads) | undefined {
  if (length === undefined || geometry === undefined) return undefined;
  return { length, ...constantsOf(geometry) };
}

interface ConstantsOfLeads {
  readonly inductance: number;
  readonly capacitance: number;
  readonly working: readonly Step[];
}

function constantsOf(geometry: LeadGeometry): ConstantsOfLeads {
  switch (geometry.kind) {
    case 'two-wire':
      return explainTwoWireLine(geometry);
    case 'coaxial':
      return explainCoaxialLine(geometry);
    case 'constants':
      return { ...geometry, working: [] };
  }
}
