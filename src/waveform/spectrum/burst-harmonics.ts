import type { Harmonic } from './spectrum.js';

/** One period of a waveform: B·e^(−t/τ)·sin(ωt + ψ) from 0 to the end of the gate, 0 after it. */
export interface BurstCourse {
  readonly amplitude: number;
  /** Cycles of the sine in one period. */
  readonly cycles: number;
  readonly phase: number;
  /** Period over time constant; 0 for no decay. */
  readonly decay: number;
  /** Share of the period for which the gate is open. */
  readonly gate: number;
}

/** Mean value and first harmonics of a burst, by the integral of each of the two exponentials that make its sine. */
export function burstHarmonics(course: BurstCourse, count: number): { mean: number; harmonics: Harmonic[] } {
  const { amplitude, cycles, phase, decay, gate } = course;
  const harmonics: Harmonic[] = [];
  let mean = 0;
  for (let order = 0; order <= count; order++) {
    const lower = unitIntegral(decay, 2 * Math.PI * (order - cycles), gate);
    const upper = unitIntegral(decay, 2 * Math.PI * (order + cycles), gate);
    // c = B/(2j)·(e^(jψ)·lower − e^(−jψ)·upper)
    const cos = Math.cos(phase);
    const sin = Math.sin(phase);
    const re = cos * lower.re - sin * lower.im - (cos * upper.re + sin * upper.im);
    const im = cos * lower.im + sin * lower.re - (cos * upper.im - sin * upper.re);
    const real = (amplitude / 2) * im;
    const imaginary = (-amplitude / 2) * re;
    if (order === 0) mean = real;
    else {
      harmonics.push({
        order,
        peak: 2 * Math.hypot(real, imaginary),
        phase: Math.atan2(real, -imaginary),
      });
    }
  }
  return { mean, harmonics };
}

/** ∫₀^gate e^(−(decay + j·turn)·x) dx, without loss where the exponent is small. */
function unitIntegral(decay: number, turn: number, gate: number): { re: number; im: number } {
  const x = decay * gate;
  const y = turn * gate;
  const size = x * x + y * y;
  if (size < 1e-16) return { re: gate * (1 - x / 2), im: -gate * (y / 2) };
  // (1 − e^(−x − jy))/(x + jy)
  const left = Math.exp(-x);
  const re = -Math.expm1(-x) + 2 * left * Math.sin(y / 2) ** 2;
  const im = left * Math.sin(y);
  return { re: (gate * (re * x + im * y)) / size, im: (gate * (im * x - re * y)) / size };
}
