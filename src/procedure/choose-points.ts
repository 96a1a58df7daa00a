import type { Warning } from '../checks/index.js';
import type { OutputModel } from './output-model.js';
import type { PlanOptions } from './plan.js';
import { settingRank, settingText } from './setting-text.js';
import type { Output, PublishedRow, Setting, StatedTolerance } from './specification.js';

/** A point that the sheet asks for, or that was chosen from its data. */
export interface WantedPoint {
  readonly output: Output;
  readonly setting: Setting;
  /** Load, in ohms. */
  readonly load: number;
  /** Expected power, where the test point or the row states it. */
  readonly statedPower?: number;
  readonly row?: PublishedRow;
  /** Tolerance of this point or of its output. */
  readonly tolerance?: StatedTolerance;
  /** True when the library chose the point, so that it may be left out when the bench cannot serve it. */
  readonly chosen: boolean;
}

/**
 * Usual test loads of the trade, in ohms.
 * Standing: from memory, as the loads of the diagrams that IEC 60601-2-2 asks for; override them by `loads`.
 */
export const usualTestLoads: Readonly<Record<Output['circuit'], readonly number[]>> = {
  monopolar: [100, 200, 500, 1000, 2000],
  bipolar: [10, 50, 200, 500, 1000],
};

/** The points of one output: those that the sheet gives, else settings times loads inside the published data. */
export function choosePoints(
  model: OutputModel,
  options: Required<PlanOptions>,
): { readonly points: readonly WantedPoint[]; readonly warnings: readonly Warning[] } {
  const { output } = model;
  const points: WantedPoint[] = [];
  const warnings: Warning[] = [];
  const rowAt = (setting: Setting, load: number): PublishedRow | undefined =>
    output.rows?.find((row) => row.setting === setting && row.load === load);
  const add = (setting: Setting, load: number, chosen: boolean, power?: number, tolerance?: StatedTolerance): void => {
    if (points.some((point) => point.setting === setting && point.load === load)) return;
    const row = rowAt(setting, load);
    const statedPower = power ?? row?.power;
    const allowed = tolerance ?? output.tolerance;
    points.push({
      output,
      setting,
      load,
      chosen,
      ...(statedPower === undefined ? {} : { statedPower }),
      ...(row === undefined ? {} : { row }),
      ...(allowed === undefined ? {} : { tolerance: allowed }),
    });
  };

  for (const point of output.points ?? []) add(point.setting, point.load, false, point.power, point.tolerance);
  for (const row of output.rows ?? []) add(row.setting, row.load, false);
  const asked = output.settings !== undefined || output.loads !== undefined;
  if (points.length > 0 && !asked) return { points, warnings };

  for (const setting of output.settings ?? usualSettings(model, options.lowSetting)) {
    const range = model.loadRange(setting);
    if (typeof range === 'string') {
      warnings.push({
        code: 'setting-without-power',
        message: `${output.name}, ${settingText(setting)}: no point was chosen, because ${range}.`,
      });
      continue;
    }
    const loads =
      output.loads ?? [...new Set([...usualTestLoads[output.circuit], output.ratedLoad])].sort((a, b) => a - b);
    for (const load of loads) {
      // Loads that the user asked for stay in the plan, so that their absence is seen.
      if (output.loads !== undefined || (load >= range.lower && load <= range.upper)) {
        add(setting, load, output.loads === undefined);
      }
    }
  }
  return { points, warnings };
}

/** Maximum, half and one low setting, or the levels that have published data: highest, middle, lowest. */
function usualSettings(model: OutputModel, lowSetting: number): readonly Setting[] {
  const { scale, curves } = model.output;
  if (scale.kind === 'level') {
    const published = scale.levels.filter((level) => curves?.some((curve) => curve.setting === level));
    const middle = published[Math.floor((published.length - 1) / 2)];
    const picked = [published[0], middle, published.at(-1)].filter((level) => level !== undefined);
    return [...new Set(picked)];
  }
  const { minimum, maximum, step } = scale;
  const onScale = (fraction: number): number => {
    const watts = step === undefined ? maximum * fraction : Math.round((maximum * fraction) / step) * step;
    return Math.min(maximum, Math.max(minimum, watts));
  };
  const settings = [onScale(lowSetting), onScale(0.5), maximum];
  return [...new Set(settings)].sort((a, b) => settingRank(a, scale) - settingRank(b, scale));
}
