import type { Prose } from './prose.js';

const meanings = {
  R: 'resistance that is set or connected',
  R_s: 'resistance of lead and fixture in series',
  R_seen: 'resistance that the monitor sees',
  b: 'baseline',
  f: 'floor of the baseline; 0 where there is none',
  r: 'rise over the baseline that alarms',
  R_release: 'resistance at which the alarm ends',
  T: 'limit of the accepted resistance',
  h: 'hysteresis',
};

const blur = {
  R_s: 'resistance of lead and fixture in series',
  a: 'fixed part of what box, lead and fixture may be off',
  q: 'part of the value that the box may be off',
};

/** Prose of the formulas of monitor/, by formula identifier. */
export const monitorProse: Readonly<Record<string, Prose>> = {
  'monitor-seen': {
    title: 'Resistance that the monitor sees',
    meanings: { R_seen: meanings.R_seen, R: meanings.R, R_s: meanings.R_s },
  },
  'monitor-rise-limit': {
    title: 'Limit of a rise over the baseline',
    meanings: { R_rise: 'highest accepted resistance', b: meanings.b, f: meanings.f, r: meanings.r },
  },
  'monitor-rise-release': {
    title: 'Resistance at which an alarm of a rise ends',
    meanings: {
      R_release: meanings.R_release,
      b: meanings.b,
      f: meanings.f,
      r: meanings.r,
      h: 'hysteresis, as a fraction of the baseline; 0 where none is stated',
    },
  },
  'monitor-upper-release': {
    title: 'Resistance at which an alarm of the upper limit ends',
    meanings: { R_release: meanings.R_release, T: 'upper limit', h: `${meanings.h}; 0 where none is stated` },
  },
  'monitor-lower-release': {
    title: 'Resistance at which an alarm of the lower limit ends',
    meanings: { R_release: meanings.R_release, T: 'lower limit', h: `${meanings.h}; 0 where none is stated` },
  },
  'monitor-alarm-time': {
    title: 'Time at which an alarm begins',
    meanings: {
      t_alarm: 'beginning of the alarm',
      t: 'time at which the limit is passed',
      d: 'alarm delay; 0 where none is stated',
    },
    note: 'When the resistance stays outside without a break.',
  },
  'monitor-tracked-baseline': {
    title: 'Baseline that follows with a time constant',
    meanings: {
      b: 'baseline after the time',
      R_seen: meanings.R_seen,
      b_0: 'baseline before',
      t: 'time for which the resistance holds',
      tau: 'time constant',
    },
    note: 'Only while the resistance is accepted and no alarm stands.',
  },
  'monitor-display-error': {
    title: 'Error of the resistance display',
    meanings: { e: 'error', y: 'displayed resistance', x: 'resistance that was set' },
  },
  'monitor-display-residual': {
    title: 'Rest of a displayed resistance after the straight line',
    meanings: {
      v: 'residual',
      y: 'displayed resistance',
      a: 'offset of the line',
      g: 'gain: slope of the line',
      x: 'resistance that was set',
    },
    note: 'Offset and gain make the sum of squares of the residuals least.',
  },
  'monitor-set-below': {
    title: 'Largest set value that the monitor surely sees at or below a resistance',
    meanings: { R_set: 'value to set', T: 'resistance that the monitor sees', ...blur },
  },
  'monitor-set-above': {
    title: 'Smallest set value that the monitor surely sees at or above a resistance',
    meanings: { R_set: 'value to set', T: 'resistance that the monitor sees', ...blur },
  },
  'monitor-seen-least': {
    title: 'Least that the monitor sees of a set value',
    meanings: { R_least: meanings.R_seen, R: 'value that is set', ...blur },
  },
  'monitor-seen-most': {
    title: 'Most that the monitor sees of a set value',
    meanings: { R_most: meanings.R_seen, R: 'value that is set', ...blur },
  },
  'monitor-trip': {
    title: 'Trip or release point of one sweep',
    meanings: {
      R_trip: 'trip or release point, as the monitor sees it',
      R_1: 'last value before the change',
      R_2: 'first value after the change',
      R_s: meanings.R_s,
    },
    note: 'The middle of the step: the point lies anywhere in it.',
  },
  'monitor-trip-mean': {
    title: 'Trip or release point over several sweeps',
    meanings: { R_trip: 'mean of the points', S: 'sum of the points', n: 'number of sweeps' },
  },
  'monitor-step-uncertainty': {
    title: 'Standard uncertainty of a point that lies anywhere in a step',
    meanings: { u_d: 'standard uncertainty', d: 'width of the step' },
  },
  'monitor-half-width-uncertainty': {
    title: 'Standard uncertainty of a value that lies anywhere inside limits',
    meanings: { u_a: 'standard uncertainty', a: 'limits to either side' },
  },
  'monitor-trip-uncertainty': {
    title: 'Standard uncertainty of a trip or release point',
    meanings: {
      u: 'combined standard uncertainty',
      u_d: 'that of the step',
      u_b: 'that of the box',
      u_s: 'that of lead and fixture',
      u_0: 'that of the limit of a rise, because of the baseline; else 0',
      u_m: 'that of the mean over the sweeps; 0 of a single one',
    },
    note: 'Several sweeps over the same values share their step: its part is not divided by their number.',
  },
  'monitor-trip-degrees': {
    title: 'Effective degrees of freedom of a trip or release point',
    meanings: {
      nu: 'effective degrees of freedom',
      n: 'number of sweeps',
      u: 'combined standard uncertainty',
      u_m: 'that of the mean over the sweeps',
    },
    note: 'Step, box, lead and fixture have infinitely many.',
  },
  'monitor-trip-expanded': {
    title: 'Expanded uncertainty of a trip point, a release point or a hysteresis',
    meanings: { U: 'expanded uncertainty', k: 'coverage factor', u: 'standard uncertainty' },
  },
  'monitor-hysteresis': {
    title: 'Hysteresis between alarm and release',
    meanings: { H: 'hysteresis', R_1: 'the higher of trip and release', R_2: 'the lower of the two' },
    note: 'Negative where a monitor releases beyond the point at which it trips.',
  },
  'monitor-hysteresis-uncertainty': {
    title: 'Standard uncertainty of the hysteresis',
    meanings: {
      u_H: 'standard uncertainty',
      u_1: 'that of step and mean of the trip point',
      u_2: 'that of step and mean of the release point',
      u_b: 'that of the part of the value by which the box is off',
    },
    note: 'Fixed errors of box, lead and fixture are the same in both points and fall out.',
  },
  'monitor-contact-resistance': {
    title: 'Resistance of a contact that has lost a part of its area',
    meanings: { R_a: 'contact resistance', R: 'that of the whole foil', a: 'part of the foil in contact' },
  },
  'monitor-contact-capacitance': {
    title: 'Capacitance of a contact that has lost a part of its area',
    meanings: { C_a: 'contact capacitance', C: 'that of the whole foil', a: 'part of the foil in contact' },
  },
  'monitor-pad-resistance': {
    title: 'Resistance of a split electrode',
    meanings: {
      R: 'resistance in series',
      R_1: 'that of the contact of the first foil',
      R_2: 'that of the contact of the second foil',
      R_t: 'that of the tissue between the foils, with the lead',
    },
  },
  'monitor-pad-reactance': {
    title: 'Reactance of a split electrode',
    meanings: {
      X: 'reactance in series, negative when capacitive',
      X_1: 'that of the contact of the first foil',
      X_2: 'that of the contact of the second foil',
    },
  },
  'monitor-area-factor': {
    title: 'Factor by which a contact grows until the monitor sees a resistance',
    meanings: {
      q: 'factor of the impedance of the contact that loses area',
      T: 'what the monitor then sees',
      R_a: 'resistance of the rest of the circuit',
      X_a: 'reactance of the rest of the circuit; 0 where the monitor reads the resistive part',
      R_b: 'resistance of the contact that loses area, as it is now',
      X_b: 'reactance of that contact; 0 where the monitor reads the resistive part',
    },
    note: 'The positive root of |Z_a + q Z_b| = T, in the form that loses no digits.',
  },
  'monitor-remaining-area': {
    title: 'Area that is left of a contact',
    meanings: { a: 'part of the area in contact now', q: 'factor by which the impedance of the contact grows' },
  },
};
