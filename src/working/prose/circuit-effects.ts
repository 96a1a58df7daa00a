import type { Prose } from './prose.js';

/** Prose of the formulas for strays, leads, heat and sources, by formula identifier. */
export const circuitEffectsProse: Readonly<Record<string, Prose>> = {
  'inductive-part': {
    title: 'Reactance of a series inductance over the resistance',
    meanings: {
      y: 'reactance of the inductance over the resistance',
      f: 'frequency',
      L: 'inductance in series',
      R: 'resistance of the load',
    },
  },
  'capacitive-part': {
    title: 'Resistance over the reactance of a parallel capacitance',
    meanings: {
      x: 'resistance over the reactance of the capacitance',
      f: 'frequency',
      R: 'resistance of the load',
      C: 'capacitance across the load',
    },
  },
  'series-resistance': {
    title: 'Resistance that a load with a capacitance across it shows in series',
    meanings: {
      R_s: 'resistance in series',
      R: 'resistance of the load',
      x: 'resistance over the reactance of the capacitance',
    },
  },
  'series-reactance': {
    title: 'Reactance that a load with strays shows in series',
    meanings: {
      X_s: 'reactance in series, positive when inductive',
      R: 'resistance of the load',
      x: 'resistance over the reactance of the capacitance',
      y: 'reactance of the inductance over the resistance',
    },
  },
  'current-method-error': {
    title: 'Error of the power that is reckoned from the current',
    meanings: { e_I: 'reckoned over true power, less 1', x: 'resistance over the reactance of the capacitance' },
    note: 'An inductance in series does not matter here: the current is the same in it and in the resistance.',
  },
  'voltage-method-error': {
    title: 'Error of the power that is reckoned from the voltage',
    meanings: {
      e_V: 'reckoned over true power, less 1',
      x: 'resistance over the reactance of the capacitance',
      y: 'reactance of the inductance over the resistance',
    },
    note: 'A capacitance alone does not matter here: the voltage is the same across it and the resistance.',
  },
  'tangent-of-phase': {
    title: 'Tangent of the phase of a load with strays',
    meanings: {
      t: 'tangent of the phase',
      x: 'resistance over the reactance of the capacitance',
      y: 'reactance of the inductance over the resistance',
    },
  },
  'product-method-error': {
    title: 'Error of the product of voltage and current as a power',
    meanings: { e_S: 'apparent over true power, less 1', t: 'tangent of the phase' },
    note: 'It is the inverse of the power factor, less 1, without the difference of near values.',
  },
  'stray-inductance-at-phase': {
    title: 'Series inductance that turns a load to a phase',
    meanings: { L: 'inductance in series', R: 'resistance of the load', phi: 'phase', f: 'frequency' },
  },
  'stray-capacitance-at-phase': {
    title: 'Parallel capacitance that turns a load to a phase',
    meanings: { C: 'capacitance across the load', R: 'resistance of the load', phi: 'phase', f: 'frequency' },
  },
  'resonance-part': {
    title: 'Reactance of the inductance over that of the capacitance',
    meanings: {
      u: 'the one over the other, 1 at the resonance of the strays',
      f: 'frequency',
      L: 'inductance in series',
      C: 'capacitance across the load',
    },
  },
  'load-range-discriminant': {
    title: 'Discriminant of the equation for the loads at which the phase reaches a limit',
    meanings: {
      D: 'discriminant',
      phi: 'largest phase',
      u: 'reactance of the inductance over that of the capacitance',
    },
    note: 'The tangent of the phase is \u03c9L/R \u2212 \u03c9RC\u00b7(1 \u2212 u). Below 0 the phase is beyond the limit with any load.',
  },
  'lowest-load': {
    title: 'Lowest load whose phase stays within a limit',
    meanings: {
      R_l: 'lowest load',
      f: 'frequency',
      L: 'inductance in series',
      phi: 'largest phase',
      D: 'discriminant',
    },
  },
  'highest-load': {
    title: 'Highest load whose phase stays within a limit',
    meanings: {
      R_u: 'highest load',
      phi: 'largest phase',
      D: 'discriminant',
      f: 'frequency',
      C: 'capacitance across the load',
      u: 'reactance of the inductance over that of the capacitance',
    },
  },
  'straight-wire-surface': {
    title: 'Inductance of a straight wire with the current at its surface',
    meanings: { L: 'inductance', l: 'length', r: 'radius' },
    note: 'The return is far away. Radio-frequency current flows at the surface.',
  },
  'straight-wire-uniform': {
    title: 'Inductance of a straight wire with the current all over its section',
    meanings: { L: 'inductance', l: 'length', r: 'radius' },
  },
  'two-wire-inductance': {
    title: 'Inductance of two parallel wires by length',
    meanings: { L_l: 'inductance by length', D: 'distance of the axes', d: 'diameter of each wire' },
    note: 'The inverse hyperbolic cosine of D/d, in a form that keeps its digits where the wires nearly touch.',
  },
  'two-wire-capacitance': {
    title: 'Capacitance of two parallel wires by length',
    meanings: {
      C_l: 'capacitance by length',
      epsilon_r: 'relative permittivity',
      D: 'distance of the axes',
      d: 'diameter of each wire',
    },
    note: 'The inverse hyperbolic cosine of D/d, in a form that keeps its digits where the wires nearly touch.',
  },
  'coaxial-inductance': {
    title: 'Inductance of a coaxial line by length',
    meanings: {
      L_l: 'inductance by length',
      d_o: 'inner diameter of the outer conductor',
      d_i: 'diameter of the inner conductor',
    },
    note: 'The logarithm of d_o/d_i, in a form that keeps its digits where the gap is thin.',
  },
  'coaxial-capacitance': {
    title: 'Capacitance of a coaxial line by length',
    meanings: {
      C_l: 'capacitance by length',
      epsilon_r: 'relative permittivity',
      d_o: 'inner diameter of the outer conductor',
      d_i: 'diameter of the inner conductor',
    },
    note: 'The logarithm of d_o/d_i, in a form that keeps its digits where the gap is thin.',
  },
  'skin-depth': {
    title: 'Skin depth',
    meanings: {
      delta: 'depth in which the current density falls to 1/e',
      rho: 'resistivity',
      f: 'frequency',
      mu_r: 'relative permeability',
    },
  },
  'round-wire-ratio': {
    title: 'Resistance of a round wire at radio frequency over that for direct current',
    meanings: {
      k_R: 'the one over the other',
      r: 'radius',
      delta: 'skin depth',
      B_re: 'real part of the quotient I\u2080/I\u2081 of modified Bessel functions of (1 + j)r/\u03b4',
      B_im: 'imaginary part of the same quotient',
    },
    note: 'The quotient has no closed form; it is reckoned by its continued fraction. For a wire of many skin depths it is 1, and the ratio is r/2\u03b4 + 1/4.',
  },
  'round-wire-resistance': {
    title: 'Resistance of a round wire',
    meanings: {
      R: 'resistance',
      k_R: 'resistance at radio frequency over that for direct current; 1 for direct current',
      rho: 'resistivity',
      l: 'length',
      r: 'radius',
    },
  },
  'solenoid-inductance': {
    title: 'Inductance of a coil of one layer',
    meanings: {
      L: 'inductance',
      N: 'number of turns',
      d: 'mean diameter of the turns',
      l: 'length of the winding',
      D_e: '(K \u2212 E)/k\u00b2 of the complete elliptic integrals of the modulus k = d/\u221a(d\u00b2 + l\u00b2)',
      E_k: 'E \u2212 k of the same modulus',
    },
    note: 'As a current sheet: for turns that lie close. The integrals have no closed form; they are reckoned by the arithmetic\u2013geometric mean, and tables have them.',
  },
  'resistance-at-temperature': {
    title: 'Resistance of a load that has warmed',
    meanings: {
      R_T: 'resistance when warm',
      R: 'resistance at the reference temperature',
      alpha: 'temperature coefficient',
      T: 'temperature above the reference',
    },
  },
  'final-rise': {
    title: 'Temperature rise in the long run',
    meanings: { T_f: 'rise in the long run', P: 'power in the load', R_th: 'thermal resistance' },
  },
  'temperature-rise': {
    title: 'Temperature rise at the end of an activation',
    meanings: {
      T_e: 'rise at the end',
      T_0: 'rise at the beginning',
      T_f: 'rise in the long run',
      t: 'length of the activation',
      tau: 'thermal time constant',
    },
  },
  'dissipated-energy': {
    title: 'Energy turned into heat',
    meanings: { E_h: 'energy turned into heat', P: 'power in the load', t: 'length of the activation' },
  },
  'permitted-activation': {
    title: 'Longest activation into a load',
    meanings: {
      t_m: 'longest activation',
      tau: 'thermal time constant',
      T_m: 'highest permitted rise',
      T_0: 'rise at the beginning',
      T_f: 'rise in the long run',
    },
  },
  'duty-rise': {
    title: 'Temperature rise at the end of an activation, after many activations and pauses',
    meanings: {
      T_d: 'rise at the end of an activation',
      T_f: 'rise in the long run',
      t: 'length of each activation',
      t_p: 'length of each pause',
      tau: 'thermal time constant',
    },
  },
  'start-rise': {
    title: 'Rise from which a load may be activated again',
    meanings: {
      T_s: 'rise from which the load may be activated again',
      T_m: 'highest permitted rise',
      T_f: 'rise in the long run',
      t: 'length of the activation',
      tau: 'thermal time constant',
    },
  },
  'required-pause': {
    title: 'Shortest pause between activations',
    meanings: {
      t_p: 'shortest pause',
      tau: 'thermal time constant',
      T_m: 'highest permitted rise',
      T_s: 'rise from which the load may be activated again',
    },
  },
  'pause-from-rating': {
    title: 'Pause after which the mean power is the rating',
    meanings: { t_p: 'pause', t: 'length of the activation', P: 'power in the load', P_r: 'rated power of the load' },
    note: 'For activations that are short beside the thermal time constant of the load.',
  },
  'heating-factor': {
    title: 'Heating factor of a current through a neutral electrode',
    meanings: { H: 'heating factor', I: 'rms current', t: 'length of the activation' },
  },
  'source-resistance': {
    title: 'Resistance of a source from two loads',
    meanings: {
      R_s: 'resistance of the source',
      V_1: 'voltage at the first load',
      V_2: 'voltage at the second load',
      R_1: 'first load',
      R_2: 'second load',
    },
    note: 'A generator that keeps its current or its power is no such source.',
  },
  'open-circuit-voltage': {
    title: 'Voltage of a source without a load',
    meanings: {
      E: 'voltage without a load',
      V_1: 'voltage at the first load',
      R_1: 'first load',
      R_s: 'resistance of the source',
    },
  },
  'power-from-source': {
    title: 'Power that a source gives to a load',
    meanings: {
      P: 'power in the load',
      E: 'voltage without a load',
      R: 'resistance of the load',
      R_s: 'resistance of the source',
    },
  },
  'available-power': {
    title: 'Highest power that a source can give',
    meanings: {
      P_a: "power in a load of the source's own resistance",
      E: 'voltage without a load',
      R_s: 'resistance of the source',
    },
  },
  'accessory-factor': {
    title: 'Least crest factor with which the rating of an accessory alone decides',
    meanings: {
      y: 'least crest factor',
      V_p: 'highest peak voltage of the mode',
      V_o: 'offset of the rule',
      V_d: 'divisor of the rule',
      y_m: 'highest value of the rule',
    },
    note: 'From memory: check your copy of the standard.',
  },
  'needed-rating': {
    title: 'Least rating of a part that meets a peak voltage',
    meanings: {
      V_n: 'least rating of the part, peak',
      k: 'factor of the rule for this part',
      V_p: 'highest expected peak voltage',
    },
    note: 'From memory: check your copy of the standard.',
  },
};
