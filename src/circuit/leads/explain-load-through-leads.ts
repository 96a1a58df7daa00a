import {
  currentThroughImpedanceFormula,
  impedanceMagnitudeFormula,
  phaseOfLoadFormula,
  powerFromCurrentFormula,
  voltageAcrossImpedanceFormula,
} from '../../working/formulas/circuit.js';
import {
  capacitivePartFormula,
  inductivePartFormula,
  seriesResistanceFormula,
  tangentOfPhaseFormula,
  voltageMethodErrorFormula,
} from '../../working/formulas/circuit-effects.js';
import * as formulas from '../../working/formulas/leads.js';
import { type Step, step } from '../../working/index.js';
import {
  type LoadSeenThroughLeads,
  type LoadThroughLeads,
  type ReckonedLeads,
  reckonLeads,
} from './load-through-leads.js';

/** What the leads do to a load, with the steps that lead to it. */
export interface ExplainedLeads extends LoadSeenThroughLeads {
  /** Complex values by their real and imaginary parts; what is 0 for leads without resistance has no step there. */
  readonly working: readonly Step[];
}

/**
 * `loadThroughLeads` with its working.
 *
 * @param question Load with strays, leads with length and constants, frequency; voltage or current at the near end
 * @returns The same figures, with the steps that lead to each
 * @throws CalculationError as `loadThroughLeads`
 * @source Transmission-line equations of two conductors; the two-port of L in series between two capacitors
 * @example
 * ```ts
 * import { explainLoadThroughLeads, twoWireLine } from 'esu-limits';
 * const leads = { length: 2, ...twoWireLine({ spacing: 20e-3, diameter: 1e-3 }) };
 * const { working } = explainLoadThroughLeads({ load: { resistance: 2000 }, leads, frequency: 500e3 });
 * const bypass = working.find(({ formula }) => formula === 'bypass-ratio-of-leads');
 * [bypass?.expression, bypass?.value.toFixed(4)]; // → ["sqrt(d_re^2 + d_im^2) * k_I", "0.0944"]
 * ```
 */
export function explainLoadThroughLeads(question: LoadThroughLeads): ExplainedLeads {
  const reckoned = reckonLeads(question);
  return {
    ...reckoned.seen,
    working: [...loadSteps(reckoned), ...leadSteps(reckoned), ...seenSteps(reckoned), ...endSteps(reckoned, question)],
  };
}

function loadSteps({ load: { R, L, C }, f, x, y, R_s, t }: ReckonedLeads): Step[] {
  return [
    step(inductivePartFormula, 'reactance of the inductance over the resistance', { f, L, R }, y),
    step(capacitivePartFormula, 'resistance over the reactance of the capacitance', { f, R, C }, x),
    step(seriesResistanceFormula, 'resistance of the load in series', { R, x }, R_s),
    step(tangentOfPhaseFormula, 'tangent of the phase of the load', { x, y }, t),
  ];
}

