import { roundBand } from '../band/index.js';
import { atPath, type Warning } from '../checks/index.js';
import type { Quantity } from '../circuit/index.js';
import {
  assessLeakage,
  type LeakageCondition,
  type LeakageMeasurement,
  leakageConditions,
  leakageLimit,
} from '../leakage/index.js';
import { type ExpandedUncertainty, expandedUncertainty } from '../uncertainty/index.js';
import { formatQuantity } from '../units/index.js';
import type { Bench, BenchLoad } from './bench.js';
import { chooseLoad } from './choose-load.js';
import type { PlanDecisionRule } from './decision-rule.js';
import { chooseRange } from './feasibility.js';
import { leakageInstruction } from './leakage-instruction.js';
import { withWaveform } from './output-waveform.js';
import type { PlanLeakage } from './plan.js';
import { pointAcceptance } from './point-acceptance.js';
import { quantityText } from './quantity-text.js';
import { settingText } from './setting-text.js';
import type { LeakageTest, Output, Specification } from './specification.js';

/** The leakage measurements of a specification at this bench. */
export function planLeakage(
  specification: Specification,
  bench: Bench,
  rule: PlanDecisionRule,
): readonly PlanLeakage[] {
  const planned = (specification.leakage ?? []).flatMap((test, i) =>
    atPath(`leakage[${i}]`, () => {
      const output = withWaveform(specification.outputs.find(({ id }) => id === test.output) as Output);
      return leakageConditions(test.arrangement, test.loading).map((condition) =>
        planOne(test, condition, output, bench, rule),
      );
    }),
  );
  return planned.map((row, i) => ({ ...row, number: i + 1 }));
}

/** One electrode in one state of the output: none stands for another. */
function planOne(
  test: LeakageTest,
  condition: LeakageCondition,
  output: Output,
  bench: Bench,
  rule: PlanDecisionRule,
): PlanLeakage {
  const { arrangement, measuredAt, connection, setting } = test;
  const { working, current, measuringResistance, basis, power, ...limit } = leakageLimit({
    arrangement,
    measuredAt,
    ratedPower: output.ratedPower,
    ...(test.limit === undefined ? {} : { limit: test.limit }),
  });
  const load = chooseLoad(bench, measuringResistance, power)?.load;
  const between = loadBetween(condition, output, bench, load);
  const noLoad: Warning = {
    code: 'load-not-on-bench',
    message: `No load of the bench is near enough to the rated load of ${formatQuantity(output.ratedLoad, 'ohm')} that is connected meanwhile.`,
  };
  const isMissing = condition.loading === 'rated-load' && between === undefined;
  const warnings = [...limit.warnings, ...(isMissing ? [noLoad] : [])];
  const reads = quantityOf(bench);
  const common = {
    id: ['leakage', test.id, ...namesOf(condition)].join('/'),
    number: 0,
    test: test.id,
    ...condition,
    output: output.id,
    outputName: output.name,
    setting,
    settingText: settingText(setting),
    arrangement,
    measuredAt,
    connection,
    instruction: leakageInstruction(test, condition, output, between),
    reads,
    limit: { current, measuringResistance, basis },
  };
  const refused = (warning: Warning): PlanLeakage => ({ ...common, warnings: [...warnings, warning], working });

  if (load === undefined) {
    const message = `No load of the bench is near enough to the measuring resistor of ${formatQuantity(measuringResistance, 'ohm')}.`;
    return refused({ code: 'load-not-on-bench', message });
  }
  const measuring: Measuring = { test, output, bench, load, reads };
  const highest = readingFor(measuring, current);
  const range = chooseRange(bench, reads, highest);
  const resistor = { id: load.id, resistance: load.resistance };
  if (range === undefined) {
    const message = `No range of the instrument shows ${quantityText(highest, reads)}, the highest reading.`;
    return { ...refused({ code: 'not-feasible', message }), resistor };
  }
  const atLimit = leakageUncertainty(measuring, range, highest);
  const accepted =
    atLimit === undefined && rule.kind !== 'simple-acceptance'
      ? undefined
      : pointAcceptance({
          rule,
          limits: { upper: current },
          nominal: 0,
          unit: 'A',
          ...(atLimit === undefined ? {} : { atUpper: atLimit }),
        });
  const unknown: Warning = {
    code: 'rule-not-applicable',
    message: 'Nothing is stated of the uncertainty here: the decision rule cannot be applied.',
  };
  const acceptedCurrent = accepted?.acceptance?.upper;
  return {
    ...common,
    resistor,
    range: { maximum: range.maximum, resolution: range.resolution },
    highestReading: roundedDown(highest, range.resolution),
    ...(atLimit === undefined ? {} : { atLimit: atLimit.expandedUncertainty }),
    ...(accepted?.acceptance === undefined ? {} : { acceptance: accepted.acceptance }),
    ...(accepted?.failing === undefined ? {} : { failing: accepted.failing }),
    ...(acceptedCurrent === undefined || acceptedCurrent < 0
      ? {}
      : { highestAccepted: roundedDown(readingFor(measuring, acceptedCurrent), range.resolution) }),
    warnings: [...warnings, ...(accepted === undefined ? [unknown] : accepted.warnings)],
    // Turned round, the steps from the highest reading lead to the limit.
    working: [...assessLeakage(measurementOf(measuring, highest)).working, ...(accepted?.working ?? [])],
  };
}

