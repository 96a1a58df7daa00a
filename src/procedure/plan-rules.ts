import { percentText } from './percent-text.js';
import type { PlanPoint, PlanRule } from './plan.js';
import { quantityText } from './quantity-text.js';
import { settingRank } from './setting-text.js';
import type { Output, Specification } from './specification.js';
import { type RuleChoice, type RuleId, type StandardRule, standardRules } from './standard-rules.js';

/** The chosen rules as they apply to each output, with the points at which readings are needed. */
export function planRules(specification: Specification, points: readonly PlanPoint[]): readonly PlanRule[] {
  const byOutput = new Map<string, PlanPoint[]>();
  for (const point of points) {
    const list = byOutput.get(point.output);
    if (list === undefined) byOutput.set(point.output, [point]);
    else list.push(point);
  }
  return (specification.rules ?? []).flatMap((choice) =>
    specification.outputs.flatMap((output) => {
      const usable = (byOutput.get(output.id) ?? []).filter((point) => point.feasible && point.expected !== undefined);
      const rule = applyRule[choice.rule](output, usable, parametersOf(choice));
      return rule === undefined ? [] : [ruleRow(choice, output, rule.points, rule.instruction)];
    }),
  );
}

/** Parameters of a chosen rule: its own, with the user's in their place. */
export function parametersOf(choice: RuleChoice): Readonly<Record<string, number>> {
  return { ...standardRules[choice.rule].parameters, ...choice.parameters };
}

/** Groups of points at one load with more than one setting, each from the lowest to the highest setting. */
export function settingLadders(points: readonly PlanPoint[], output: Output): readonly (readonly PlanPoint[])[] {
  const byLoad = new Map<number, PlanPoint[]>();
  for (const point of points) {
    const list = byLoad.get(point.wantedLoad);
    if (list === undefined) byLoad.set(point.wantedLoad, [point]);
    else list.push(point);
  }
  return [...byLoad.values()]
    .filter((ladder) => ladder.length > 1)
    .map((ladder) =>
      [...ladder].sort((a, b) => settingRank(a.setting, output.scale) - settingRank(b.setting, output.scale)),
    );
}

interface Applied {
  readonly points: readonly PlanPoint[];
  readonly instruction: string;
}

type Apply = (
  output: Output,
  points: readonly PlanPoint[],
  parameters: Readonly<Record<string, number>>,
) => Applied | undefined;

const applyRule: Readonly<Record<RuleId, Apply>> = {
  'output-accuracy': (output, points, parameters) => {
    const from = (parameters['fromFraction'] as number) * output.ratedPower;
    // The middle of a row is no published power: the rule has nothing to compare with there.
    const published = points.filter((point) => point.expected?.from !== 'middle of the published row');
    const above = published.filter((point) => (point.expected?.power as number) > from);
    if (above.length === 0) return undefined;
    return {
      points: above,
      instruction: `Judged from the readings of all points above ${quantityText(from, 'power')}.`,
    };
  },
  'output-monotone': (output, points) => {
    const ladders = settingLadders(points, output).flat();
    if (ladders.length === 0) return undefined;
    return { points: ladders, instruction: 'Judged from the readings at loads with more than one setting.' };
  },
  'peak-voltage': (output, points) => {
    if (output.maximumPeakVoltage === undefined) return undefined;
    const highest = highestVoltagePoint(points);
    if (highest === undefined) return undefined;
    return {
      points: [highest],
      instruction: `Read the peak voltage at point ${highest.number} (the highest expected voltage): at most ${quantityText(output.maximumPeakVoltage, 'voltage')} peak. The stated maximum is an open-circuit value: this reading can show that it is exceeded, not that it is kept.`,
    };
  },
  'supply-interruption': (output, points, parameters) => {
    const point = highestSettingAtRatedLoad(points, output);
    if (point === undefined) return undefined;
    const rise = percentText(parameters['above'] as number);
    return {
      points: [point],
      instruction: `At point ${point.number}, interrupt and restore the supply, activate again without touching the controls, and read again: power at most ${rise} higher, mode unchanged.`,
    };
  },
};

/** The point of the highest expected voltage; among equals, to within rounding, the one of the highest load. */
function highestVoltagePoint(points: readonly PlanPoint[]): PlanPoint | undefined {
  const voltage = (point: PlanPoint): number => point.expected?.voltage as number;
  const highest = Math.max(...points.map(voltage));
  const equal = points.filter((point) => voltage(point) >= highest * (1 - 1e-9));
  return equal.sort((a, b) => b.wantedLoad - a.wantedLoad)[0];
}

function highestSettingAtRatedLoad(points: readonly PlanPoint[], output: Output): PlanPoint | undefined {
  const distance = (point: PlanPoint): number => Math.abs(Math.log(point.wantedLoad / output.ratedLoad));
  const rank = (point: PlanPoint): number => settingRank(point.setting, output.scale);
  return [...points].sort((a, b) => rank(b) - rank(a) || distance(a) - distance(b))[0];
}

function ruleRow(choice: RuleChoice, output: Output, points: readonly PlanPoint[], instruction: string): PlanRule {
  const definition: StandardRule = standardRules[choice.rule];
  return {
    rule: choice.rule,
    output: output.id,
    outputName: output.name,
    definition,
    parameters: parametersOf(choice),
    points: points.map((point) => point.id),
    instruction,
  };
}
