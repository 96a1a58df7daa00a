import * as z from 'zod/mini';
import { nearName } from '../../checks/index.js';
import { type RuleId, standardRules } from '../../procedure/index.js';
import { type SourceId, sources } from '../../working/index.js';
import { choice, listed } from '../parts/choice.js';
import { crossCheck, members, optional } from '../parts/members.js';
import { fraction } from '../parts/quantity.js';
import { identifier, line, prose } from '../parts/text.js';

export const ruleId = choice(['output-accuracy', 'output-monotone', 'peak-voltage', 'supply-interruption']);

export const standing = choice(['published', 'secondary', 'from memory', 'derived', 'common practice']);

export const sourceId = listed(Object.keys(sources) as SourceId[], 'a source of the bibliography');

/** A rule that a specification chooses; its parameters may be fractions or text in percent. */
export const ruleChoice = crossCheck(
  members({
    rule: ruleId,
    parameters: optional(z.record(identifier, fraction)),
  }),
  ({ rule, parameters }, report) => {
    const chosen = typeof rule === 'string' && Object.hasOwn(standardRules, rule);
    const definition = chosen ? standardRules[rule as RuleId] : undefined;
    if (definition === undefined || typeof parameters !== 'object' || parameters === null) return;
    const known = Object.keys(definition.parameters);
    for (const name of Object.keys(parameters)) {
      if (known.includes(name)) continue;
      const near = nearName(name, known);
      const hint = near === undefined ? undefined : `Did you mean "${near}"?`;
      report(
        'unknown-choice',
        ['parameters', name],
        name,
        `must be a parameter of the rule: ${known.join(', ') || 'none'}`,
        hint,
      );
    }
  },
);

/** A rule as a plan carries it. */
export const standardRule = members({
  title: line,
  source: sourceId,
  clause: line,
  standing,
  text: prose,
  parameters: z.record(identifier, z.number()),
});
