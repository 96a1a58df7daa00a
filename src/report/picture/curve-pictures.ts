import { bandAround, convertBand } from '../../band/index.js';
import { type Curve, type CurvePoint, loadCurve, regimeCurve, scaleCurve } from '../../curve/index.js';
import type {
  Findings,
  Output,
  Plan,
  PlanPoint,
  PublishedCurve,
  Setting,
  StatedTolerance,
} from '../../procedure/index.js';
import { idealLimits } from '../../procedure/index.js';
import { plainText } from '../escape/plain-text.js';
import { valueText } from '../numbers/value-text.js';
import { shownVerdict } from '../sheet/shown-verdict.js';
import { toleranceText } from '../sheet/tolerance-text.js';
import type { BandPoint, CurvePicture, PictureReading } from './curve-picture.js';

/** Loads at which a line is drawn, beside its knots: enough that straight pieces look smooth. */
const samples = 72;

/** The line of one setting, and over which loads it is drawn. */
interface Shape {
  readonly setting: Setting;
  readonly curve: Curve;
  readonly from: number;
  readonly to: number;
  readonly knots: readonly CurvePoint[];
  readonly published: boolean;
  readonly what: string;
}

/**
 * The load curves of a plan, one for each output and setting that has one: line, tolerance, limits and,
 * with findings, the readings.
 */
export function curvePictures(plan: Plan, findings?: Findings): readonly CurvePicture[] {
  return plan.specification.outputs.flatMap((output) => {
    const points = plan.points.filter((point) => point.output === output.id && point.load !== undefined);
    return shapesOf(output, points).map((shape) => {
      const here = points.filter((point) => point.setting === shape.setting);
      return pictureOf(plan, output, shape, here, findings);
    });
  });
}

function shapesOf(output: Output, points: readonly PlanPoint[]): Shape[] {
  const published = output.curves ?? [];
  const planned = [...new Set(points.map((point) => point.setting))];
  const settings = [...new Set([...planned, ...published.map((curve) => curve.setting)])];
  return settings.flatMap((setting) => {
    const loads = points.filter((point) => point.setting === setting).map((point) => point.load?.resistance as number);
    const own = published.find((curve) => curve.setting === setting);
    if (own !== undefined) return [publishedShape(own, setting, 1, loads)];
    if (typeof setting !== 'number') return [];
    const higher = output.otherSettings === 'proportional' ? nextHigher(published, setting) : undefined;
    if (higher !== undefined) return [publishedShape(higher, setting, setting / (higher.setting as number), loads)];
    return published.length === 0 && output.regimes !== undefined ? regimeShape(output, setting, loads) : [];
  });
}

/** The curve that answers for a setting between curves: the next higher, else the highest. */
function nextHigher(curves: readonly PublishedCurve[], setting: number): PublishedCurve | undefined {
  const numbered = curves.filter((curve) => typeof curve.setting === 'number');
  const sorted = numbered.sort((a, b) => (a.setting as number) - (b.setting as number));
  return sorted.find((curve) => (curve.setting as number) > setting) ?? sorted.at(-1);
}

function publishedShape(source: PublishedCurve, setting: Setting, factor: number, loads: readonly number[]): Shape {
  const { points, interpolation, outside } = source;
  const own = loadCurve(points, {
    ...(interpolation === undefined ? {} : { interpolation }),
    ...(outside === undefined ? {} : { outside }),
  });
  const first = points[0]?.load as number;
  const last = points.at(-1)?.load as number;
  const reach = outside === undefined || outside === 'refuse' ? [] : loads;
  return {
    setting,
    curve: factor === 1 ? own : scaleCurve(own, factor),
    from: Math.min(first, ...reach),
    to: Math.max(last, ...reach),
    knots: points.map(({ load, power }) => ({ load, power: power * factor })),
    published: factor === 1,
    what: factor === 1 ? 'published curve' : 'curve of the next higher published setting, scaled',
  };
}

function regimeShape(output: Output, setting: number, loads: readonly number[]): Shape[] {
  const { currentLimit, voltageLimit } = output.regimes ?? {};
  if (currentLimit === undefined && voltageLimit === undefined) return [];
  const curve = regimeCurve({
    power: setting,
    ...(currentLimit === undefined ? {} : { currentLimit }),
    ...(voltageLimit === undefined ? {} : { voltageLimit }),
  });
  const knots = curve.corners.map(({ load, power }) => ({ load, power }));
  const marks = [...loads, ...knots.map((knot) => knot.load), output.ratedLoad];
  const from = Math.min(...marks) / 1.25;
  const to = Math.max(...marks) * 1.25;
  return [
    {
      setting,
      curve,
      from,
      to,
      knots,
      published: false,
      what: 'curve of the stated current, power and voltage limits',
    },
  ];
}

