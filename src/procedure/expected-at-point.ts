import { explainConvertBand } from '../band/index.js';
import { type Quantity, quantityUnits } from '../circuit/index.js';
import type { Step } from '../working/index.js';
import type { WantedPoint } from './choose-points.js';
import type { OutputModel, PublishedPower } from './output-model.js';
import type { ExpectedOrigin } from './plan.js';
import { carriedPower, middleOfBand, statedPower } from './steps.js';

/** Expected power of a point at the load of the bench. */
export interface ExpectedAtPoint {
  readonly power: number;
  /** Expected power at the wanted load. */
  readonly wantedPower: number;
  readonly from: ExpectedOrigin;
  /** Power at the load of the bench over power at the wanted load, along the published data. */
  readonly carry: Carry;
  readonly working: readonly Step[];
}

/** How a power is carried from the wanted load to the load of the bench. */
export interface Carry {
  /** Power of the published data at the wanted load and at the load of the bench; absent when nothing is carried. */
  readonly along?: { readonly wanted: PublishedPower; readonly used: PublishedPower };
  /** True when the loads differ, no data say what that changes, and the difference counts as negligible. */
  readonly assumedUnchanged: boolean;
}

/**
 * Expected power at the wanted load, carried to the load of the bench.
 * Returns text that says why, when the published data cannot answer.
 */
export function expectedAtPoint(
  wanted: WantedPoint,
  model: OutputModel,
  used: number,
  negligible: number,
): ExpectedAtPoint | string {
  const { setting, load, row } = wanted;
  const published = model.powerAt(setting, load);
  const carry = carryTo(wanted, model, used, negligible);
  if (typeof carry === 'string') return carry;

  let base: { power: number; from: ExpectedOrigin; working: readonly Step[] };
  if (wanted.statedPower !== undefined) {
    const from = row !== undefined && row.power === wanted.statedPower ? 'published row' : 'test point';
    base = { power: wanted.statedPower, from, working: [statedPower(wanted.statedPower)] };
  } else if (typeof published !== 'string') {
    // The curve is read at the load of the bench itself: nothing needs to be carried.
    const used = carry.along?.used ?? published;
    return { power: used.power, wantedPower: published.power, from: used.from, carry, working: used.working };
  } else if (row?.lower !== undefined && row.upper !== undefined) {
    base = middleOfRow(row.lower, row.upper, row.quantity, load);
  } else {
    return published;
  }

  const carried = carryPower(base.power, carry, 'expected power at the load of the bench');
  return {
    power: carried.power,
    wantedPower: base.power,
    from: base.from,
    carry,
    working: [
      ...base.working,
      ...(carry.along === undefined ? [] : [...carry.along.wanted.working, ...carry.along.used.working]),
      ...carried.working,
    ],
  };
}

/** A power at the wanted load, carried to the load of the bench. */
export function carryPower(power: number, carry: Carry, label: string): { power: number; working: readonly Step[] } {
  if (carry.along === undefined) return { power, working: [] };
  const { wanted, used } = carry.along;
  const carried = carriedPower(label, power, wanted.power, used.power);
  return { power: carried.value, working: [carried] };
}

function carryTo(wanted: WantedPoint, model: OutputModel, used: number, negligible: number): Carry | string {
  if (used === wanted.load) return { assumedUnchanged: false };
  const atWanted = model.powerAt(wanted.setting, wanted.load);
  const atUsed = model.powerAt(wanted.setting, used);
  if (typeof atWanted !== 'string' && typeof atUsed !== 'string') {
    return { along: { wanted: atWanted, used: atUsed }, assumedUnchanged: false };
  }
  if (Math.abs(used - wanted.load) <= negligible * wanted.load) return { assumedUnchanged: true };
  const why = typeof atUsed === 'string' ? atUsed : (atWanted as string);
  return `${used} ohm cannot stand in for ${wanted.load} ohm: ${why}`;
}

function middleOfRow(
  lower: number,
  upper: number,
  quantity: Quantity,
  load: number,
): { power: number; from: ExpectedOrigin; working: readonly Step[] } {
  const middle = middleOfBand(lower, upper, quantityUnits[quantity]);
  // A band with one side carries the conversion and its step.
  const inPower = explainConvertBand({ upper: middle.value }, { from: quantity, to: 'power', load });
  return {
    power: inPower.band.upper as number,
    from: 'middle of the published row',
    working: [middle, ...inPower.working],
  };
}
