/** Real and imaginary part of a number relative to the load. */
export interface Parts {
  readonly re: number;
  readonly im: number;
}

/** A pair of leads, each part relative to the resistance that the load shows in series. */
export interface RelativeLeads {
  /** Reactance of the leads over that resistance. */
  readonly g: number;
  /** Resistance of the leads over that resistance. */
  readonly r: number;
  /** That resistance over the reactance of the capacitance between the leads. */
  readonly h: number;
}

/** Leads with what stands between their two ends: V₁ = (1 + a)·V₂ + Z·s_b·I₂ and I₁ = Y·s_c·V₂ + (1 + a)·I₂. */
export interface TwoPort extends RelativeLeads {
  /** Cosine of the angle less 1. */
  readonly rest: Parts;
  /** What multiplies the series impedance. */
  readonly seriesShare: Parts;
  /** What multiplies the shunt admittance. */
  readonly shuntShare: Parts;
  /** Attenuation and phase of the line; absent where it is reckoned as lumped. */
  readonly angle?: { readonly alpha: number; readonly beta: number };
}

/** Attenuation and phase: the root of (r + jg)·jh. */
export function lineAngle({ g, r, h }: RelativeLeads): { readonly alpha: number; readonly beta: number } {
  const beta = Math.sqrt((h * (Math.hypot(g, r) + g)) / 2);
  return { alpha: (r * h) / (2 * beta), beta };
}

/** sinh(α + jβ)/(α + jβ); what its imaginary part loses of its own digits is below the last digit of the whole. */
export function lineShare(alpha: number, beta: number): Parts {
  const [sinh, cosh, sin, cos] = [Math.sinh(alpha), Math.cosh(alpha), Math.sin(beta), Math.cos(beta)];
  const square = alpha * alpha + beta * beta;
  return {
    re: (alpha * sinh * cos + beta * cosh * sin) / square,
    im: (alpha * cosh * sin - beta * sinh * cos) / square,
  };
}

/** cosh(α + jβ) − 1, without the difference of near values. */
export function lineRest(alpha: number, beta: number): Parts {
  const [stretched, turned] = [Math.sinh(alpha / 2), Math.sin(beta / 2)];
  return {
    re: 2 * stretched * stretched * Math.cos(beta) - 2 * turned * turned,
    im: Math.sinh(alpha) * Math.sin(beta),
  };
}

/** A transmission line; for an angle so small that both forms are the same to the last digit, the lumped one. */
export function lineTwoPort(leads: RelativeLeads): TwoPort {
  if (leads.h * Math.hypot(leads.g, leads.r) < 1e-16) return lumpedTwoPort(leads);
  const angle = lineAngle(leads);
  const share = lineShare(angle.alpha, angle.beta);
  return { ...leads, rest: lineRest(angle.alpha, angle.beta), seriesShare: share, shuntShare: share, angle };
}

/** All inductance in series, half of the capacitance at each end. */
export function lumpedTwoPort(leads: RelativeLeads): TwoPort {
  const { g, r, h } = leads;
  return {
    ...leads,
    rest: { re: (-g * h) / 2, im: (r * h) / 2 },
    seriesShare: { re: 1, im: 0 },
    shuntShare: { re: 1 - (g * h) / 4, im: (r * h) / 4 },
  };
}

/** What the leads add to the voltage at the near end, over the current in the load times its resistance in series. */
export function addedVoltage({ rest, seriesShare: s, g, r }: TwoPort, t: number): Parts {
  return {
    re: rest.re - rest.im * t + (r * s.re - g * s.im),
    im: rest.im + rest.re * t + (r * s.im + g * s.re),
  };
}

/** What the leads add to the current at the near end, over the current in the load: what bypasses it. */
export function addedCurrent({ rest, shuntShare: s, h }: TwoPort, t: number): Parts {
  return {
    re: rest.re - h * (s.im + s.re * t),
    im: rest.im + h * (s.re - s.im * t),
  };
}
