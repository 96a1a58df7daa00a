import type { DegreesOfFreedom } from './uncertain-input.js';

/** What one input brings to the effective degrees of freedom. */
export interface DegreesTerm {
  readonly name: string;
  /** Sensitivity times standard uncertainty. */
  readonly contribution: number;
  readonly degreesOfFreedom: DegreesOfFreedom;
}

/** Effective degrees of freedom, or the reason why there are none. */
export type EffectiveDegrees = { readonly degreesOfFreedom: DegreesOfFreedom } | { readonly reason: string };

/**
 * Effective degrees of freedom by the Welch–Satterthwaite formula.
 * Not defined when a correlated input has finite degrees of freedom, or when there is no uncertainty.
 *
 * @source JCGM 100:2008, G.4.1 (G.2b)
 */
export function effectiveDegrees(
  terms: readonly DegreesTerm[],
  combined: number,
  correlated: ReadonlySet<string>,
): EffectiveDegrees {
  if (correlated.size > 0) {
    const blocking = terms.filter(
      (t) => correlated.has(t.name) && t.degreesOfFreedom !== 'infinite' && t.contribution !== 0,
    );
    if (blocking.length > 0) {
      const names = blocking.map((t) => t.name).join(', ');
      return {
        reason: `The Welch–Satterthwaite formula asks for independent inputs; ${names} are correlated and have finite degrees of freedom.`,
      };
    }
  }
  if (!(combined > 0)) return { reason: 'The combined standard uncertainty is 0.' };
  let denominator = 0;
  for (const { contribution, degreesOfFreedom } of terms) {
    if (degreesOfFreedom === 'infinite') continue;
    const share = (contribution / combined) * (contribution / combined);
    denominator += (share * share) / degreesOfFreedom;
  }
  const degreesOfFreedom = 1 / denominator;
  return { degreesOfFreedom: Number.isFinite(degreesOfFreedom) ? degreesOfFreedom : 'infinite' };
}
