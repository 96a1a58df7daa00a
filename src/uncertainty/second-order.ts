import type { DifferentiableModel } from './differentiation/differentiate-model.js';
import type { UncertainInput } from './uncertain-input.js';

/** Second-order terms of a propagation, and what they say of the first order. */
export interface SecondOrder {
  /** Standard uncertainty with the second-order terms; absent where these leave no positive variance. */
  readonly standardUncertainty?: number;
  /** By how much the expected value of the output differs from the model at the inputs' values. */
  readonly shift: number;
  /** True when the first order is enough: see `statement`. */
  readonly firstOrderEnough: boolean;
  /** The same in a sentence, with the numbers. */
  readonly statement: string;
}

/** First order is called enough when second-order terms change the uncertainty by at most this part of it. */
const permittedChange = 0.05;

/** … and when they shift the expected value by at most this part of the uncertainty. */
const permittedShift = 0.25;

/**
 * The terms that JCGM 100:2008, 5.1.2, Note gives for a model that is not linear:
 * ΣΣ [½(∂²f/∂xᵢ∂xⱼ)² + (∂f/∂xᵢ)(∂³f/∂xᵢ∂xⱼ²)] u²(xᵢ) u²(xⱼ).
 * All derivatives are taken along directions scaled by the standard uncertainties.
 */
export function secondOrderTerms(
  model: DifferentiableModel,
  names: readonly string[],
  inputs: Readonly<Record<string, UncertainInput>>,
  firstOrder: number,
  correlated: boolean,
): SecondOrder {
  const uncertain = names.filter((name) => (inputs[name] as UncertainInput).standardUncertainty > 0);
  const u = (name: string): number => (inputs[name] as UncertainInput).standardUncertainty;
  const single = uncertain.map((name) => model.along({ [name]: u(name) }));
  let terms = 0;
  let shift = 0;
  single.forEach((d, i) => {
    shift += d.second / 2;
    terms += 0.5 * d.second ** 2 + d.first * d.third;
    for (let j = i + 1; j < uncertain.length; j++) {
      const a = uncertain[i] as string;
      const b = uncertain[j] as string;
      const e = single[j] as (typeof single)[number];
      const plus = model.along({ [a]: u(a), [b]: u(b) });
      const minus = model.along({ [a]: u(a), [b]: -u(b) });
      const mixed = (plus.second - minus.second) / 4;
      const abb = (plus.third + minus.third - 2 * d.third) / 6;
      const aab = (plus.third - minus.third - 2 * e.third) / 6;
      terms += mixed ** 2 + d.first * abb + e.first * aab;
    }
  });
  return judge(firstOrder, firstOrder ** 2 + terms, shift, correlated);
}

function judge(firstOrder: number, variance: number, shift: number, correlated: boolean): SecondOrder {
  const suffix = correlated ? ' Correlations are not in the second-order terms.' : '';
  if (!(variance > 0)) {
    const enough = variance === 0 && firstOrder === 0 && shift === 0;
    const statement = enough
      ? 'No input has an uncertainty that reaches the result.'
      : 'The second-order terms leave no positive variance: the series does not hold. Use Monte Carlo.';
    return { shift, firstOrderEnough: enough, statement: statement + suffix };
  }
  const standardUncertainty = Math.sqrt(variance);
  if (firstOrder === 0) {
    const statement =
      'The first order gives no uncertainty at all, because every sensitivity is 0 here; the second order does. Use Monte Carlo.';
    return { standardUncertainty, shift, firstOrderEnough: false, statement: statement + suffix };
  }
  const change = standardUncertainty / firstOrder - 1;
  const relativeShift = Math.abs(shift) / firstOrder;
  const enough = Math.abs(change) <= permittedChange && relativeShift <= permittedShift;
  const statement =
    `Second-order terms change the standard uncertainty by ${percent(change)} and shift the value by ` +
    `${percent(relativeShift)} of it: the first order ${enough ? 'is enough' : 'is not enough. Use Monte Carlo'}.`;
  return { standardUncertainty, shift, firstOrderEnough: enough, statement: statement + suffix };
}

function percent(fraction: number): string {
  const size = Math.abs(fraction) * 100;
  return size < 0.01 ? 'less than 0.01 %' : `${Number(size.toPrecision(2))} %`;
}
