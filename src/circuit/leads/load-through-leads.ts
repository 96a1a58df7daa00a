import { fail, requireChoice, requireNonNegative, requirePositive, requirePositiveResult } from '../../checks/index.js';
import { add, type Complex, complex, divide, magnitude, multiply, squareRoot } from '../complex.js';
import { type LoadWithStrays, requireLoad } from '../strays/load-with-strays.js';

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
  const { R, L, C } = requireLoad(question.load);
  const omega = 2 * Math.PI * requirePositive(question.frequency, 'frequency');
  const { voltage, current } = question;
  if (voltage !== undefined && current !== undefined) {
    fail('wrong-count', 'voltage', voltage, 'must be absent where the current is given');
  }
  const form = requireChoice(question.form ?? 'line', 'form', ['line', 'lumped']);
  const { series, shunt } = requireLeads(question.leads, omega);
  const x = omega * R * C;
  const load = complex(R / (1 + x * x), omega * L - (R * x) / (1 + x * x));
  const { rest, b, c } = form === 'line' ? lineTwoPort(series, shunt) : lumpedTwoPort(series, shunt);

  // With 1 A into the load: V = a·Z + b, I = c·Z + a at the near end. What bypasses it is I less 1, so a less 1 is kept.
  const a = add(complex(1), rest);
  const bypass = add(multiply(c, load), rest);
  const nearVoltage = add(multiply(a, load), b);
  const nearCurrent = add(multiply(c, load), a);
  const seen = divide(nearVoltage, nearCurrent);
  const perCurrent = 1 / magnitude(nearCurrent);
  const impedance = requirePositiveResult(magnitude(seen), 'impedance');
  const voltageRatio = requirePositiveResult(magnitude(load) / magnitude(nearVoltage), 'voltageRatio');
  const currentRatio = requirePositiveResult(perCurrent, 'currentRatio');
  const bypassRatio = magnitude(bypass) * perCurrent;
  const nearVoltageSquare = nearVoltage.re ** 2 + nearVoltage.im ** 2;
  const result = {
    resistance: seen.re,
    reactance: seen.im,
    impedance,
    phase: Math.atan2(seen.im, seen.re),
    voltageRatio,
    currentRatio,
    bypassRatio,
    powerErrorFromCurrent: ((nearCurrent.re ** 2 + nearCurrent.im ** 2) * R) / load.re - 1,
    powerErrorFromVoltage: nearVoltageSquare / R / load.re - 1,
  };
  if (voltage === undefined && current === undefined) return result;
  const I =
    current === undefined
      ? requirePositive(voltage as number, 'voltage') / impedance
      : requirePositive(current, 'current');
  const loadCurrent = requirePositiveResult(I * currentRatio, 'loadCurrent');
  return {
    ...result,
    ends: {
      nearVoltage: requirePositiveResult(voltage ?? I * impedance, 'nearVoltage'),
      nearCurrent: requirePositiveResult(I, 'nearCurrent'),
      loadVoltage: requirePositiveResult(loadCurrent * magnitude(load), 'loadVoltage'),
      loadCurrent,
      bypassCurrent: I * bypassRatio,
      loadPower: requirePositiveResult(loadCurrent * load.re * loadCurrent, 'loadPower'),
    },
  };
}

/** Series impedance and shunt admittance of the whole length. */
function requireLeads(leads: Leads, omega: number): { series: Complex; shunt: Complex } {
  const length = requirePositive(leads.length, 'leads.length');
  const inductance = requireNonNegative(leads.inductance, 'leads.inductance');
  const capacitance = requireNonNegative(leads.capacitance, 'leads.capacitance');
  const resistance = requireNonNegative(leads.resistance ?? 0, 'leads.resistance');
  return {
    series: complex(resistance * length, omega * inductance * length),
    shunt: complex(0, omega * capacitance * length),
  };
}

/** V1 = a·V2 + b·I2, I1 = c·V2 + a·I2. */
interface TwoPort {
  /** a less 1. */
  readonly rest: Complex;
  readonly b: Complex;
  readonly c: Complex;
}

function lumpedTwoPort(series: Complex, shunt: Complex): TwoPort {
  const product = multiply(series, shunt);
  const c = multiply(shunt, add(complex(1), multiply(product, complex(0.25))));
  return { rest: multiply(product, complex(0.5)), b: series, c };
}

/** cosh γl, Z·sinh(γl)/γl and Y·sinh(γl)/γl with (γl)² = Z·Y: no characteristic impedance, so that L or C may be 0. */
function lineTwoPort(series: Complex, shunt: Complex): TwoPort {
  const angle = squareRoot(multiply(series, shunt));
  const share = magnitude(angle) < 1e-8 ? complex(1) : divide(sinh(angle), angle);
  // cosh γl − 1 = 2·sinh²(γl/2)
  const half = sinh(complex(angle.re / 2, angle.im / 2));
  return { rest: multiply(complex(2), multiply(half, half)), b: multiply(series, share), c: multiply(shunt, share) };
}

function sinh({ re, im }: Complex): Complex {
  return complex(Math.sinh(re) * Math.cos(im), Math.cosh(re) * Math.sin(im));
}
