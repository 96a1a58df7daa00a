import fc from 'fast-check';
import {
  accessoryRating,
  accessoryVoltageRule,
  coaxialLine,
  dutyHeating,
  equivalentSource,
  explainLoadsWithinPhase,
  heatingFactor,
  loadHeating,
  loadImpedance,
  loadsWithinPhase,
  pauseFromRating,
  peakRatingRule,
  peakRatings,
  permittedActivation,
  powerErrorFromStrays,
  powerTransfer,
  requiredPause,
  resistanceAtTemperature,
  roundWireResistance,
  skinDepth,
  solenoidInductance,
  straightWireInductance,
  straysAtPhase,
  twoWireLine,
} from '../../../src/circuit/index.js';
import type { Step } from '../../../src/working/index.js';
import { load, power, valueBetween, voltage } from '../../generators.js';
import type { Twins } from './twin.js';

/** The value of the first step of a formula. */
function stepValue({ working }: { readonly working: readonly Step[] }, formula: string): number {
  const found = working.find((step) => step.formula === formula);
  if (found === undefined) throw new Error(`No step ${formula} in the working.`);
  return found.value;
}

/** A load of strays whose parts are exactly x and y: at 1/(2π) Hz, ω is 1 to the last place. */
const strayLoad = (x: number, y: number, R = 1) => ({
  resistance: R,
  seriesInductance: y * R,
  parallelCapacitance: x / R,
  frequency: 1 / (2 * Math.PI),
});
const x = valueBetween(0.01, 3);
const y = x;
/** Parts far enough apart that their difference keeps its digits. */
const apart = fc.record({ x: valueBetween(0.01, 0.3), y: valueBetween(1, 3) });
const phase = valueBetween(0.01, 1.5);

const geometry = fc
  .record({ d: valueBetween(1e-4, 0.01), ratio: valueBetween(1.01, 100) })
  .map(({ d, ratio }) => ({ D: d * ratio, d }));
const coaxial = geometry.map(({ D, d }) => ({ d_o: D, d_i: d }));
const permittivity = valueBetween(1, 10);
const wire = { l: valueBetween(0.01, 10), r: valueBetween(1e-5, 0.005) };

/** I₀(z)/I₁(z) by the power series of both, z = (1 + j)·q: another way than that of the fast function. */
function besselQuotient(q: number): { B_re: number; B_im: number } {
  // z²/4 = j·q²/2; the terms of I₁ are taken without its factor z/2.
  const square = (q * q) / 2;
  let [zero, one] = [1, 1];
  const sums = [1, 0, 1, 0] as [number, number, number, number];
  for (let n = 1; n < 60; n++) {
    zero *= square / (n * n);
    one *= square / (n * (n + 1));
    const sign = n % 4 < 2 ? 1 : -1;
    sums[n % 2] = (sums[n % 2] as number) + sign * zero;
    sums[2 + (n % 2)] = (sums[2 + (n % 2)] as number) + sign * one;
  }
  const [a, b, c, d] = sums;
  const size = c * c + d * d;
  const [re, im] = [(a * c + b * d) / size, (b * c - a * d) / size];
  // Divided by z/2 = (1 + j)·q/2.
  return { B_re: (re + im) / q, B_im: (im - re) / q };
}

/** (K − E)/k² and E − k of d/√(d² + l²) by the trapezoidal rule, which is exact for a smooth periodic function. */
function coilIntegrals(d: number, l: number): { D_e: number; E_k: number } {
  const k = d / Math.hypot(d, l);
  const points = 400;
  let [D_e, E] = [0, 0];
  for (let n = 0; n < points; n++) {
    const sine = Math.sin((Math.PI * (n + 0.5)) / points);
    const root = Math.sqrt(1 - k * k * sine * sine);
    D_e += (sine * sine) / root;
    E += root;
  }
  const weight = Math.PI / 2 / points;
  return { D_e: D_e * weight, E_k: E * weight - k };
}

/** Strays below their resonance, at a frequency, with a phase. */
const box = {
  f: valueBetween(1e5, 5e6),
  L: valueBetween(1e-8, 1e-6),
  C: valueBetween(1e-12, 2e-11),
  phi: valueBetween(0.01, 1.5),
};
const boxOf = ({ f, L, C, phi }: Readonly<Record<string, number>>) => ({
  frequency: f!,
  seriesInductance: L!,
  parallelCapacitance: C!,
  phase: phi!,
});
const resonance = ({ f, L, C }: { f: number; L: number; C: number }) => (2 * Math.PI * f) ** 2 * L * C;

const kelvin = valueBetween(1, 300);
/** A final rise above a highest rise, above a rise at the beginning. */
const rises = fc
  .record({ T_m: valueBetween(10, 200), below: valueBetween(0, 0.9), above: valueBetween(1.05, 10) })
  .map(({ T_m, below, above }) => ({ T_m, T_0: T_m * below, T_f: T_m * above }));
