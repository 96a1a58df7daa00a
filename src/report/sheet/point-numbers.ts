import type { Plan, PlanPoint, PointFinding } from '../../procedure/index.js';
import { roundUncertainty } from '../../uncertainty/index.js';
import { decimalsNeeded, fixedText } from '../numbers/fixed-text.js';
import { limitDigits, readingDigits } from '../numbers/limit-digits.js';
import { type PrintUnit, unitFor } from '../numbers/print-unit.js';
import { significantDigits } from '../numbers/value-text.js';
import { none, numberCell } from './cells.js';
import type { Cell } from './sheet.js';

/** How the numbers of a plan's points are printed: units chosen once for whole columns. */
export interface PointNumbers {
  /** Unit of expected value, limits and readings; absent where the points are read in different quantities. */
  readonly columnUnit?: PrintUnit;
  readonly loadUnit: PrintUnit;
  readonly powerUnit: PrintUnit;
  readonly load: (point: PlanPoint) => Cell;
  readonly power: (point: PlanPoint) => Cell;
  readonly expected: (point: PlanPoint) => Cell;
  readonly limit: (point: PlanPoint, side: 'lower' | 'upper') => Cell;
  readonly reading: (finding: PointFinding, point: PlanPoint | undefined) => Cell;
  /** Limit of acceptance; none where the rule cannot be applied, or accepts no reading. */
  readonly acceptance: (point: PlanPoint, side: 'lower' | 'upper') => Cell;
  /** An expanded uncertainty, to two figures. */
  readonly uncertainty: (point: PlanPoint, expanded: number | undefined) => Cell;
}

/** Chooses the units of the columns and gives the cells. */
export function pointNumbers(plan: Plan): PointNumbers {
  const { points } = plan;
  const first = points[0];
  const oneQuantity = first !== undefined && points.every((point) => point.reads === first.reads);
  const columnUnit = oneQuantity ? unitFor(first.reads, points.flatMap(valuesOf)) : undefined;
  const loadUnit = unitFor('resistance', points.map(loadOf));
  const powers = points.flatMap((point) => (point.expected === undefined ? [] : [point.expected.power]));
  const powerUnit = unitFor('power', powers);
  const powerDecimals = commonDecimals(powers, powerUnit);
  const unitOf = (point: PlanPoint): PrintUnit => columnUnit ?? unitFor(point.reads, valuesOf(point));
  const limitText = (point: PlanPoint, side: 'lower' | 'upper'): string | undefined => {
    const limit = point.limits[side];
    return limit === undefined ? undefined : limitDigits(limit, side, unitOf(point), point.range?.resolution);
  };

  return {
    ...(columnUnit === undefined ? {} : { columnUnit }),
    loadUnit,
    powerUnit,
    load: (point) => numberCell(significantDigits(loadOf(point), loadUnit, 5), loadUnit, loadUnit),
    power: ({ expected }) =>
      expected === undefined
        ? none
        : numberCell(fixedText(expected.power, powerUnit, powerDecimals), powerUnit, powerUnit),
    expected: (point) => {
      if (point.nominal === undefined) return none;
      const unit = unitOf(point);
      const digits =
        point.range === undefined
          ? significantDigits(point.nominal, unit, 4)
          : fixedText(point.nominal, unit, decimalsNeeded(point.range.resolution, unit));
      return numberCell(digits, unit, columnUnit);
    },
    limit: (point, side) => {
      const text = limitText(point, side);
      return text === undefined ? none : numberCell(text, unitOf(point), columnUnit);
    },
    acceptance: (point, side) => {
      const limit = point.measurement?.acceptance?.[side];
      if (limit === undefined) return none;
      return numberCell(limitDigits(limit, side, unitOf(point), point.range?.resolution), unitOf(point), columnUnit);
    },
    uncertainty: (point, expanded) => {
      if (expanded === undefined || point.nominal === undefined) return none;
      const unit = unitOf(point);
      if (!(expanded > 0)) return numberCell('0', unit, columnUnit);
      const { uncertainty, decimals } = roundUncertainty(point.nominal, expanded);
      return numberCell(fixedText(uncertainty, unit, Math.max(0, decimals - unit.shift)), unit, columnUnit);
    },
    reading: ({ value, quantity }, point) => {
      if (value === undefined) return none;
      if (point === undefined) {
        const unit = unitFor(quantity, [value]);
        return numberCell(significantDigits(value, unit, 6), unit, undefined);
      }
      const unit = unitOf(point);
      const lower = limitText(point, 'lower');
      const upper = limitText(point, 'upper');
      const limits = { ...(lower === undefined ? {} : { lower }), ...(upper === undefined ? {} : { upper }) };
      return numberCell(readingDigits(value, unit, point.range?.resolution, limits), unit, columnUnit);
    },
  };
}

/** Resistance of the load that a point uses, or wants where the bench has none. */
export function loadOf(point: PlanPoint): number {
  return point.load?.resistance ?? point.wantedLoad;
}

function valuesOf(point: PlanPoint): number[] {
  return [point.nominal, point.limits.lower, point.limits.upper].filter((value) => value !== undefined);
}

/** Decimals that show three significant digits of the smallest value, or fewer where all are written in full with fewer. */
function commonDecimals(values: readonly number[], unit: PrintUnit): number {
  const smallest = values.filter((value) => value > 0).reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  if (smallest === Number.POSITIVE_INFINITY) return 0;
  const wanted = 2 - Math.floor(Math.log10(smallest * 10 ** unit.shift));
  const needed = values.reduce((most, value) => Math.max(most, decimalsNeeded(Number(value.toPrecision(12)), unit)), 0);
  return Math.max(0, Math.min(wanted, needed, 6));
}