/** What tells the measurements of one test apart in their identifiers. */
function namesOf({ measuredFrom, loading }: LeakageCondition): readonly string[] {
  return loading === undefined ? [] : [measuredFrom.replace(' electrode', '').replace(' ', '-'), loading];
}

/** The load between the electrodes while the leakage is read; the measuring resistor is taken. */
function loadBetween(
  { loading }: LeakageCondition,
  { ratedLoad, ratedPower }: Output,
  bench: Bench,
  resistor: BenchLoad | undefined,
): BenchLoad | undefined {
  if (loading !== 'rated-load') return undefined;
  const free = bench.loads.filter(({ id }) => id !== resistor?.id);
  return chooseLoad({ ...bench, loads: free }, ratedLoad, ratedPower)?.load;
}

/** A leakage measurement at this bench, but for its reading. */
export interface Measuring {
  readonly test: LeakageTest;
  readonly output: Output;
  readonly bench: Bench;
  readonly load: BenchLoad;
  readonly reads: Quantity;
}

/** What `assessLeakage` needs for a reading: with a range it gives the uncertainty too. */
export function measurementOf(
  { test, output, bench, load, reads }: Measuring,
  reading: number,
  range?: { readonly maximum: number; readonly resolution: number },
): LeakageMeasurement {
  const accuracy = bench.instrument.reads.find((f) => f.quantity === reads)?.accuracy;
  const { tolerance, certificate, strays } = load;
  return {
    arrangement: test.arrangement,
    measuredAt: test.measuredAt,
    ratedPower: output.ratedPower,
    ...(test.limit === undefined ? {} : { limit: test.limit }),
    reading,
    quantity: reads,
    measuringResistance: load.resistance,
    ...(range === undefined || accuracy === undefined
      ? {}
      : {
          instrument: {
            accuracy,
            range,
            ...(output.carrierFrequency === undefined ? {} : { frequency: output.carrierFrequency }),
            ...(output.crestFactor === undefined ? {} : { crestFactor: output.crestFactor }),
          },
          resistor: {
            ...(tolerance === undefined ? {} : { tolerance }),
            ...(certificate === undefined ? {} : { certificate }),
            ...(strays === undefined ? {} : { strays }),
          },
        }),
  };
}

/** Expanded uncertainty of the leakage of a reading; undefined where the bench states no accuracy, or nothing was read. */
export function leakageUncertainty(
  measuring: Measuring,
  range: { readonly maximum: number; readonly resolution: number },
  reading: number,
): ExpandedUncertainty | undefined {
  // A power of 0 fixes no uncertainty of the current.
  if (measuring.reads === 'power' && reading === 0) return undefined;
  const { budget } = assessLeakage(measurementOf(measuring, reading, range));
  if (budget === undefined) return undefined;
  const { standardUncertainty, degreesOfFreedom } = budget;
  return expandedUncertainty(
    degreesOfFreedom === undefined ? { standardUncertainty } : { standardUncertainty, degreesOfFreedom },
  );
}

/** The reading that a leakage gives: the leakage of a reading of 1, turned round. */
function readingFor(measuring: Measuring, current: number): number {
  const ratio = current / assessLeakage(measurementOf(measuring, 1)).current;
  return measuring.reads === 'power' ? ratio ** 2 : ratio;
}

/** Current where the instrument reads it, else what it reads first. */
function quantityOf({ instrument }: Bench): Quantity {
  const quantities = instrument.reads.map((f) => f.quantity);
  return quantities.includes('current') ? 'current' : (quantities[0] as Quantity);
}

/** Down to a step of the display, as every upper limit is. */
function roundedDown(value: number, resolution: number): number {
  return roundBand({ upper: value }, resolution).upper as number;
}
