import type * as z from 'zod/mini';
import { type Fault, nearName } from '../checks/index.js';
import { faultOf } from './fault-list.js';
import type { IssueDetails } from './parts/report-fault.js';
import { pathText } from './path-text.js';

type Issue = z.core.$ZodIssue;

/** The faults that an issue of zod stands for. */
export function faultsFromIssue(issue: Issue, above: readonly PropertyKey[] = []): readonly Fault[] {
  const path = [...above, ...issue.path];
  const place = pathText(path);
  const { input } = issue;
  const needed = issue.message;
  switch (issue.code) {
    case 'custom': {
      const { fault, hint } = (issue.params ?? { fault: 'text-unsuitable' }) as unknown as IssueDetails;
      return [faultOf(fault, place, input, needed, hint)];
    }
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownMember(key, path, needed.split(' ')));
    case 'invalid_type':
      if (input === undefined) return [missing(place, typeRequirement(issue.expected))];
      return [wrongType(place, input, typeRequirement(issue.expected))];
    case 'invalid_union':
      return unionFaults(issue, path, needed);
    case 'invalid_value': {
      if (input === undefined) return [missing(place, needed)];
      const near = typeof input === 'string' ? nearName(input, issue.values.map(String)) : undefined;
      return [
        faultOf('unknown-choice', place, input, needed, near === undefined ? undefined : `Did you mean "${near}"?`),
      ];
    }
    case 'too_small':
    case 'too_big':
      if (issue.origin === 'string') return [faultOf('text-unsuitable', place, input, needed)];
      return [faultOf('out-of-range', place, input, needed)];
    case 'invalid_format':
      return [faultOf('text-unsuitable', place, input, needed)];
    case 'invalid_key':
      return issue.issues.map(() => faultOf('text-unsuitable', place, path.at(-1), 'must be a plain name'));
    default:
      return [faultOf('wrong-type', place, input, needed)];
  }
}

function unionFaults(
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: readonly PropertyKey[],
  needed: string,
): readonly Fault[] {
  const place = pathText(path);
  if (issue.input === undefined) return [missing(place, needed)];
  if (issue.discriminator !== undefined) {
    // The input is the whole object; the member that tells its forms apart is what is wrong.
    const said = (issue.input as Record<string, unknown>)[issue.discriminator];
    return [said === undefined ? missing(place, needed) : faultOf('unknown-choice', place, said, needed)];
  }
  // Where one of the forms was meant and is wrong inside, what is wrong inside says more than a list of forms.
  const inside = issue.errors.filter((issues) => issues.some((inner) => inner.path.length > 0));
  const [meant] = inside;
  if (inside.length === 1 && meant !== undefined) return meant.flatMap((inner) => faultsFromIssue(inner, path));
  return [wrongType(place, issue.input, needed)];
}

function wrongType(place: string, input: unknown, needed: string): Fault {
  if (typeof input === 'number' && !Number.isFinite(input)) {
    return faultOf('not-a-number', place, input, 'must be a finite number');
  }
  const hint = input === null ? 'Leave the member out when there is nothing to say.' : undefined;
  return faultOf('wrong-type', place, input, needed, hint);
}

function missing(place: string, needed: string): Fault {
  return faultOf('missing-member', place, undefined, `must be given: it ${needed}`);
}

function unknownMember(key: string, path: readonly PropertyKey[], known: readonly string[]): Fault {
  const near = nearName(key, known);
  const requirement = `must be one of the known members: ${known.join(', ')}`;
  return faultOf(
    'unknown-member',
    pathText([...path, key]),
    key,
    requirement,
    near === undefined ? undefined : `Did you mean "${near}"?`,
  );
}

function typeRequirement(expected: string): string {
  const words: Readonly<Record<string, string>> = {
    string: 'must be text',
    number: 'must be a number',
    int: 'must be a whole number',
    boolean: 'must be true or false',
    array: 'must be a list',
    object: 'must be an object with members',
    record: 'must be an object with members',
  };
  return words[expected] ?? 'must be given';
}
