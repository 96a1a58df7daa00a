import { currentAndPowerFormula, powerAndVoltageFormula, threeRegimesFormula } from '../working/formulas/curve.js';
import { type Step, step } from '../working/index.js';
import type { Explained } from './curve.js';
import type { RegimeCurve } from './regime-curve.js';

/** Stretch and steps of a power that a regime curve has at a load. */
export function explainRegimes(curve: RegimeCurve, load: number, power: number): Explained {
  const { corners, limits } = curve;
  const { currentLimit: I = Infinity, voltageLimit: V = Infinity } = limits;
  const byRegime = {
    'constant-current': I * I * load,
    'constant-power': limits.power,
    'constant-voltage': (V * V) / load,
  };
  const regimes = [corners[0]!.below, ...corners.map(({ above }) => above)];
  const index = Math.max(
    0,
    regimes.findIndex((regime) => byRegime[regime] === power),
  );
  const kind = regimes[index]!;
  const to = corners[index]?.load;
  return {
    stretch: { index, from: corners[index - 1]?.load ?? 0, ...(to === undefined ? {} : { to }), kind },
    working: [regimeStep(curve, load, power, `power, ${kind} regime`)],
    warnings: [],
  };
}

function regimeStep({ limits }: RegimeCurve, load: number, power: number, label: string): Step {
  const { power: P_max, currentLimit: I, voltageLimit: V } = limits;
  if (I === undefined) return step(powerAndVoltageFormula, label, { R: load, P_max, V: V! }, power);
  if (V === undefined) return step(currentAndPowerFormula, label, { R: load, I, P_max }, power);
  return step(threeRegimesFormula, label, { R: load, I, P_max, V }, power);
}
