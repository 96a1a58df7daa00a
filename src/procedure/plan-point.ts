import { type Band, contains, convertBand } from '../band/index.js';
import { CalculationError, requireAtLeast, type Warning } from '../checks/index.js';
import { convertQuantity, peakCurrent, peakVoltage, type Quantity } from '../circuit/index.js';
import { formatQuantity } from '../units/index.js';
import {
  currentFromPowerFormula,
  peakCurrentFormula,
  peakVoltageFormula,
  voltageFromPowerFormula,
} from '../working/formulas/circuit.js';
import { type Step, step } from '../working/index.js';
import type { Bench, BenchLoad, InstrumentRange, Lead } from './bench.js';
import { benchEffect } from './bench-effect.js';
import { chooseLoad, defaultNegligibleDifference } from './choose-load.js';
import type { WantedPoint } from './choose-points.js';
import { type CurveSlope, curveSlope } from './curve-slope.js';
import { type ExpectedAtPoint, expectedAtPoint } from './expected-at-point.js';
import { checkFeasibility, chooseRange, ranges } from './feasibility.js';
import { heatedActivation } from './heated-activation.js';
import { judgeEffect, uncorrectedEffect } from './judge-effect.js';
import type { OutputModel } from './output-model.js';
import { deviationText, percentText } from './percent-text.js';
import type { Activation, BenchEffect, Expected, PlanOptions, PlanPoint, PointLoad } from './plan.js';
import { type PointLimits, pointLimits } from './point-limits.js';
import { type MeasuredPoint, pointMeasurement } from './point-measurement.js';
import { nearestPreferredLoad } from './preferred-loads.js';
import { bandText, quantityText, roundedText } from './quantity-text.js';
import { settingText } from './setting-text.js';
import type { Output, StatedTolerance } from './specification.js';
import { correctedValue } from './steps.js';

/** What all points of a plan share. */
export interface PointContext {
  readonly bench: Bench;
  readonly reads: Quantity;
  readonly options: Required<PlanOptions>;
  /** Accuracy rule of the standard, when it is chosen: fractions of power. */
  readonly accuracy?: { readonly below: number; readonly above: number; readonly fromFraction: number };
}

/** A point before it has its number, which is 0 until the order of work is known. */
export type PointDraft = { -readonly [K in keyof PlanPoint]: PlanPoint[K] };

