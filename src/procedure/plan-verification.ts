import {
  atPath,
  requireAtLeast,
  requireChoice,
  requireFraction,
  requirePositive,
  type Warning,
} from '../checks/index.js';
import type { Quantity } from '../circuit/index.js';
import { leakageCautions } from '../leakage/index.js';
import { formatQuantity } from '../units/index.js';
import { libraryVersion } from '../version.js';
import type { Caution } from '../working/index.js';
import type { Bench } from './bench.js';
import { benchTime } from './bench-time.js';
import { canonical } from './canonical.js';
import { cautions } from './cautions.js';
import { benchFaults, refuse, specificationFaults } from './check-specification.js';
import { choosePoints } from './choose-points.js';
import { checkDecisionRule } from './decision-rule.js';
import { modelOutput } from './output-model.js';
import type { Plan, PlanOptions, PlanPoint } from './plan.js';
import { planLeakage } from './plan-leakage.js';
import { planMonitor } from './plan-monitor.js';
import { type PointContext, type PointDraft, planPoint } from './plan-point.js';
import { parametersOf, planRules } from './plan-rules.js';
import { settingRank, settingText } from './setting-text.js';
import type { Output, Specification } from './specification.js';

/** What stands for an option that is not given. */
export const defaultPlanOptions: Required<PlanOptions> = {
  rounding: 'inward',
  govern: 'published',
  lowSetting: 0.2,
  closeToLimit: 0.8,
  decisionRule: { kind: 'simple-acceptance' },
  negligibleEffect: 0.1,
};

/**
 * Makes the plan of a verification: which points, in which order, with which limits, and whether the bench can do it.
 *
 * @param givenSpecification What the maker publishes
 * @param givenBench Instrument, loads and leads
 * @param options Rounding, governing limits, low setting; see `PlanOptions`
 * @returns The plan, plain JSON, with the working of every limit
 * @throws CalculationError with a path into the document: `not-positive`, `not-ascending`, `duplicate`,
 * `level-unknown`, `setting-outside-scale`, `limit-negative`, `tolerance-missing` and others
 * @source IEC 60601-2-2 for the rules that the specification chooses
 */
export function planVerification(
  givenSpecification: Specification,
  givenBench: Bench,
  options: PlanOptions = {},
): Plan {
  refuse(specificationFaults(givenSpecification));
  refuse(benchFaults(givenBench));
  const specification = canonical(givenSpecification);
  const bench = canonical(givenBench);
  checkBenchNumbers(bench);
  const ofBench = bench.decisionRule === undefined ? {} : { decisionRule: bench.decisionRule };
  const chosen = checkOptions({ ...defaultPlanOptions, ...ofBench, ...options });
  const reads = bench.reads ?? (bench.instrument.reads[0]?.quantity as Quantity);
  const accuracy = accuracyOf(specification);
  const context: PointContext = { bench, reads, options: chosen, ...(accuracy === undefined ? {} : { accuracy }) };

  const warnings: Warning[] = [];
  const drafts: { draft: PointDraft; output: Output; outputIndex: number }[] = [];
  specification.outputs.forEach((stated, outputIndex) => {
    const path = `outputs[${outputIndex}]`;
    const model = modelOutput(stated, path);
    const { output } = model;
    const wanted = choosePoints(model, chosen);
    warnings.push(...wanted.warnings, ...outputWarnings(output));
    const leftOut = new Set<number>();
    const before = drafts.length;
    wanted.points.forEach((point) => {
      const where = `${path} at ${settingText(point.setting)}, ${point.load} ohm`;
      const draft = atPath(where, () => planPoint(point, model, context));
      if (point.chosen && draft.warnings[0]?.code === 'load-not-on-bench') leftOut.add(point.load);
      else drafts.push({ draft, output, outputIndex });
    });
    if (leftOut.size > 0) {
      const loads = [...leftOut].map((load) => formatQuantity(load, 'ohm')).join(', ');
      warnings.push({
        code: 'load-not-on-bench',
        message: `${output.name}: no point was chosen at ${loads}, because no load of the bench is near enough.`,
      });
    }
    if (drafts.length === before) {
      warnings.push({ code: 'not-feasible', message: `${output.name}: no point could be planned.` });
    }
  });

  const points: readonly PlanPoint[] = inOrderOfWork(drafts).map((draft, index) => {
    draft.number = index + 1;
    return draft;
  });
  const monitor = planMonitor(specification.monitor, bench, { options: chosen });
  warnings.push(...monitor.warnings);
  const leakage = planLeakage(specification, bench, chosen.decisionRule);
  const makers = (specification.cautions ?? []).map((text, i) => ({
    id: `maker-${i + 1}`,
    text,
    standing: 'published' as const,
  }));
  return {
    schema: 'esu-limits/plan',
    version: 1,
    library: { name: 'esu-limits', version: libraryVersion },
    specification,
    bench,
    options: chosen,
    points,
    rules: planRules(specification, points),
    monitor: monitor.rows,
    ...(monitor.thresholds === undefined ? {} : { monitorThresholds: monitor.thresholds }),
    leakage,
    cautions: [...makers, ...cautions, ...(leakage.length > 0 ? ofLeakage : [])],
    warnings,
    benchTime: benchTime(bench, points, leakage),
  };
}