function leadSteps({ leads: { l, L_l, C_l, R_l }, f, R_s, t, port, voltage, current }: ReckonedLeads): Step[] {
  const { g, r, h, rest, seriesShare, shuntShare, angle } = port;
  const lossy = r > 0;
  const { re: a_re, im: a_im } = rest;
  const share = { s_re: seriesShare.re, s_im: seriesShare.im };
  const shunted = { s_re: shuntShare.re, s_im: shuntShare.im };
  const working = [
    step(formulas.leadReactancePartFormula, 'reactance of the leads over the resistance', { f, L_l, l, R_s }, g),
    step(formulas.leadCapacitancePartFormula, 'resistance over the reactance between the leads', { f, C_l, l, R_s }, h),
  ];
  if (lossy) {
    working.push(
      step(formulas.leadResistancePartFormula, 'resistance of the leads over that of the load', { R_l, l, R_s }, r),
    );
  }
  if (angle !== undefined) {
    const { alpha, beta } = angle;
    working.push(step(formulas.linePhaseFormula, 'phase over the length', { h, g, r }, beta));
    if (lossy)
      working.push(step(formulas.lineAttenuationFormula, 'attenuation over the length', { r, h, beta }, alpha));
    working.push(
      step(formulas.lineShareRealFormula, 'share of the length that counts', { alpha, beta }, shunted.s_re),
      step(formulas.lineRestRealFormula, 'change over the length', { alpha, beta }, a_re),
    );
    if (lossy) {
      working.push(
        step(formulas.lineShareImaginaryFormula, 'the same share, imaginary part', { alpha, beta }, shunted.s_im),
        step(formulas.lineRestImaginaryFormula, 'the same change, imaginary part', { alpha, beta }, a_im),
      );
    }
  } else {
    working.push(
      step(formulas.lumpedShareRealFormula, 'share of the admittance that counts', { g, h }, shunted.s_re),
      step(formulas.lumpedRestRealFormula, 'change over the length', { g, h }, a_re),
    );
    if (lossy) {
      working.push(
        step(formulas.lumpedShareImaginaryFormula, 'the same share, imaginary part', { r, h }, shunted.s_im),
        step(formulas.lumpedRestImaginaryFormula, 'the same change, imaginary part', { r, h }, a_im),
      );
    }
  }
  const added = { a_re, a_im, t, r, g, ...share };
  working.push(
    step(formulas.addedVoltageRealFormula, 'voltage that the leads add', added, voltage.re),
    step(formulas.addedVoltageImaginaryFormula, 'the same voltage, imaginary part', added, voltage.im),
    step(formulas.addedCurrentRealFormula, 'current beside the load', { a_re, h, t, ...shunted }, current.re),
    step(
      formulas.addedCurrentImaginaryFormula,
      'the same current, imaginary part',
      { a_im, h, t, ...shunted },
      current.im,
    ),
  );
  return working;
}

function seenSteps({ R_s, t, x, y, voltage, current, loadError, seen }: ReckonedLeads): Step[] {
  const w = { w_re: voltage.re, w_im: voltage.im };
  const d = { d_re: current.re, d_im: current.im };
  const { resistance: R, reactance: X, currentRatio: k_I } = seen;
  return [
    step(formulas.resistanceThroughLeadsFormula, 'resistance at the near end', { R_s, t, ...w, ...d }, R),
    step(formulas.reactanceThroughLeadsFormula, 'reactance at the near end', { R_s, t, ...w, ...d }, X),
    step(impedanceMagnitudeFormula, 'magnitude of the impedance at the near end', { R, X }, seen.impedance),
    step(phaseOfLoadFormula, 'phase of the voltage ahead of the current there', { X, R }, seen.phase),
    step(formulas.voltageRatioOfLeadsFormula, 'voltage at the load over the near end', { t, ...w }, seen.voltageRatio),
    step(formulas.currentRatioOfLeadsFormula, 'current in the load over the near end', d, k_I),
    step(
      formulas.bypassRatioOfLeadsFormula,
      'current beside the load over the near end',
      { ...d, k_I },
      seen.bypassRatio,
    ),
    step(
      formulas.currentErrorThroughLeadsFormula,
      'error of the power from the current at the near end',
      { x, ...d },
      seen.powerErrorFromCurrent,
    ),
    step(voltageMethodErrorFormula, 'error of the power from the voltage at the load', { x, y }, loadError),
    step(
      formulas.voltageErrorThroughLeadsFormula,
      'error of the power from the voltage at the near end',
      { e_0: loadError, t, x, ...w },
      seen.powerErrorFromVoltage,
    ),
  ];
}

function endSteps({ R_s, seen }: ReckonedLeads, { voltage }: LoadThroughLeads): Step[] {
  const { ends, impedance: Z, voltageRatio: k_V, currentRatio: k_I, bypassRatio: k_b } = seen;
  if (ends === undefined) return [];
  const { nearVoltage: V, nearCurrent: I, loadCurrent } = ends;
  return [
    voltage === undefined
      ? step(voltageAcrossImpedanceFormula, 'voltage at the near end', { I, Z }, V)
      : step(currentThroughImpedanceFormula, 'current at the near end', { V, Z }, I),
    step(formulas.voltageAtLoadFormula, 'voltage at the load', { k_V, V }, ends.loadVoltage),
    step(formulas.currentAtLoadFormula, 'current in the load', { k_I, I }, loadCurrent),
    step(formulas.bypassCurrentFormula, 'current beside the load', { k_b, I }, ends.bypassCurrent),
    step(powerFromCurrentFormula, 'power in the load', { I: loadCurrent, R: R_s }, ends.loadPower),
  ];
}