/** Works out one point: load, expected values, limits, feasibility, activation, working. */
export function planPoint(wanted: WantedPoint, model: OutputModel, context: PointContext): PointDraft {
  const { bench, reads } = context;
  const { output } = wanted;
  const lead = bench.leads?.find((candidate) => candidate.circuits.includes(output.circuit));
  // One object that is filled in: a plan may have ten thousand points, and spreading costs more than the mathematics.
  const point: PointDraft = {
    id: pointId(wanted),
    number: 0,
    output: output.id,
    outputName: output.name,
    connection: output.connection,
    setting: wanted.setting,
    settingText: settingText(wanted.setting),
    wantedLoad: wanted.load,
    reads,
    limits: {},
    limitsFrom: 'none',
    feasible: false,
    feasibility: [],
    activation: {},
    warnings: [],
    working: [],
  };
  if (lead !== undefined) point.lead = lead.name;
  const refused = (warning: Warning): PointDraft => {
    point.warnings = [warning];
    return point;
  };

  const roughPower = wanted.statedPower ?? output.ratedPower;
  const chosen = chooseLoad(bench, wanted.load, roughPower);
  if (chosen === undefined) {
    return refused({
      code: 'load-not-on-bench',
      message: `No load of the bench is near enough to ${ohms(wanted.load)}; in the E24 series the nearest is ${ohms(nearestPreferredLoad(wanted.load, 'E24'))}.`,
    });
  }
  const { load } = chosen;
  const negligible = bench.substitution?.negligible ?? defaultNegligibleDifference;
  const expected = expectedAtPoint(wanted, model, load.resistance, negligible);
  if (typeof expected === 'string') {
    return refused({ code: 'setting-without-power', message: `Nothing to expect here: ${expected}.` });
  }

  const warnings: Warning[] = [];
  const pointLoad: PointLoad = {
    id: load.id,
    resistance: load.resistance,
    difference: chosen.difference,
    powerChange: (expected.power - expected.wantedPower) / expected.wantedPower,
  };
  warnings.push(...substitutionWarnings(wanted.load, pointLoad, expected, reads));
  if (expected.from === 'middle of the published row') {
    warnings.push({
      code: 'nominal-from-limits',
      message: 'The row states no expected value: margin 0 is the middle of its limits.',
    });
  }
  // Only strays and budgets ask for the slope of the curve.
  let slope: CurveSlope | undefined;
  const raw = benchEffect(bench, output, load, lead, slopeHere);
  let values = expectedValues(expected, load.resistance, output);
  let nominal = values[reads];
  const ruleTolerance = accuracyTolerance(context, output, expected.power);

  // The range follows from the limits and the limits are rounded to the range: a first pass without rounding to a
  // coarser range than needed settles it, because a larger range is only ever chosen for a larger limit.
  const finest = ranges(bench, reads)[0] as InstrumentRange;
  let range: InstrumentRange | undefined;
  let limits: PointLimits;
  let effect: BenchEffect | undefined;
  try {
    let draft = pointLimits(limitInputs(finest.resolution));
    if (raw !== undefined) {
      effect = judgeEffect(raw, reads, nominal, draft.limits, context.options.negligibleEffect);
      if (effect.applied) {
        values = withEffect(values, effect);
        nominal *= effect.ratios[reads];
        draft = pointLimits(limitInputs(finest.resolution));
      }
    }
    range = chooseRange(bench, reads, draft.limits.upper ?? nominal);
    limits = range === undefined || range === finest ? draft : pointLimits(limitInputs(range.resolution));
  } catch (error) {
    if (!(error instanceof CalculationError && error.code === 'band-empty')) throw error;
    return refused({
      code: 'band-empty',
      message:
        'No reading of the instrument lies between the limits: its resolution is too coarse here, or the limits contradict each other.',
    });
  }
  warnings.push(...limits.warnings);
  if (!contains(limits.limits, nominal)) {
    warnings.push({
      code: 'nominal-outside-limits',
      message: `The expected ${roundedText(nominal, reads)} lies outside the limits, ${bandText(limits.limits, reads)}: no margin can be given.`,
    });
  }
  if (limits.from === 'none') {
    warnings.push({ code: 'no-limits', message: noLimitsText(context, output, expected.power) });
  }

  const measured = range === undefined ? undefined : measurementAt(range);
  warnings.push(...(measured?.warnings ?? []), ...unknownUncertainty());

  const worst = worstCase(limits.limits, nominal, reads, load.resistance, output, effect);
  const feasibility = checkFeasibility(bench, output, load, lead, reads, worst);
  warnings.push(...peakWarnings(bench, output, load, lead, values));
  const failed = feasibility.filter((check) => !check.ok);
  if (failed.length > 0) {
    const reasons = failed.map((check) => `${check.check}: ${check.message}`).join('; ');
    warnings.push({ code: 'not-feasible', message: `Do not activate as planned. ${reasons}.` });
  }
  point.load = pointLoad;
  point.expected = values;
  if (range !== undefined) point.range = { maximum: range.maximum, resolution: range.resolution };
  point.limits = limits.limits;
  point.limitsFrom = limits.from;
  if (limits.published !== undefined) point.publishedLimits = limits.published;
  if (limits.derived !== undefined) point.derivedLimits = limits.derived;
  point.nominal = nominal;
  if (effect !== undefined) point.effect = effect;
  point.feasible = failed.length === 0;
  point.feasibility = feasibility;
  point.activation = activation(output, load, worst.power);
  if (measured !== undefined) point.measurement = measured.measurement;
  point.warnings = warnings;
  // Limits that are derived from the expected power carry the steps of current and voltage themselves.
  const ideal = expectedValues(expected, load.resistance, output);
  const ohmic = limits.derived === undefined ? ohmicSteps(ideal, load.resistance) : [];
  point.working = expected.working.concat(
    ohmic,
    raw?.working ?? [],
    effect?.applied === true ? effectSteps(ideal, effect) : [],
    limits.working,
    measured?.working ?? [],
    peakSteps(ideal, load.resistance, output, model.waveform),
  );
  return point;

  function slopeHere(): CurveSlope {
    slope ??= curveSlope(model, wanted.setting, load.resistance);
    return slope;
  }

  function measurementAt(chosenRange: InstrumentRange): MeasuredPoint | undefined {
    if (bench.instrument.reads.every((f) => f.quantity !== reads || f.accuracy === undefined)) return undefined;
    const conditions = {
      bench,
      output,
      load,
      reads,
      range: chosenRange,
      slope: slopeHere(),
      ...uncorrectedEffect(load, reads, effect),
    };
    return pointMeasurement(conditions, nominal, limits.limits, context.options.decisionRule);
  }

  function unknownUncertainty(): readonly Warning[] {
    if (context.options.decisionRule.kind === 'simple-acceptance' || measured !== undefined) return [];
    const message = 'Nothing is stated of the uncertainty here: the decision rule cannot be applied.';
    return [{ code: 'rule-not-applicable', message }];
  }

  function limitInputs(resolution: number): Parameters<typeof pointLimits>[0] {
    return {
      wanted,
      expected: expected as ExpectedAtPoint,
      load: load.resistance,
      reads,
      resolution,
      options: context.options,
      ...(ruleTolerance === undefined ? {} : { ruleTolerance }),
      ...(effect?.applied === true ? { ratio: effect.ratios[reads] } : {}),
    };
  }
}

