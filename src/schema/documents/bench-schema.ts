import * as z from 'zod/mini';
import type { InstrumentFunction } from '../../procedure/index.js';
import { choice } from '../parts/choice.js';
import { header } from '../parts/header.js';
import { describeForSchema } from '../parts/json-schema-notes.js';
import {
  crossCheck,
  finite,
  items,
  type Loose,
  list,
  members,
  optional,
  reportRepeats,
  type WithNumbers,
} from '../parts/members.js';
import {
  capacitance,
  duration,
  fraction,
  frequency,
  inductance,
  length,
  lowestFrequency,
  pause,
  peakVoltage,
  power,
  resistance,
  unresolved,
} from '../parts/quantity.js';
import { isQuantity, readQuantity, ruleFor } from '../parts/read-quantity.js';
import type { Report } from '../parts/report-fault.js';
import { blankableLine, identifier, line, prose } from '../parts/text.js';
import { quantityChoice } from '../parts/tolerance.js';
import { decisionRule } from './decision-rule-schema.js';
import { checkLimits } from './monitor-row-schema.js';
import { resistanceBox, series } from './monitor-schema.js';
import { circuit, crestFactor } from './output-schema.js';

const inQuantity = unresolved('In the SI unit of the quantity, or text with a unit.');

const plainNumber = z.number('must be a number');
const positive = plainNumber.check(z.positive('must be greater than 0'));
const notNegative = plainNumber.check(z.nonnegative('must be 0 or more'));
const coverageRequirement = 'must be "limits", { factor } or { level }';
const coverageFactor = members({ factor: positive });
const coverageLevel = members({ level: fraction });

const range = members({ maximum: inQuantity, resolution: inQuantity });
const givenAccuracy = members({
  ofReading: optional(fraction),
  ofRange: optional(fraction),
  floor: optional(inQuantity),
  counts: optional(notNegative),
  coverage: optional(z.union([z.literal('limits'), coverageFactor, coverageLevel], { error: coverageRequirement })),
  frequency: optional(list(members({ from: lowestFrequency, to: frequency, ofReading: fraction }))),
  crestFactor: optional(list(members({ above: crestFactor, ofReading: fraction }))),
  drift: optional(fraction),
});
const givenFunction = members({
  quantity: quantityChoice,
  ranges: list(range, 1),
  accuracy: optional(givenAccuracy),
});
type RangeInNumbers = WithNumbers<z.output<typeof range>, 'maximum' | 'resolution'>;
type AccuracyInNumbers = WithNumbers<z.output<typeof givenAccuracy>, 'floor'>;
// The check reads the texts of ranges and accuracy, whose unit follows from the quantity beside them.
const instrumentFunction = crossCheck(givenFunction, readInQuantity) as unknown as z.ZodMiniType<
  Omit<z.output<typeof givenFunction>, 'ranges' | 'accuracy'> & {
    ranges: RangeInNumbers[];
    accuracy?: AccuracyInNumbers;
  },
  z.input<typeof givenFunction>
>;

const instrument = crossCheck(
  members({
    name: line,
    identification: optional(blankableLine),
    calibratedUntil: optional(blankableLine),
    reads: list(instrumentFunction, 1),
    maximumPeakVoltage: optional(peakVoltage),
    maximumCrestFactor: optional(crestFactor),
    readsAt: optional(choice(['load', 'generator'])),
    frequencyRange: optional(
      members({
        lower: lowestFrequency,
        upper: frequency,
      }),
    ),
  }),
  ({ reads, frequencyRange }, report) => {
    reportRepeats(
      items(reads).map((entry) => entry?.quantity),
      (i) => ['reads', i, 'quantity'],
      report,
    );
    checkLimits(frequencyRange ?? {}, (code, path, ...rest) => report(code, ['frequencyRange', ...path], ...rest));
  },
);

const relativePermittivity = optional(plainNumber.check(z.gte(1, 'must be 1 or more')));

/** Build of a pair of leads. */
const geometry = z.discriminatedUnion(
  'kind',
  [
    members({ kind: z.literal('two-wire'), spacing: length, diameter: length, relativePermittivity }),
    members({ kind: z.literal('coaxial'), innerDiameter: length, outerDiameter: length, relativePermittivity }),
    members({ kind: z.literal('constants'), inductance: notNegative, capacitance: notNegative }),
  ],
  { error: 'must be one of: two-wire, coaxial, constants' },
);

