import { type Band, contains, explainBandAround } from '../band/index.js';
import { convertQuantity, quantityUnits } from '../circuit/index.js';
import type { Step } from '../working/index.js';
import type { DisplayFinding } from './findings.js';
import { deviationText } from './percent-text.js';
import { bandText, namingOf, quantityText, roundedText } from './quantity-text.js';
import type { DisplayReading, Reading } from './readings.js';
import type { StatedTolerance } from './specification.js';
import { difference, relativeDifference } from './steps.js';

/** The generator's own display against the instrument, in the quantity of the display. */
export function assessDisplay(
  display: DisplayReading,
  reading: Reading,
  tolerance: StatedTolerance | undefined,
  load: number,
): { readonly finding: DisplayFinding; readonly working: readonly Step[] } {
  const { quantity, value: displayed } = display;
  const unit = quantityUnits[quantity];
  const measured = convertQuantity(reading.value, { from: reading.quantity, to: quantity, load });
  const apart = difference('display minus instrument', displayed, measured, unit);
  const working: Step[] = [apart];
  const common: Omit<DisplayFinding, 'verdict' | 'message'> = {
    quantity,
    displayed,
    measured,
    difference: apart.value,
  };
  const text = `display ${quantityText(displayed, quantity)}, instrument ${roundedText(measured, quantity)}`;
  if (!(measured > 0)) {
    return { finding: { ...common, verdict: 'not judged', message: `${text}: nothing to compare with.` }, working };
  }
  const relative = relativeDifference('relative difference of the display', displayed, measured);
  working.push(relative);
  const withRelative = { ...common, relative: relative.value };
  const percent = deviationText(relative.value);
  if (tolerance === undefined) {
    const message = `${text}: ${percent} apart; the sheet states no tolerance.`;
    return { finding: { ...withRelative, verdict: 'not judged', message }, working };
  }
  const { in: toleranceIn, ...rest } = tolerance;
  const measuredThere = convertQuantity(reading.value, { from: reading.quantity, to: toleranceIn, load });
  const displayedThere = convertQuantity(displayed, { from: quantity, to: toleranceIn, load });
  const band = explainBandAround(measuredThere, rest, namingOf(toleranceIn));
  working.push(...band.working);
  const inside = contains(band.band, displayedThere);
  const limits = inDisplayQuantity(band.band, toleranceIn, quantity, load);
  const verdict = inside ? 'pass' : 'fail';
  const message = `${text}: ${percent} apart, ${inside ? 'inside' : 'outside'} ${roundedBandText(limits, quantity)}.`;
  return { finding: { ...withRelative, limits, verdict, message }, working };
}

function inDisplayQuantity(
  band: Band,
  from: StatedTolerance['in'],
  to: DisplayReading['quantity'],
  load: number,
): Band {
  const convert = (limit: number): number => convertQuantity(limit, { from, to, load });
  return {
    ...(band.lower === undefined ? {} : { lower: convert(band.lower) }),
    ...(band.upper === undefined ? {} : { upper: convert(band.upper) }),
  };
}

function roundedBandText(band: Band, quantity: DisplayReading['quantity']): string {
  const round = (limit: number): number => Number(limit.toPrecision(4));
  return bandText(
    {
      ...(band.lower === undefined ? {} : { lower: round(band.lower) }),
      ...(band.upper === undefined ? {} : { upper: round(band.upper) }),
    },
    quantity,
  );
}