const tau = valueBetween(1, 1000);
const heat = (T_f: number, timeConstant: number) => ({ power: 1, thermalResistance: T_f, timeConstant });

const source = fc
  .record({ E: voltage(), R_s: load(), R_1: valueBetween(0.1, 1), factor: valueBetween(2, 10) })
  .map(({ E, R_s, R_1, factor }) => {
    const at = (R: number) => (E * R) / (R + R_s);
    const [first, second] = [R_1 * R_s, R_1 * R_s * factor];
    return { V_1: at(first), V_2: at(second), R_1: first, R_2: second };
  });

export const twins: Twins = {
  'inductive-part': {
    fast: ({ f, L, R }) =>
      stepValue(loadImpedance({ resistance: R!, seriesInductance: L!, frequency: f! }), 'inductive-part'),
  },
  'capacitive-part': {
    fast: ({ f, C, R }) =>
      stepValue(loadImpedance({ resistance: R!, parallelCapacitance: C!, frequency: f! }), 'capacitive-part'),
  },
  'series-resistance': {
    fast: ({ R, x: part }) => loadImpedance(strayLoad(part!, 0, R!)).resistance,
    symbols: { x },
  },
  'series-reactance': {
    fast: ({ R, x: part, y: other }) => loadImpedance(strayLoad(part!, other!, R!)).reactance,
    inputs: fc.tuple(load(), apart).map(([R, parts]) => ({ R, ...parts })),
  },
  'current-method-error': {
    fast: ({ x: part }) => powerErrorFromStrays(strayLoad(part!, 0)).fromCurrent,
    symbols: { x },
  },
  'voltage-method-error': {
    fast: ({ x: part, y: other }) => powerErrorFromStrays(strayLoad(part!, other!)).fromVoltage,
    inputs: apart,
  },
  'tangent-of-phase': {
    fast: ({ x: part, y: other }) => stepValue(powerErrorFromStrays(strayLoad(part!, other!)), 'tangent-of-phase'),
    inputs: apart,
  },
  'product-method-error': {
    fast: ({ t }) => powerErrorFromStrays(strayLoad(0, t!)).fromProduct,
    symbols: { t: y },
  },
  'stray-inductance-at-phase': {
    fast: ({ R, phi, f }) => straysAtPhase({ resistance: R!, frequency: f!, phase: phi! }).seriesInductance,
    symbols: { phi: phase },
  },
  'stray-capacitance-at-phase': {
    fast: ({ R, phi, f }) => straysAtPhase({ resistance: R!, frequency: f!, phase: phi! }).parallelCapacitance,
    symbols: { phi: phase },
  },
  'resonance-part': {
    fast: (inputs) => stepValue(explainLoadsWithinPhase(boxOf({ ...inputs, phi: 1 })), 'resonance-part'),
    symbols: { L: box.L, C: box.C },
  },
  'load-range-discriminant': {
    // At 1/(2π) Hz with u henries and one farad, ω²LC is u; beyond resonance, not so near to 0 that no digit is left.
    fast: ({ phi, u }) =>
      stepValue(
        explainLoadsWithinPhase(boxOf({ f: 1 / (2 * Math.PI), L: u!, C: 1, phi: phi! })),
        'load-range-discriminant',
      ),
    inputs: fc
      .record({ phi: phase, u: fc.oneof(valueBetween(1e-6, 0.9), valueBetween(1.1, 3)) })
      .filter(({ phi, u }) => Math.abs(Math.tan(phi) ** 2 + 4 * u * (1 - u)) > 0.01 * (Math.tan(phi) ** 2 + u)),
  },
  'lowest-load': {
    // The capacitance that gives this discriminant, below the resonance.
    fast: ({ D, f, L, phi }) => {
      const excess = (D! - Math.tan(phi!) ** 2) / 4;
      const u = (2 * excess) / (1 + Math.sqrt(1 - 4 * excess));
      return loadsWithinPhase(boxOf({ f: f!, L: L!, phi: phi!, C: u / resonance({ f: f!, L: L!, C: 1 }) })).lower!;
    },
    inputs: fc.record(box).map(({ f, L, C, phi }) => {
      const u = resonance({ f, L, C });
      return { f, L, phi, D: Math.tan(phi) ** 2 + 4 * u * (1 - u) };
    }),
  },
  'highest-load': {
    fast: ({ phi, f, C, u }) =>
      loadsWithinPhase(boxOf({ f: f!, C: C!, phi: phi!, L: u! / resonance({ f: f!, L: 1, C: C! }) })).upper!,
    inputs: fc.record(box).map(({ f, L, C, phi }) => {
      const u = resonance({ f, L, C });
      return { phi, D: Math.tan(phi) ** 2 + 4 * u * (1 - u), f, C, u };
    }),
  },
  'straight-wire-surface': {
    fast: ({ l, r }) => straightWireInductance({ length: l!, diameter: 2 * r! }),
    symbols: wire,
  },
  'straight-wire-uniform': {
    fast: ({ l, r }) => straightWireInductance({ length: l!, diameter: 2 * r!, current: 'uniform' }),
    symbols: wire,
  },
  'two-wire-inductance': {
    fast: ({ D, d }) => twoWireLine({ spacing: D!, diameter: d! }).inductance,
    inputs: geometry,
  },
  'two-wire-capacitance': {
    fast: ({ D, d, epsilon_r }) =>
      twoWireLine({ spacing: D!, diameter: d!, relativePermittivity: epsilon_r! }).capacitance,
    inputs: fc.tuple(geometry, permittivity).map(([where, epsilon_r]) => ({ ...where, epsilon_r })),
  },
  'coaxial-inductance': {
    fast: ({ d_o, d_i }) => coaxialLine({ innerDiameter: d_i!, outerDiameter: d_o! }).inductance,
    inputs: coaxial,
  },
  'coaxial-capacitance': {
    fast: ({ d_o, d_i, epsilon_r }) =>
      coaxialLine({ innerDiameter: d_i!, outerDiameter: d_o!, relativePermittivity: epsilon_r! }).capacitance,
    inputs: fc.tuple(coaxial, permittivity).map(([where, epsilon_r]) => ({ ...where, epsilon_r })),
  },
  'skin-depth': {
    fast: ({ rho, f, mu_r }) => skinDepth({ resistivity: rho!, frequency: f!, relativePermeability: mu_r! }),
    symbols: { rho: valueBetween(1e-8, 1e-6), mu_r: valueBetween(1, 1000) },
  },
  'round-wire-ratio': {
    fast: ({ r, delta }) => {
      // A skin depth of delta at 1 MHz.
      const resistivity = 0.4 * Math.PI ** 2 * delta! * delta!;
      return roundWireResistance({ resistivity, frequency: 1e6, diameter: 2 * r!, length: 1 }).ratio;
    },
    inputs: fc
      .record({ delta: valueBetween(1e-5, 1e-3), q: valueBetween(0.5, 5) })
      .map(({ delta, q }) => ({ r: q * delta, delta, ...besselQuotient(q) })),
  },
  'round-wire-resistance': {
    // At 1e-12 Hz the ratio is 1; that of a wire at radio frequency is what its two resistances say.
    fast: ({ k_R, rho, l, r }) => {
      const wire = { resistivity: rho!, diameter: 2 * r!, length: l! };
      return k_R === 1
        ? roundWireResistance({ ...wire, frequency: 1e-12 }).resistance
        : roundWireResistance({ ...wire, frequency: 1e6 }).resistance;
    },
    inputs: fc.record({ rho: valueBetween(1e-8, 1e-6), ...wire, direct: fc.boolean() }).map(({ rho, l, r, direct }) => {
      const { ratio } = roundWireResistance({ resistivity: rho, frequency: 1e6, diameter: 2 * r, length: l });
      return { k_R: direct ? 1 : ratio, rho, l, r };
    }),
  },
  'solenoid-inductance': {
    fast: ({ N, d, l }) => solenoidInductance({ diameter: d!, length: l!, turns: N! }),
    inputs: fc
      .record({ N: valueBetween(1, 1000), d: valueBetween(1e-3, 0.1), shape: valueBetween(0.2, 20) })
      .map(({ N, d, shape }) => ({ N, d, l: shape * d, ...coilIntegrals(d, shape * d) })),
  },
  'resistance-at-temperature': {
    fast: ({ R, alpha, T }) => resistanceAtTemperature({ resistance: R!, coefficient: alpha!, rise: T! }),
    symbols: { alpha: valueBetween(-0.002, 0.005) },
  },
  'final-rise': {
    fast: ({ P, R_th }) => loadHeating({ power: P!, thermalResistance: R_th!, timeConstant: 1, duration: 1 }).finalRise,
    symbols: { R_th: valueBetween(0.1, 20) },
  },
  'temperature-rise': {
    fast: ({ T_0, T_f, t, tau: constant }) =>
      loadHeating({ ...heat(T_f!, constant!), duration: t!, initialRise: T_0! }).rise,
    symbols: { T_0: kelvin, T_f: kelvin, tau },
  },
  'dissipated-energy': {
    fast: ({ P, t }) => loadHeating({ power: P!, thermalResistance: 1, timeConstant: 1, duration: t! }).energy,
  },
  'permitted-activation': {
    fast: ({ tau: constant, T_m, T_0, T_f }) =>
      permittedActivation({ ...heat(T_f!, constant!), maximumRise: T_m!, initialRise: T_0! }).duration!,
    inputs: fc.tuple(rises, tau).map(([all, constant]) => ({ ...all, tau: constant })),
  },
  'duty-rise': {
    fast: ({ T_f, t, t_p, tau: constant }) => dutyHeating({ ...heat(T_f!, constant!), on: t!, off: t_p! }).rise,
    symbols: {
      T_f: valueBetween(1, 500),
      t: valueBetween(0.5, 100),
      t_p: valueBetween(0.5, 300),
      tau: valueBetween(5, 600),
    },
  },
  'start-rise': {
    fast: ({ T_m, T_f, t, tau: constant }) =>
      requiredPause({ ...heat(T_f!, constant!), maximumRise: T_m!, duration: t! }).startRise!,
    // At most half of the longest activation, so that something is left of the difference.
    inputs: fc.tuple(rises, tau, valueBetween(0.01, 0.5)).map(([{ T_m, T_f }, constant, share]) => ({
      T_m,
      T_f,
      tau: constant,
      t: share * constant * Math.log1p(T_m / (T_f - T_m)),
    })),
  },
  'required-pause': {
    // A final rise of 2·T_m and a start at T_s make an activation of τ·ln(1 + (T_m − T_s)/T_m); the step holds T_s itself.
    fast: ({ tau: constant, T_m, T_s }) => {
      const duration = constant! * Math.log1p((T_m! - T_s!) / T_m!);
      return requiredPause({ ...heat(2 * T_m!, constant!), maximumRise: T_m!, duration }).pause;
    },
    inputs: fc
      .tuple(kelvin, tau, valueBetween(0.1, 0.5))
      .map(([T_m, constant, share]) => ({ T_m, tau: constant, T_s: T_m * share })),
  },
  'pause-from-rating': {
    fast: ({ t, P, P_r }) => pauseFromRating({ power: P!, ratedPower: P_r!, duration: t! }),
    // Powers apart: the evaluation takes a difference below 1e-15 of a watt for none.
    inputs: fc
      .record({
        t: valueBetween(0.1, 100),
        P_r: power(),
        ratio: fc.oneof(valueBetween(0.1, 0.9), valueBetween(1.1, 9)),
      })
      .map(({ t, P_r, ratio }) => ({ t, P_r, P: P_r * ratio })),
  },
  'heating-factor': { fast: ({ I, t }) => heatingFactor({ current: I!, duration: t! }) },
  'source-resistance': {
    fast: ({ V_1, V_2, R_1, R_2 }) =>
      equivalentSource({ load: R_1!, voltage: V_1! }, { load: R_2!, voltage: V_2! }).sourceResistance,
    inputs: source,
  },
  'open-circuit-voltage': {
    // Of a second load of twice the first, which gives the source resistance again.
    fast: ({ V_1, R_1, R_s }) => {
      const E = V_1! * (1 + R_s! / R_1!);
      const second = { load: 2 * R_1!, voltage: (E * 2 * R_1!) / (2 * R_1! + R_s!) };
      return equivalentSource({ load: R_1!, voltage: V_1! }, second).openCircuitVoltage;
    },
    inputs: fc
      .record({ V_1: voltage(), R_1: load(), share: valueBetween(0.5, 2) })
      .map(({ V_1, R_1, share }) => ({ V_1, R_1, R_s: R_1 * share })),
  },
  'power-from-source': {
    fast: ({ E, R, R_s }) => powerTransfer({ openCircuitVoltage: E!, sourceResistance: R_s!, load: R! }).power,
  },
  'available-power': {
    fast: ({ E, R_s }) => powerTransfer({ openCircuitVoltage: E!, sourceResistance: R_s!, load: 1 }).availablePower,
  },
  'needed-rating': {
    fast: ({ k, V_p }) =>
      peakRatings({
        peakVoltage: V_p!,
        ratings: { load: 1 },
        rule: { ...peakRatingRule, factors: { ...peakRatingRule.factors, load: k! } },
      }).parts[0]!.neededRating,
    symbols: { k: valueBetween(1, 3), V_p: valueBetween(50, 6000) },
  },
  'accessory-factor': {
    fast: ({ V_p, V_o, V_d, y_m }) =>
      accessoryRating({
        peakVoltage: V_p!,
        accessoryRating: V_p!,
        crestFactor: 1,
        rule: { ...accessoryVoltageRule, threshold: 1, offset: V_o!, divisor: V_d!, maximum: y_m! },
      }).leastCrestFactor!,
    symbols: {
      V_p: valueBetween(700, 6000),
      V_o: valueBetween(100, 600),
      V_d: valueBetween(300, 900),
      y_m: valueBetween(1, 9),
    },
  },
};
