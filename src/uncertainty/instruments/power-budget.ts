import { type Quantity, quantityUnits } from '../../circuit/index.js';
import type { Values } from '../differentiation/model.js';
import { type Propagated, propagate } from '../propagate.js';
import type { UncertainInput } from '../uncertain-input.js';
import type { AccuracyStatement, ReadingConditions } from './accuracy-statement.js';
import { type LoadStatement, loadErrors } from './load-errors.js';
import { readingErrors } from './reading-errors.js';

/** A reading with the instrument's statement for it. */
export interface StatedReading extends ReadingConditions {
  readonly accuracy: AccuracyStatement;
}

/** How a power was measured: current and load (I²R), voltage and load (V²/R), or voltage and current (V·I). */
export type PowerMeasurement =
  | { readonly by: 'current'; readonly current: StatedReading; readonly load: LoadStatement }
  | { readonly by: 'voltage'; readonly voltage: StatedReading; readonly load: LoadStatement }
  | { readonly by: 'current and voltage'; readonly current: StatedReading; readonly voltage: StatedReading };

/**
 * Budget of a power that was measured through a current, a voltage, or both.
 * V·I is the active power only where current and voltage are in phase: a resistive load.
 *
 * @param measurement Readings, instrument statements, load
 * @returns The budget, in watts
 * @throws CalculationError as `readingErrors` and `loadErrors`
 * @source JCGM 100:2008, 5.1; P = I²R, P = V²/R, P = V·I
 * @example
 * ```ts
 * import { powerBudget } from 'esu-limits/uncertainty';
 * const current = { reading: 0.5, range: { maximum: 1, resolution: 0.001 }, accuracy: { ofReading: 0.01 } };
 * const { value, standardUncertainty } = powerBudget({ by: 'current', current, load: { resistance: 400, tolerance: 0.01 } });
 * value; // → 100
 * standardUncertainty.toFixed(3); // → "1.296"
 * ```
 */
export function powerBudget(measurement: PowerMeasurement): Propagated {
  if (measurement.by === 'current and voltage') {
    const current = factor('current', measurement.current);
    const voltage = factor('voltage', measurement.voltage);
    const evaluate = (x: Values): number => current.value(x) * voltage.value(x);
    return propagate(
      {
        evaluate,
        sensitivities: {
          ...sensitivitiesOf(current.names, (x) => voltage.value(x)),
          ...sensitivitiesOf(voltage.names, (x) => current.value(x)),
        },
      },
      { ...current.inputs, ...voltage.inputs },
      { secondOrder: false },
    );
  }
  const { by, load } = measurement;
  const read = factor(by, measurement.by === 'current' ? measurement.current : measurement.voltage);
  const ofLoad = loadErrors(load);
  const names = Object.keys(ofLoad);
  const exponent = by === 'current' ? 1 : -1;
  const resistance = (x: Values): number => names.reduce((r, name) => r * (1 + (x[name] as number)), load.resistance);
  const evaluate = (x: Values): number => read.value(x) ** 2 * resistance(x) ** exponent;
  return propagate(
    {
      evaluate,
      sensitivities: {
        ...sensitivitiesOf(read.names, (x) => 2 * read.value(x) * resistance(x) ** exponent),
        ...Object.fromEntries(
          names.map((name) => [name, (x: Values) => (exponent * evaluate(x)) / (1 + (x[name] as number))]),
        ),
      },
    },
    { ...read.inputs, ...ofLoad },
    { secondOrder: false },
  );
}

interface Factor {
  readonly names: readonly string[];
  readonly inputs: Readonly<Record<string, UncertainInput>>;
  /** Reading plus its errors. */
  readonly value: (x: Values) => number;
}

function factor(quantity: Quantity, stated: StatedReading): Factor {
  const errors = readingErrors(stated.accuracy, stated, quantityUnits[quantity]);
  const inputs: Record<string, UncertainInput> = {};
  for (const [name, input] of Object.entries(errors)) {
    inputs[`${quantity}.${name}`] = { ...input, description: `${quantity}: ${input.description}` };
  }
  const names = Object.keys(inputs);
  return { names, inputs, value: (x) => names.reduce((sum, name) => sum + (x[name] as number), stated.reading) };
}

function sensitivitiesOf(names: readonly string[], f: (x: Values) => number): Record<string, (x: Values) => number> {
  return Object.fromEntries(names.map((name) => [name, f]));
}
