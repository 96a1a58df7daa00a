import type { Spread } from './measurement.js';
import type { Prior } from './prior.js';
import type { DecisionRule } from './rule.js';

/** What a rule takes for granted, as sentences. */
export function assumptionsOf(rule: DecisionRule, spread: Spread | undefined): readonly string[] {
  const assumptions: string[] = [];
  if (spread !== undefined) {
    assumptions.push(
      spread.isRelative
        ? 'The standard uncertainty is the same fraction of every value.'
        : 'The standard uncertainty is the same for a reading at the value and at the limits.',
    );
  }
  switch (rule.kind) {
    case 'simple-acceptance':
      assumptions.push('The risk of a wrong decision at a limit is shared: about one half.');
      break;
    case 'specific-consumer-risk':
    case 'specific-producer-risk':
      if (spread !== undefined) assumptions.push(...distributionOf(spread));
      break;
    case 'global-consumer-risk':
      assumptions.push(...priorAssumptions(rule.prior), 'The guard band is the same at both limits.');
      break;
    case 'test-uncertainty-ratio':
      assumptions.push('The expanded uncertainty has a coverage probability of about 95 %.');
      if (rule.method === 'managed-risk') {
        assumptions.push('The items are normally distributed about the middle of the tolerance, with any spread.');
      }
      break;
  }
  return assumptions;
}

/** How the quantity is distributed about its value. */
export function distributionOf({ degreesOfFreedom }: Spread): readonly string[] {
  return [
    degreesOfFreedom === 'infinite'
      ? 'The quantity is normally distributed about the measured value.'
      : `The quantity follows Student's t with ${degreesOfFreedom} degrees of freedom about the measured value.`,
    'Nothing is known of the quantity but its measurement.',
  ];
}

const shapes: Readonly<Record<Prior['kind'], string>> = {
  normal: 'a normal distribution',
  rectangular: 'a rectangular distribution',
  gamma: 'a gamma distribution',
};

/** What global risks take for granted. */
export function priorAssumptions({ kind }: Prior): readonly string[] {
  return [
    `Before the measurement the quantity has ${shapes[kind]}, as stated.`,
    'A reading is normally distributed about the quantity.',
  ];
}