const load = crossCheck(
  members({
    id: identifier,
    resistance,
    powerRating: power,
    maximumPeakVoltage: optional(peakVoltage),
    overload: optional(members({ power, on: duration, off: pause })),
    tolerance: optional(fraction),
    certificate: optional(
      members({
        expandedUncertainty: resistance,
        coverage: z.union([coverageFactor, coverageLevel], { error: 'must be { factor } or { level }' }),
      }),
    ),
    temperature: optional(members({ coefficient: plainNumber, rise: notNegative })),
    strays: optional(fraction),
    seriesInductance: optional(inductance),
    parallelCapacitance: optional(capacitance),
    heat: optional(members({ thermalResistance: positive, timeConstant: duration, maximumRise: positive })),
  }),
  ({ powerRating, overload, tolerance, certificate }, report) => {
    if (tolerance !== undefined && certificate !== undefined) {
      report('contradiction', ['tolerance'], tolerance, 'must be absent where a certificate is given');
    }
    const [rating, power] = [finite(powerRating), finite(overload?.power)];
    if (rating === undefined || power === undefined || power >= rating) return;
    report(
      'contradiction',
      ['overload', 'power'],
      power,
      `must not be below the power rating without a time limit, ${rating} W`,
    );
  },
);

/** What stands on the bench. */
export const benchSchema = describeForSchema(
  crossCheck(
    members({
      ...header('bench'),
      note: optional(prose),
      name: line,
      instrument,
      loads: list(load, 1),
      leads: optional(
        list(
          members({
            id: identifier,
            name: line,
            circuits: list(circuit, 1),
            maximumPeakVoltage: optional(peakVoltage),
            length: optional(length),
            geometry: optional(geometry),
          }),
        ),
      ),
      resistanceBox: optional(resistanceBox),
      fixture: optional(series),
      timing: optional(members({ limits: pause })),
      reads: optional(quantityChoice),
      substitution: optional(members({ maximumDifference: optional(fraction), negligible: optional(fraction) })),
      times: optional(
        members({
          connect: optional(pause),
          changeLoad: optional(pause),
          changeSetting: optional(pause),
          read: optional(pause),
        }),
      ),
      decisionRule: optional(decisionRule),
    }),
    ({ instrument: meter, loads, leads, reads }, report) => {
      reportRepeats(
        items(loads).map((entry) => entry?.id),
        (i) => ['loads', i, 'id'],
        report,
      );
      reportRepeats(
        items(leads).map((entry) => entry?.id),
        (i) => ['leads', i, 'id'],
        report,
      );
      const functions = items(meter?.reads).map((entry) => entry?.quantity);
      if (!isQuantity(reads) || functions.length === 0 || !functions.every(isQuantity) || functions.includes(reads))
        return;
      report(
        'unknown-choice',
        ['reads'],
        reads,
        `must be a quantity that the instrument reads: ${functions.join(', ')}`,
      );
    },
  ),
  { title: 'What stands on the bench: instrument, loads, leads' },
);

/** Reads the ranges and the fixed part of the accuracy of an instrument in the unit of their quantity. */
function readInQuantity(value: NonNullable<Loose<InstrumentFunction>>, report: Report): void {
  if (!isQuantity(value.quantity)) return;
  const rule = ruleFor(value.quantity);
  const { accuracy } = value;
  if (accuracy?.floor !== undefined) {
    const floor = readQuantity(accuracy.floor, ['accuracy', 'floor'], { ...rule, range: 'zero or more' }, report);
    if (floor !== undefined) accuracy.floor = floor;
  }
  items(value.ranges).forEach((entry, i) => {
    if (!entry) return;
    const maximum = readQuantity(entry.maximum, ['ranges', i, 'maximum'], rule, report);
    const resolution = readQuantity(entry.resolution, ['ranges', i, 'resolution'], rule, report);
    if (maximum !== undefined) entry.maximum = maximum;
    if (resolution !== undefined) entry.resolution = resolution;
    if (maximum !== undefined && resolution !== undefined && resolution >= maximum) {
      const hint = 'The resolution is one step of the last digit.';
      report('contradiction', ['ranges', i, 'resolution'], entry.resolution, 'must be smaller than the maximum', hint);
    }
  });
}