/** What a leakage measurement adds to the cautions of every plan. */
const ofLeakage: readonly Caution[] = leakageCautions.filter(({ id }) =>
  cautions.every((caution) => caution.id !== id),
);

/** Connections are changed least, then loads, then settings from low to high. */
function inOrderOfWork(
  drafts: readonly { draft: PointDraft; output: Output; outputIndex: number }[],
): readonly PointDraft[] {
  const connections = new Map<string, number>();
  const connectionRank = (draft: PointDraft): number => {
    const key = `${draft.connection}\n${draft.lead ?? ''}`;
    const rank = connections.get(key) ?? connections.size;
    connections.set(key, rank);
    return rank;
  };
  const keyed = drafts.map(({ draft, output, outputIndex }) => ({
    draft,
    key: [
      connectionRank(draft),
      draft.load?.resistance ?? Number.MAX_VALUE,
      outputIndex,
      settingRank(draft.setting, output.scale),
      draft.wantedLoad,
    ],
  }));
  keyed.sort((a, b) => {
    for (let i = 0; i < a.key.length; i++) {
      const difference = (a.key[i] as number) - (b.key[i] as number);
      if (difference !== 0) return difference;
    }
    return 0;
  });
  return keyed.map(({ draft }) => draft);
}

function outputWarnings(output: Output): readonly Warning[] {
  const warnings: Warning[] = [];
  if (output.crestFactor !== undefined && output.crestFactorAt === 'open circuit') {
    warnings.push({
      code: 'crest-factor-open-circuit',
      message: `${output.name}: the crest factor is stated for an open circuit; peaks at a load are estimates.`,
    });
  }
  if (output.duty === undefined) {
    warnings.push({
      code: 'duty-missing',
      message: `${output.name}: the sheet states no longest activation; keep activations short and pauses long.`,
    });
  }
  return warnings;
}

function accuracyOf(specification: Specification): PointContext['accuracy'] {
  const choice = specification.rules?.find((entry) => entry.rule === 'output-accuracy');
  if (choice === undefined) return undefined;
  const { below, above, fromFraction } = parametersOf(choice) as Record<'below' | 'above' | 'fromFraction', number>;
  return { below, above, fromFraction };
}

function checkOptions(options: Required<PlanOptions>): Required<PlanOptions> {
  requireChoice(options.rounding, 'options.rounding', ['inward', 'nearest']);
  requireChoice(options.govern, 'options.govern', ['published', 'derived', 'tighter']);
  requirePositive(requireFraction(options.lowSetting, 'options.lowSetting'), 'options.lowSetting');
  requireFraction(options.closeToLimit, 'options.closeToLimit');
  requireFraction(options.negligibleEffect, 'options.negligibleEffect');
  checkDecisionRule(options.decisionRule, 'options.decisionRule');
  return options;
}

function checkBenchNumbers(bench: Bench): void {
  const { instrument, substitution, times } = bench;
  instrument.reads.forEach((f, i) => {
    f.ranges.forEach((range, j) => {
      requirePositive(range.maximum, `instrument.reads[${i}].ranges[${j}].maximum`);
      requirePositive(range.resolution, `instrument.reads[${i}].ranges[${j}].resolution`);
    });
  });
  if (instrument.maximumPeakVoltage !== undefined) {
    requirePositive(instrument.maximumPeakVoltage, 'instrument.maximumPeakVoltage');
  }
  if (instrument.maximumCrestFactor !== undefined) {
    requireAtLeast(instrument.maximumCrestFactor, 1, 'instrument.maximumCrestFactor');
  }
  bench.loads.forEach((load, i) => {
    requirePositive(load.resistance, `loads[${i}].resistance`);
    requirePositive(load.powerRating, `loads[${i}].powerRating`);
    if (load.maximumPeakVoltage !== undefined)
      requirePositive(load.maximumPeakVoltage, `loads[${i}].maximumPeakVoltage`);
    if (load.overload !== undefined) {
      requireAtLeast(load.overload.power, load.powerRating, `loads[${i}].overload.power`);
      requirePositive(load.overload.on, `loads[${i}].overload.on`);
      requireAtLeast(load.overload.off, 0, `loads[${i}].overload.off`);
    }
  });
  if (substitution?.maximumDifference !== undefined) {
    requireFraction(substitution.maximumDifference, 'substitution.maximumDifference');
  }
  if (substitution?.negligible !== undefined) requireFraction(substitution.negligible, 'substitution.negligible');
  for (const [name, seconds] of Object.entries(times ?? {})) requireAtLeast(seconds, 0, `times.${name}`);
}
