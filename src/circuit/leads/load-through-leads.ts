import {
  fail,
  requireChoice,
  requireNonNegative,
  requirePositive,
  requirePositiveResult,
  requireResult,
} from '../../checks/index.js';
import { type CheckedLoad, type LoadWithStrays, partsOf, requireLoad } from '../strays/load-with-strays.js';
import { addedCurrent, addedVoltage, lineTwoPort, lumpedTwoPort, type Parts, type TwoPort } from './two-port.js';

/** A pair of leads: its constants are those that `twoWireLine` and `coaxialLine` give. */
export interface Leads {
  /** Length of the pair, one way, in metres, greater than 0. */
  readonly length: number;
  /** Inductance of both leads together, in henries per metre, 0 or more. */
  readonly inductance: number;
  /** Capacitance between the leads, in farads per metre, 0 or more. */
  readonly capacitance: number;
  /** Resistance of both leads together at the frequency, in ohms per metre; 0 unless stated. */
  readonly resistance?: number;
}

/** A load at the end of its leads. */
export interface LoadThroughLeads {
  readonly load: LoadWithStrays;
  readonly leads: Leads;
  /** Frequency, in hertz, greater than 0. */
  readonly frequency: number;
  /**
   * How the leads are reckoned: as a transmission `line`, which is taken unless stated, or `lumped`: all inductance in
   * series, with half the capacitance at each end.
   */
  readonly form?: 'line' | 'lumped';
  /** Rms voltage at the near end of the leads, in volts: at most one of voltage and current. */
  readonly voltage?: number;
  /** Rms current into the near end of the leads, in amperes. */
  readonly current?: number;
}

/** What the leads do to a load. */
export interface LoadSeenThroughLeads {
  /** Resistance that the near end of the leads shows in series, in ohms. */
  readonly resistance: number;
  /** Reactance that it shows in series, in ohms: positive when inductive. */
  readonly reactance: number;
  /** Magnitude, in ohms. */
  readonly impedance: number;
  /** Phase of the voltage ahead of the current at the near end, in radians. */
  readonly phase: number;
  /** Voltage at the load over voltage at the near end. */
  readonly voltageRatio: number;
  /** Current into the load over current into the leads. */
  readonly currentRatio: number;
  /** Current that leaves the leads beside the load, over the current into the leads: a sum of phasors, not of sizes. */
  readonly bypassRatio: number;
  /** Power that I²·R gives with the current into the leads and the load's resistance, over the true power in it, less 1. */
  readonly powerErrorFromCurrent: number;
  /** Power that V²/R gives with the voltage at the near end, over the true power in the load, less 1. */
  readonly powerErrorFromVoltage: number;
  /** Rms values at both ends, where a voltage or a current was given. */
  readonly ends?: {
    /** In volts. */
    readonly nearVoltage: number;
    /** In amperes. */
    readonly nearCurrent: number;
    /** In volts. */
    readonly loadVoltage: number;
    /** In amperes. */
    readonly loadCurrent: number;
    /** In amperes. */
    readonly bypassCurrent: number;
    /** In the load, in watts. */
    readonly loadPower: number;
  };
}

/**
 * A load as it is seen through two leads, with voltage and current at both ends and the current that bypasses it.
 *
 * @param question Load with strays, leads with length and constants, frequency; voltage or current at the near end
 * @returns Impedance at the near end, ratios of far to near end, errors of the power that is reckoned at the near end
 * @throws CalculationError `not-a-number`, `not-positive`, `negative`, `unknown-choice`, `wrong-count` (voltage and
 * current both), `result-out-of-range`
 * @source Transmission-line equations of two conductors; the two-port of L in series between two capacitors
 * @accuracy Ratios and impedance within 1e-14 (relative), measured against 40 digits for up to ten wavelengths; the two
 * errors of power within 1e-14 absolutely
 * @example
 * ```ts
 * import { loadThroughLeads, twoWireLine } from 'esu-limits';
 * const leads = { length: 2, ...twoWireLine({ spacing: 20e-3, diameter: 1e-3 }) };
 * const seen = loadThroughLeads({ load: { resistance: 2000 }, leads, frequency: 500e3 });
 * [seen.currentRatio, seen.bypassRatio, seen.powerErrorFromCurrent].map((value) => value.toFixed(4)); // → ["0.9958", "0.0944", "0.0085"]
 * ```
 */
export function loadThroughLeads(question: LoadThroughLeads): LoadSeenThroughLeads {
  return reckonLeads(question).seen;
}

/** What is seen through leads, with every number on the way to it. */
export interface ReckonedLeads {
  readonly load: CheckedLoad;
  readonly leads: CheckedLeads;
  readonly f: number;
  /** Parts of the strays of the load, as `loadImpedance` has them. */
  readonly y: number;
  readonly x: number;
  /** Resistance that the load shows in series, in ohms, and the tangent of its phase. */
  readonly R_s: number;
  readonly t: number;
  readonly port: TwoPort;
  readonly voltage: Parts;
  readonly current: Parts;
  /** Error of the power that the strays of the load alone make when it is reckoned from the voltage. */
  readonly loadError: number;
  readonly seen: LoadSeenThroughLeads;
}

