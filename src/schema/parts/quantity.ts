import * as z from 'zod/mini';
import { describeForSchema } from './json-schema-notes.js';
import { type QuantityRule, quantityPattern } from './quantity-pattern.js';
import { readQuantity } from './read-quantity.js';
import { reporter } from './report-fault.js';

const bounds = {
  positive: { exclusiveMinimum: 0 },
  'zero or more': { minimum: 0 },
  'from 0 to 1': { minimum: 0, maximum: 1 },
} as const;

const siUnits: Readonly<Record<QuantityRule['kind'], string>> = {
  power: 'watts',
  current: 'amperes rms',
  voltage: 'volts',
  resistance: 'ohms',
  frequency: 'hertz',
  time: 'seconds',
  inductance: 'henries',
  capacitance: 'farads',
  length: 'metres',
  fraction: 'the whole, 0.2 for 20 %',
};

const exampleText: Readonly<Record<QuantityRule['kind'], string>> = {
  power: '120 W',
  current: '750 mA',
  voltage: '90 V',
  resistance: '500 ohm',
  frequency: '430 kHz',
  time: '10 s',
  inductance: '50 nH',
  capacitance: '20 pF',
  length: '0.5 m',
  fraction: '20 %',
};

/** A number in SI units, or text with a unit; what comes out is the number. `id` names it in the JSON Schema. */
function quantity(id: string, rule: QuantityRule): z.ZodMiniType<number, number | string> {
  const number = describeForSchema(z.number(), {
    description: `In ${siUnits[rule.kind]}.`,
    ...bounds[rule.range ?? 'positive'],
  });
  const text = describeForSchema(z.string(), {
    description: 'A number and its unit.',
    pattern: quantityPattern(rule),
    examples: [exampleOf(rule)],
  });
  const read = z.transform((input: number | string, context) => {
    const value = readQuantity(input, [], rule, reporter(context.issues));
    // Zod discards a value that has faults; the input is as good as any.
    return value ?? (input as number);
  });
  const requirement = `must be a number of ${siUnits[rule.kind]}, or text with its unit, such as "${exampleOf(rule)}"`;
  return z.pipe(describeForSchema(z.union([number, text], { error: requirement }), { id }), read);
}

export const power: QuantitySchema = quantity('Power', { kind: 'power' });
export const current: QuantitySchema = quantity('Current', { kind: 'current' });
export const voltage: QuantitySchema = quantity('Voltage', { kind: 'voltage' });
export const peakVoltage: QuantitySchema = quantity('PeakVoltage', { kind: 'voltage', form: 'peak' });
export const peakReading: QuantitySchema = quantity('PeakReading', {
  kind: 'voltage',
  form: 'peak',
  range: 'zero or more',
});
export const resistance: QuantitySchema = quantity('Resistance', { kind: 'resistance' });
export const resistanceLimit: QuantitySchema = quantity('ResistanceLimit', {
  kind: 'resistance',
  range: 'zero or more',
});
export const frequency: QuantitySchema = quantity('Frequency', { kind: 'frequency' });
export const lowestFrequency: QuantitySchema = quantity('LowestFrequency', {
  kind: 'frequency',
  range: 'zero or more',
});
export const duration: QuantitySchema = quantity('Duration', { kind: 'time' });
export const pause: QuantitySchema = quantity('Pause', { kind: 'time', range: 'zero or more' });
export const inductance: QuantitySchema = quantity('Inductance', { kind: 'inductance', range: 'zero or more' });
export const capacitance: QuantitySchema = quantity('Capacitance', { kind: 'capacitance', range: 'zero or more' });
export const length: QuantitySchema = quantity('Length', { kind: 'length' });
export const fraction: QuantitySchema = quantity('Fraction', { kind: 'fraction', range: 'from 0 to 1' });

type QuantitySchema = z.ZodMiniType<number, number | string>;

/** A number or a text, to be read when the members beside it say of what. */
export function unresolved(description: string): z.ZodMiniType<number | string> {
  return describeForSchema(
    z.union([z.number(), z.string()], { error: 'must be a number in SI units, or text with a unit' }),
    { description },
  );
}

function exampleOf({ kind, form }: QuantityRule): string {
  return form === 'peak' ? '1.5 kV peak' : exampleText[kind];
}