function pictureOf(
  plan: Plan,
  output: Output,
  shape: Shape,
  points: readonly PlanPoint[],
  findings: Findings | undefined,
): CurvePicture {
  const line = loadsOf(shape).map((load) => ({ load, power: shape.curve.powerAt(load) }));
  const rule = accuracyRule(plan, output);
  const tolerance = output.tolerance ?? rule?.tolerance;
  const from = output.tolerance === undefined ? (rule?.from ?? 0) : 0;
  const band = tolerance === undefined ? [] : bandOf(line, tolerance, from);
  const limits = points.flatMap((point) => limitsOf(point));
  const readings = readingsOf(points, findings);
  const setting = points[0]?.settingText ?? (typeof shape.setting === 'number' ? `${shape.setting} W` : shape.setting);
  const title = plainText(`${output.name}, ${setting}`);
  const bandName = tolerance === undefined ? undefined : `tolerance ${toleranceText(tolerance)}`;
  return {
    title,
    description: describePicture(title, shape, line, bandName, limits, readings),
    line,
    published: shape.published ? shape.knots : [],
    band,
    ...(bandName === undefined ? {} : { bandName }),
    limits,
    readings,
  };
}

function loadsOf({ from, to, knots }: Shape): number[] {
  const ratio = Math.log(to / from) / samples;
  const even = Array.from({ length: samples - 1 }, (_, i) => from * Math.exp(ratio * (i + 1)));
  const inner = [...even, ...knots.map((knot) => knot.load)].filter((load) => load > from && load < to);
  return [...new Set([from, ...inner, to])].sort((a, b) => a - b);
}

function accuracyRule(plan: Plan, output: Output): { tolerance: StatedTolerance; from: number } | undefined {
  const rule = plan.rules.find((entry) => entry.rule === 'output-accuracy' && entry.output === output.id);
  if (rule === undefined) return undefined;
  const { below = 0, above = 0, fromFraction = 0 } = rule.parameters;
  return { tolerance: { in: 'power', relative: { below, above } }, from: fromFraction * output.ratedPower };
}

function bandOf(line: readonly CurvePoint[], tolerance: StatedTolerance, from: number): BandPoint[] {
  const { in: quantity, ...rest } = tolerance;
  const band: BandPoint[] = [];
  let interrupted = true;
  for (const { load, power } of line) {
    if (power <= from) {
      interrupted = true;
      continue;
    }
    const nominal = convertBand({ upper: power }, { from: 'power', to: quantity, load }).upper as number;
    const inPower = convertBand(bandAround(nominal, rest), { from: quantity, to: 'power', load });
    band.push({ load, ...inPower, ...(interrupted ? { starts: true } : {}) });
    interrupted = false;
  }
  return band;
}

function limitsOf(point: PlanPoint): BandPoint[] {
  const load = point.load?.resistance;
  if (load === undefined || point.limitsFrom === 'none') return [];
  return [{ load, ...convertBand(idealLimits(point), { from: point.reads, to: 'power', load }) }];
}

function readingsOf(points: readonly PlanPoint[], findings: Findings | undefined): PictureReading[] {
  const loads = new Map(points.map((point) => [point.id, point.load?.resistance]));
  return (findings?.points ?? []).flatMap((finding) => {
    const load = loads.get(finding.point);
    if (load === undefined || finding.power === undefined) return [];
    const { number, power, phase, verdict, reason } = finding;
    return [{ number, load, power, phase, verdict: shownVerdict(verdict, reason) }];
  });
}

function describePicture(
  title: string,
  shape: Shape,
  line: readonly CurvePoint[],
  bandName: string | undefined,
  limits: readonly BandPoint[],
  readings: readonly PictureReading[],
): string {
  const first = line[0] as CurvePoint;
  const last = line.at(-1) as CurvePoint;
  const top = line.reduce((best, point) => (point.power > best.power ? point : best), first);
  const at = ({ load, power }: CurvePoint): string =>
    `${valueText(power, 'power', 3)} at ${valueText(load, 'resistance', 3)}`;
  const sentences = [
    `${title}: power against load, both on logarithmic axes.`,
    `The line is the ${shape.what}, from ${at(first)} to ${at(last)}, highest ${at(top)}.`,
  ];
  if (bandName !== undefined) sentences.push(`The band is the ${bandName}.`);
  if (limits.length > 0)
    sentences.push(`Limits are drawn at ${limits.length} ${limits.length === 1 ? 'load' : 'loads'}.`);
  if (readings.length > 0) {
    const words = {
      pass: 'inside',
      close: 'inside and close to a limit',
      fail: 'outside',
      'not judged': 'not judged',
      incomplete: 'incomplete',
    };
    const list = readings.map(
      ({ number, load, power, verdict }) => `point ${number} ${at({ load, power })}, ${words[verdict]}`,
    );
    sentences.push(`Readings: ${list.join('; ')}.`);
  }
  return sentences.join(' ');
}
