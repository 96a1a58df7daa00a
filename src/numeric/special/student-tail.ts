import { erfcx } from './erfcx.js';

/** Coefficients of (sinh(y/2)/(y/2))^(−½) in y²; made by coefficients.py. */
export const studentSeries = [
  1, -0.020833333333333332, 0.000390625, -7.879670965608466e-6, 1.6967665791721782e-7, -3.805064191721906e-9,
  8.748377596315407e-11, -2.044523359411974e-12, 4.833351797967704e-14, -1.152434101767386e-15, 2.76605204359937e-17,
  -6.67428195089166e-19, 1.61745507718158e-20, -3.93397792009138e-22,
] as const;

/** From this shape on the expansion below needs no more terms than the table has. */
const leastShape = 8;

/**
 * Upper tail of Student's t, for t ≥ 0: half the incomplete beta I_x(a, ½) with a = ν/2 and x = ν/(ν + t²) = exp(−L).
 *
 * `weight` is exp(−a·L), `ratio` is Γ(a + ½)/(Γ(a)·√π). Small x: the power series, whose terms are positive. Else the
 * shape is raised by the recurrence in a, each step a positive term, until the integral
 * ∫ exp(−T·y)·y^(−½)·(sinh(y/2)/(y/2))^(−½) dy from L, T = a − ¼, can be expanded in y²: its leading term is an error
 * function, and the cost is the same from 16 degrees of freedom to 10¹⁵.
 *
 * @source NIST DLMF 8.17.7 and 8.17.20; the expansion: A. R. DiDonato and A. H. Morris, ACM Trans. Math. Softw. 18 (1992) 360, section 9, with b = ½
 */
export function studentTail(a: number, logarithm: number, weight: number, ratio: number): number {
  const x = Math.exp(-logarithm);
  if (x < 0.3) return 0.5 * ratio * weight * powerSeries(a, x);
  let shape = a;
  let scale = ratio * weight;
  let sum = 0;
  const root = shape < leastShape ? Math.sqrt(-Math.expm1(-logarithm)) : 0;
  for (; shape < leastShape; shape += 1) {
    sum += (scale / shape) * root;
    scale *= (x * (shape + 0.5)) / shape;
  }
  return 0.5 * (sum + scale * expansion(shape - 0.25, logarithm, x));
}

/** Σ (½)ₙ/n! · xⁿ/(a + n). */
function powerSeries(a: number, x: number): number {
  let factor = 1;
  let sum = 1 / a;
  for (let n = 1; ; n++) {
    factor *= (x * (n - 0.5)) / n;
    const term = factor / (a + n);
    sum += term;
    if (term < 1e-17 * sum) return sum;
  }
}

/** The integral times exp(a·L), by the moments ∫ exp(−T(y − L))·y^(2n−½) dy, each from the one before. */
function expansion(decay: number, logarithm: number, x: number): number {
  const u = decay * logarithm;
  const inverse = 1 / decay;
  let moment = Math.sqrt(Math.PI / decay) * erfcx(Math.sqrt(u));
  let power = Math.sqrt(logarithm);
  let sum = moment;
  for (let n = 1; n < studentSeries.length; n++) {
    const order = 2 * n - 1.5;
    moment = (power + order * moment) * inverse;
    power *= logarithm;
    moment = (power + (order + 1) * moment) * inverse;
    power *= logarithm;
    const term = (studentSeries[n] as number) * moment;
    sum += term;
    if (Math.abs(term) < 1e-17 * sum) break;
  }
  return sum / Math.sqrt(Math.sqrt(x));
}