function pointId({ output, setting, load }: WantedPoint): string {
  return `${output.id}/${typeof setting === 'number' ? `${setting}W` : setting}/${load}ohm`;
}

function ohms(value: number): string {
  return formatQuantity(value, 'ohm');
}

function substitutionWarnings(
  wanted: number,
  load: PointLoad,
  expected: ExpectedAtPoint,
  reads: Quantity,
): readonly Warning[] {
  if (load.difference === 0) return [];
  if (expected.carry.assumedUnchanged) {
    return [
      {
        code: 'power-assumed-unchanged',
        message: `${ohms(load.resistance)} stands in for ${ohms(wanted)}; no curve says what that changes, and the power is taken as unchanged.`,
      },
    ];
  }
  const before = convertQuantity(expected.wantedPower, { from: 'power', to: reads, load: wanted });
  const after = convertQuantity(expected.power, { from: 'power', to: reads, load: load.resistance });
  return [
    {
      code: 'load-substituted',
      message:
        `${ohms(load.resistance)} stands in for ${ohms(wanted)}: expected ${roundedText(after, reads)} ` +
        `in place of ${roundedText(before, reads)}; the power changes by ${percent(load.powerChange)}.`,
    },
  ];
}

function percent(fraction: number): string {
  if (Math.abs(fraction) < 0.0005) return 'less than 0.1 %';
  return deviationText(fraction);
}

function expectedValues(expected: ExpectedAtPoint, load: number, output: Output): Expected {
  const { power, from } = expected;
  const current = convertQuantity(power, { from: 'power', to: 'current', load });
  const voltage = convertQuantity(power, { from: 'power', to: 'voltage', load });
  if (output.crestFactor === undefined) return { power, current, voltage, from };
  const given = { power, load, crestFactor: requireAtLeast(output.crestFactor, 1, 'crestFactor') };
  return { power, current, voltage, peakVoltage: peakVoltage(given), peakCurrent: peakCurrent(given), from };
}

/** Expected values with the strays of load and leads. */
function withEffect(values: Expected, { ratios }: BenchEffect): Expected {
  return {
    ...values,
    current: values.current * ratios.current,
    voltage: values.voltage * ratios.voltage,
    ...(values.peakVoltage === undefined ? {} : { peakVoltage: values.peakVoltage * ratios.voltage }),
    ...(values.peakCurrent === undefined ? {} : { peakCurrent: values.peakCurrent * ratios.current }),
  };
}

function effectSteps({ current, voltage, peakVoltage: V, peakCurrent: I }: Expected, { ratios }: BenchEffect): Step[] {
  return [
    correctedValue('expected current with the strays', ratios.current, current, 'A'),
    correctedValue('expected voltage with the strays', ratios.voltage, voltage, 'V'),
    ...(V === undefined ? [] : [correctedValue('expected peak voltage with the strays', ratios.voltage, V, 'V')]),
    ...(I === undefined ? [] : [correctedValue('expected peak current with the strays', ratios.current, I, 'A')]),
  ];
}

