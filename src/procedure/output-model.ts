import { atPath, CalculationError, requireAtLeast, requireNonNegative, requirePositive } from '../checks/index.js';
import { explainReading, type LoadCurve, loadCurve, type RegimeCurve, regimeCurve } from '../curve/index.js';
import type { Step } from '../working/index.js';
import { waveformOf } from './output-waveform.js';
import type { ExpectedOrigin } from './plan.js';
import { settingRank } from './setting-text.js';
import type { Output, Setting } from './specification.js';
import { powerOfSetting, scaledPower } from './steps.js';

/** Power that the published data give at a setting and a load, with its steps. */
export interface PublishedPower {
  readonly power: number;
  readonly from: ExpectedOrigin;
  readonly working: readonly Step[];
}

/** What an output's published data say: asked for a setting and a load, it answers or says why it cannot. */
export interface OutputModel {
  /** The output, with the crest factor of its waveform where it states none itself. */
  readonly output: Output;
  /** Steps of the figures of the waveform, where its crest factor comes from there. */
  readonly waveform: readonly Step[];
  /** Power at a setting and a load; text when nothing published says it. */
  readonly powerAt: (setting: Setting, load: number) => PublishedPower | string;
  /** Loads over which a setting can be answered: a range, one load, or text when none. */
  readonly loadRange: (setting: Setting) => { readonly lower: number; readonly upper: number } | string;
}

interface SettingCurve {
  readonly setting: Setting;
  readonly rank: number;
  readonly curve: LoadCurve;
}

/** Prepares the published data of one output. */
export function modelOutput(stated: Output, path: string): OutputModel {
  atPath(path, () => checkNumbers(stated));
  const waveform = atPath(path, () => waveformOf(stated));
  const output = waveform === undefined ? stated : { ...stated, crestFactor: waveform.crestFactor };
  const curves: SettingCurve[] = (output.curves ?? []).map((published, i) => ({
    setting: published.setting,
    rank: settingRank(published.setting, output.scale),
    curve: atPath(`${path}.curves[${i}]`, () =>
      loadCurve(published.points, {
        ...(published.interpolation === undefined ? {} : { interpolation: published.interpolation }),
        ...(published.outside === undefined ? {} : { outside: published.outside }),
      }),
    ),
  }));
  const regimes = output.regimes;
  const regimeCurves = new Map<number, RegimeCurve>();
  const regimeCurveAt = (watts: number): RegimeCurve => {
    const known = regimeCurves.get(watts);
    if (known !== undefined) return known;
    const made = atPath(`${path}.regimes`, () => regimeCurve({ ...regimes, power: watts }));
    regimeCurves.set(watts, made);
    return made;
  };

  /** The curve that answers for a setting: its own, or the next higher where the sheet permits scaling. */
  const curveFor = (setting: Setting): SettingCurve | undefined => {
    const own = curves.find((entry) => entry.setting === setting);
    if (own !== undefined || output.otherSettings !== 'proportional' || typeof setting !== 'number') return own;
    const higher = curves.filter((entry) => entry.rank > setting).sort((a, b) => a.rank - b.rank);
    return higher[0] ?? [...curves].sort((a, b) => b.rank - a.rank)[0];
  };

  const powerAt = (setting: Setting, load: number): PublishedPower | string => {
    const entry = curveFor(setting);
    if (entry !== undefined) return fromCurve(entry, setting, load);
    if (typeof setting !== 'number') return `no curve or row is published for level ${setting}`;
    if (regimes !== undefined) {
      const reading = explainReading(regimeCurveAt(setting), load);
      return { power: reading.power, from: 'regimes', working: reading.working };
    }
    if (curves.length > 0)
      return `no curve is published for ${setting} W, and the sheet does not say how other settings follow`;
    if (load !== output.ratedLoad) return `only the rated load, ${output.ratedLoad} ohm, is published`;
    return { power: setting, from: 'rating', working: [powerOfSetting(setting)] };
  };

  const loadRange = (setting: Setting): { lower: number; upper: number } | string => {
    const entry = curveFor(setting);
    if (entry !== undefined) {
      if (entry.curve.outside !== 'refuse') return { lower: 0, upper: Number.MAX_VALUE };
      return { lower: entry.curve.points[0]?.load as number, upper: entry.curve.points.at(-1)?.load as number };
    }
    if (typeof setting === 'number' && regimes !== undefined) return { lower: 0, upper: Number.MAX_VALUE };
    const atRated = powerAt(setting, output.ratedLoad);
    return typeof atRated === 'string' ? atRated : { lower: output.ratedLoad, upper: output.ratedLoad };
  };

  return { output, waveform: waveform?.working ?? [], powerAt, loadRange };
}

function fromCurve(entry: SettingCurve, setting: Setting, load: number): PublishedPower | string {
  try {
    const reading = explainReading(entry.curve, load);
    if (entry.setting === setting) return { power: reading.power, from: 'published curve', working: reading.working };
    const scaled = scaledPower(reading.power, setting as number, entry.rank);
    return { power: scaled.value, from: 'scaled curve', working: [...reading.working, scaled] };
  } catch (error) {
    if (error instanceof CalculationError && error.code === 'load-outside-curve') {
      return `the published curve does not reach ${load} ohm`;
    }
    throw error;
  }
}

function checkNumbers(output: Output): void {
  requirePositive(output.ratedPower, 'ratedPower');
  requirePositive(output.ratedLoad, 'ratedLoad');
  if (output.crestFactor !== undefined) requireAtLeast(output.crestFactor, 1, 'crestFactor');
  if (output.maximumPeakVoltage !== undefined) requirePositive(output.maximumPeakVoltage, 'maximumPeakVoltage');
  if (output.carrierFrequency !== undefined) requirePositive(output.carrierFrequency, 'carrierFrequency');
  if (output.scale.kind === 'watt') {
    requirePositive(output.scale.minimum, 'scale.minimum');
    requirePositive(output.scale.maximum, 'scale.maximum');
    if (output.scale.step !== undefined) requirePositive(output.scale.step, 'scale.step');
  }
  if (output.duty !== undefined) {
    requirePositive(output.duty.on, 'duty.on');
    requireNonNegative(output.duty.off, 'duty.off');
  }
  output.loads?.forEach((load, i) => {
    requirePositive(load, `loads[${i}]`);
  });
}