/** Everything relative to the load: with 1 A into it, its resistance in series is the unit of all voltages. */
export function reckonLeads(question: LoadThroughLeads): ReckonedLeads {
  const load = requireLoad(question.load);
  const f = requirePositive(question.frequency, 'frequency');
  const { voltage: V, current: I } = question;
  if (V !== undefined && I !== undefined)
    fail('wrong-count', 'voltage', V, 'must be absent where the current is given');
  const form = requireChoice(question.form ?? 'line', 'form', ['line', 'lumped']);
  const leads = requireLeads(question.leads);
  const { y, x } = partsOf(load, f);
  const square = 1 + x * x;
  const R_s = requirePositiveResult(load.R / square, 'resistance');
  const t = y * square - x;
  const turn = 2 * Math.PI * f * leads.l;
  const relative = { g: (turn * leads.L_l) / R_s, r: (leads.R_l * leads.l) / R_s, h: turn * leads.C_l * R_s };
  const port = form === 'line' ? lineTwoPort(relative) : lumpedTwoPort(relative);
  const voltage = addedVoltage(port, t);
  const current = addedCurrent(port, t);

  const v = { re: 1 + voltage.re, im: t + voltage.im };
  const i = { re: 1 + current.re, im: current.im };
  const sizeV = Math.hypot(v.re, v.im);
  const sizeI = Math.hypot(i.re, i.im);
  const resistance = R_s * ((v.re * i.re + v.im * i.im) / sizeI / sizeI);
  const reactance = R_s * ((v.im * i.re - v.re * i.im) / sizeI / sizeI);
  const impedance = requirePositiveResult(Math.hypot(resistance, reactance), 'impedance');
  const voltageRatio = requirePositiveResult(Math.hypot(1, t) / sizeV, 'voltageRatio');
  const currentRatio = requirePositiveResult(1 / sizeI, 'currentRatio');
  const bypassRatio = requireResult(Math.hypot(current.re, current.im) * currentRatio, 'bypassRatio');
  const loadError = y === 0 ? 0 : y * (y * square - 2 * x);
  const leadError = voltage.re * (2 + voltage.re) + voltage.im * (voltage.im + 2 * t);
  const ratios = {
    resistance,
    reactance,
    impedance,
    phase: Math.atan2(reactance, resistance),
    voltageRatio,
    currentRatio,
    bypassRatio,
    powerErrorFromCurrent: requireResult(
      x * x + square * (current.re * (2 + current.re) + current.im * current.im),
      'powerErrorFromCurrent',
    ),
    powerErrorFromVoltage: requireResult(loadError + leadError / square, 'powerErrorFromVoltage'),
  };
  const ends = V === undefined && I === undefined ? {} : { ends: endsOf(ratios, R_s, V, I) };
  return { load, leads, f, y, x, R_s, t, port, voltage, current, loadError, seen: { ...ratios, ...ends } };
}

type Ends = NonNullable<LoadSeenThroughLeads['ends']>;

function endsOf(
  { impedance, voltageRatio, currentRatio, bypassRatio }: LoadSeenThroughLeads,
  R_s: number,
  voltage: number | undefined,
  current: number | undefined,
): Ends {
  const nearCurrent =
    current === undefined
      ? requirePositiveResult(requirePositive(voltage as number, 'voltage') / impedance, 'nearCurrent')
      : requirePositive(current, 'current');
  const nearVoltage = voltage ?? requirePositiveResult(nearCurrent * impedance, 'nearVoltage');
  const loadCurrent = requirePositiveResult(nearCurrent * currentRatio, 'loadCurrent');
  return {
    nearVoltage,
    nearCurrent,
    loadVoltage: requirePositiveResult(nearVoltage * voltageRatio, 'loadVoltage'),
    loadCurrent,
    bypassCurrent: requireResult(nearCurrent * bypassRatio, 'bypassCurrent'),
    loadPower: requirePositiveResult(loadCurrent * R_s * loadCurrent, 'loadPower'),
  };
}

/** Leads whose values are checked and all there: length, and inductance, capacitance and resistance by length. */
interface CheckedLeads {
  readonly l: number;
  readonly L_l: number;
  readonly C_l: number;
  readonly R_l: number;
}

function requireLeads(leads: Leads): CheckedLeads {
  return {
    l: requirePositive(leads.length, 'leads.length'),
    L_l: requireNonNegative(leads.inductance, 'leads.inductance'),
    C_l: requireNonNegative(leads.capacitance, 'leads.capacitance'),
    R_l: requireNonNegative(leads.resistance ?? 0, 'leads.resistance'),
  };
}
