import { requirePositiveResult } from '../checks/index.js';
import { crestFactorFormula } from '../working/formulas/circuit.js';
import {
  averageRespondingFactorFormula,
  burstEnergyFromCurrentFormula,
  burstEnergyFromVoltageFormula,
  formFactorFormula,
} from '../working/formulas/waveform.js';
import { type Step, step } from '../working/index.js';
import { averageRespondingScale } from './average-responding-reading.js';

/** The quantity whose course a waveform is. */
export type WaveformQuantity = 'voltage' | 'current';

/** Figures of a periodic waveform. */
export interface WaveformFigures {
  /** Rms value, in the unit of the peak. */
  readonly rms: number;
  /** Mean of the absolute value, in the unit of the peak. */
  readonly averageRectified: number;
  /** Largest absolute value, in volts or amperes. */
  readonly peak: number;
  /** Peak over rms. */
  readonly crestFactor: number;
  /** Rms over average rectified value. */
  readonly formFactor: number;
  /** What an average-responding instrument, calibrated for a sine, shows over the true rms value; 1 for a sine. */
  readonly averageRespondingFactor: number;
  /** Share of the time in which there is an output, 0–1; only for waveforms that have pauses. */
  readonly dutyCycle?: number;
  /** Energy of one burst in the stated load, in joules; only where a load was stated. */
  readonly burstEnergy?: number;
  readonly working: readonly Step[];
}

/** What the figures follow from. */
export interface FiguresInput {
  readonly rms: number;
  readonly averageRectified: number;
  readonly peak: number;
  readonly quantity: WaveformQuantity;
  readonly dutyCycle?: number | undefined;
  readonly burst?: { readonly load: number; readonly repetitionRate: number } | undefined;
  readonly working: readonly Step[];
}

/** The figures that follow from rms, average and peak, each with its step. */
export function figuresOf(input: FiguresInput): WaveformFigures {
  const { quantity, dutyCycle, burst } = input;
  const rms = requirePositiveResult(input.rms, 'rms');
  const averageRectified = requirePositiveResult(input.averageRectified, 'averageRectified');
  const peak = requirePositiveResult(input.peak, 'peak');
  // No peak lies below its rms value, and no rms value below the average: only rounding can say so.
  const crestFactor = Math.max(peak / rms, 1);
  const formFactor = Math.max(rms / averageRectified, 1);
  const averageRespondingFactor = averageRespondingScale * (averageRectified / rms);
  // A shape is dimensionless but for its height: its steps take the unit of the quantity here.
  const unit = quantity === 'current' ? 'A' : 'V';
  const working: Step[] = [
    ...input.working.map((made): Step => (made.unit === 'any' ? { ...made, unit } : made)),
    step(crestFactorFormula, 'crest factor', { x_p: peak, x: rms }, crestFactor),
    step(formFactorFormula, 'form factor', { x: rms, x_a: averageRectified }, formFactor),
    step(
      averageRespondingFactorFormula,
      'reading of an average-responding instrument over the rms value',
      { x_a: averageRectified, x: rms },
      averageRespondingFactor,
    ),
  ];
  let burstEnergy: number | undefined;
  if (burst !== undefined) {
    const { load: R, repetitionRate: f_r } = burst;
    const formula = quantity === 'current' ? burstEnergyFromCurrentFormula : burstEnergyFromVoltageFormula;
    const heat = quantity === 'current' ? rms * R * rms : (rms / R) * rms;
    burstEnergy = requirePositiveResult(heat / f_r, 'burstEnergy');
    working.push(step(formula, 'energy of one burst', { x: rms, R, f_r }, burstEnergy));
  }
  return {
    rms,
    averageRectified,
    peak,
    crestFactor,
    formFactor,
    averageRespondingFactor,
    ...(dutyCycle !== undefined && { dutyCycle }),
    ...(burstEnergy !== undefined && { burstEnergy }),
    working,
  };
}
