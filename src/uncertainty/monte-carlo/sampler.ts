import { fail } from '../../checks/index.js';
import {
  choleskyFactor,
  createRandom,
  fillArcsine,
  fillNormal,
  fillStudentT,
  fillUniform,
  nextChiSquared,
  type Random,
} from '../../numeric/index.js';
import { type Correlation, correlationMatrix } from '../correlation.js';
import type { UncertainInput } from '../uncertain-input.js';

/** Draws the inputs of many trials: each call fills one array for each input. */
export interface Sampler {
  readonly random: Random;
  readonly names: readonly string[];
  /** One array for each input, in the order of the names; filled anew by every `draw`. */
  readonly columns: readonly Float64Array[];
  readonly draw: () => void;
}

/** A sampler of blocks of a fixed length. */
export function createSampler(
  seed: number,
  names: readonly string[],
  inputs: Readonly<Record<string, UncertainInput>>,
  correlations: readonly Correlation[],
  length: number,
): Sampler {
  const random = createRandom(seed);
  const columns = names.map(() => new Float64Array(length));
  const scratch = new Float64Array(length);
  const linked = new Set(correlations.filter((c) => c.coefficient !== 0).flatMap((c) => c.between));
  const together = names.filter((name) => linked.has(name));
  const drawTogether =
    together.length === 0 ? undefined : jointDraw(random, together, names, inputs, correlations, columns);
  const alone = names
    .map((name, i) => ({ name, column: columns[i] as Float64Array }))
    .filter(({ name }) => !linked.has(name));
  return {
    random,
    names,
    columns,
    draw: () => {
      for (const { name, column } of alone) fillColumn(random, column, scratch, inputs[name] as UncertainInput);
      drawTogether?.();
    },
  };
}

function fillColumn(random: Random, column: Float64Array, scratch: Float64Array, input: UncertainInput): void {
  const { value, standardUncertainty, distribution } = input;
  switch (distribution.kind) {
    case 'normal':
      fillNormal(random, column, value, standardUncertainty);
      return;
    case 'student-t':
      fillStudentT(random, column, distribution.degreesOfFreedom, value, distribution.scale);
      return;
    case 'rectangular':
      fillAround(random, column, value, distribution.halfWidth);
      return;
    case 'arcsine':
      fillArcsine(random, column, value, distribution.halfWidth);
      return;
    case 'triangular':
      sumOfTwo(random, column, scratch, value, distribution.halfWidth, 0);
      return;
    case 'trapezoidal':
      sumOfTwo(random, column, scratch, value, distribution.halfWidth, distribution.shape);
      return;
    case 'curvilinear-trapezoid': {
      const { halfWidth, inexactness } = distribution;
      fillAround(random, column, 0, 1);
      fillAround(random, scratch, 0, 1);
      for (let i = 0; i < column.length; i++) {
        column[i] = value + (column[i] as number) * (halfWidth + inexactness * (scratch[i] as number));
      }
      return;
    }
  }
}

/** Numbers that are equally likely anywhere within a half-width of a centre. */
function fillAround(random: Random, column: Float64Array, centre: number, halfWidth: number): void {
  fillUniform(random, column);
  for (let i = 0; i < column.length; i++) column[i] = centre + halfWidth * (2 * (column[i] as number) - 1);
}

/** A trapezoid is the sum of two rectangles; with a top of no width it is a triangle. */
function sumOfTwo(
  random: Random,
  column: Float64Array,
  scratch: Float64Array,
  value: number,
  halfWidth: number,
  shape: number,
): void {
  fillAround(random, column, 0, 1);
  fillAround(random, scratch, 0, 1);
  const wide = (halfWidth * (1 + shape)) / 2;
  const narrow = (halfWidth * (1 - shape)) / 2;
  for (let i = 0; i < column.length; i++) {
    column[i] = value + wide * (column[i] as number) + narrow * (scratch[i] as number);
  }
}

/** Correlated inputs: jointly normal, or jointly t where all come from simultaneous readings of one length. */
function jointDraw(
  random: Random,
  together: readonly string[],
  names: readonly string[],
  inputs: Readonly<Record<string, UncertainInput>>,
  correlations: readonly Correlation[],
  columns: readonly Float64Array[],
): () => void {
  const degrees = commonDegrees(together, inputs);
  const within = correlations.filter((c) => together.includes(c.between[0]) && together.includes(c.between[1]));
  const { rows, rank } = choleskyFactor(correlationMatrix(together, within).rows, 'correlations');
  const length = (columns[0] as Float64Array).length;
  const standard = Array.from({ length: rank }, () => new Float64Array(length));
  return () => {
    for (const column of standard) fillNormal(random, column);
    const scales = new Float64Array(length).fill(1);
    if (degrees !== 'infinite') {
      for (let i = 0; i < length; i++) scales[i] = 1 / Math.sqrt(nextChiSquared(random, degrees) / degrees);
    }
    together.forEach((name, k) => {
      const { value, standardUncertainty } = inputs[name] as UncertainInput;
      const row = rows[k] as Float64Array;
      const column = columns[names.indexOf(name)] as Float64Array;
      for (let i = 0; i < length; i++) {
        let z = 0;
        for (let j = 0; j < rank; j++) z += (row[j] as number) * ((standard[j] as Float64Array)[i] as number);
        column[i] = value + standardUncertainty * z * (scales[i] as number);
      }
    });
  };
}

function commonDegrees(
  together: readonly string[],
  inputs: Readonly<Record<string, UncertainInput>>,
): number | 'infinite' {
  const all = together.map((name) => (inputs[name] as UncertainInput).distribution);
  if (all.every((d) => d.kind === 'normal')) return 'infinite';
  const first = all[0];
  const same = all.every(
    (d) => d.kind === 'student-t' && first?.kind === 'student-t' && d.degreesOfFreedom === first.degreesOfFreedom,
  );
  if (same && first?.kind === 'student-t') return first.degreesOfFreedom;
  const kinds = together.map((name, i) => `${name} ${all[i]?.kind}`).join(', ');
  return fail(
    'wrong-type',
    'correlations',
    kinds,
    'correlated inputs must all be normal, or all come from series of readings of one length',
    'Give correlated inputs as normal, or write the common influence as an input of its own.',
  );
}