function ohmicSteps({ power, current, voltage }: Expected, load: number): Step[] {
  return [
    step(currentFromPowerFormula, 'expected current', { P: power, R: load }, current),
    step(voltageFromPowerFormula, 'expected voltage', { P: power, R: load }, voltage),
  ];
}

function peakSteps(values: Expected, load: number, output: Output, crest: readonly Step[]): Step[] {
  if (values.peakVoltage === undefined || values.peakCurrent === undefined || output.crestFactor === undefined)
    return [];
  const inputs = { CF: output.crestFactor, P: values.power, R: load };
  return [
    ...crest,
    step(peakVoltageFormula, 'expected peak voltage', inputs, values.peakVoltage),
    step(peakCurrentFormula, 'expected peak current', inputs, values.peakCurrent),
  ];
}

/** Tolerance of the accuracy rule at a point: none below the stated fraction of the rated power. */
function accuracyTolerance(context: PointContext, output: Output, power: number): StatedTolerance | undefined {
  const rule = context.accuracy;
  if (rule === undefined || power <= rule.fromFraction * output.ratedPower) return undefined;
  return { in: 'power', relative: { below: rule.below, above: rule.above } };
}

function noLimitsText(context: PointContext, output: Output, power: number): string {
  if (context.accuracy === undefined) return 'Neither a row nor a tolerance sets limits here.';
  const share = `${percentText(context.accuracy.fromFraction)} of the rated power, ${quantityText(output.ratedPower, 'power')}`;
  return `${roundedText(power, 'power')} is not above ${share}: the standard sets no limit here, and the sheet states none.`;
}

function worstCase(
  limits: Band,
  nominal: number,
  reads: Quantity,
  load: number,
  output: Output,
  effect: BenchEffect | undefined,
): { reading: number; power: number; peakVoltage?: number } {
  const reading = Math.max(limits.upper ?? nominal, nominal);
  const ideal = effect?.applied === true ? reading / effect.ratios[reads] : reading;
  const power = convertBand({ upper: ideal }, { from: reads, to: 'power', load }).upper as number;
  if (output.crestFactor === undefined) return { reading, power };
  const ratio = effect?.applied === true ? effect.ratios.voltage : 1;
  return { reading, power, peakVoltage: ratio * peakVoltage({ power, load, crestFactor: output.crestFactor }) };
}

function peakWarnings(
  bench: Bench,
  output: Output,
  load: BenchLoad,
  lead: Lead | undefined,
  values: Expected,
): readonly Warning[] {
  const warnings: Warning[] = [];
  const { instrument } = bench;
  const limited = [
    instrument.maximumPeakVoltage,
    instrument.maximumCrestFactor,
    load.maximumPeakVoltage,
    lead?.maximumPeakVoltage,
  ];
  if (output.crestFactor === undefined && limited.some((limit) => limit !== undefined)) {
    warnings.push({
      code: 'crest-factor-missing',
      message: 'The sheet states no crest factor: peak voltage and crest factor were not checked against the bench.',
    });
  }
  const { peakVoltage: peak } = values;
  if (peak !== undefined && output.maximumPeakVoltage !== undefined && peak > output.maximumPeakVoltage) {
    const stated = formatQuantity(output.maximumPeakVoltage, 'V');
    warnings.push({
      code: 'peak-above-stated',
      message: `The expected peak, ${roundedText(peak, 'voltage')}, is above the stated maximum of ${stated}.`,
    });
  }
  return warnings;
}

function activation(output: Output, load: BenchLoad, power: number): Activation {
  const overload = power > load.powerRating ? load.overload : undefined;
  const on = [output.duty?.on, overload?.on].filter((t) => t !== undefined);
  const off = [output.duty?.off, overload?.off].filter((t) => t !== undefined);
  const result: { longest?: number; pause?: number } = {};
  if (on.length > 0) result.longest = Math.min(...on);
  if (off.length > 0) result.pause = Math.max(...off);
  return load.heat === undefined ? result : heatedActivation(load.heat, power, result);
}
