import { CalculationError } from '../checks/index.js';
import { compile, type Values } from './compile.js';
import { printTerm } from './print-term.js';
import { partsOf, type Term } from './term.js';

/** Inputs that an error shows at most. */
const shown = 12;
const unbounded: readonly string[] = ['log', 'log10', 'log1p', 'log2', 'atanh'];

/**
 * The error for a term without a finite value: names the innermost part that has none although its own parts have,
 * and shows the inputs.
 *
 * @throws CalculationError `outside-domain`, `result-out-of-range`
 */
export function failMissingValue(term: Term, order: readonly string[], values: Values): never {
  const culprit = innermost(term, order, values);
  const parts = partsOf(culprit).map((part) => compile(part, order)(values));
  const value = compile(culprit, order)(values);
  const inputs = order.slice(0, shown).map((symbol, i) => `${symbol} = ${values[i]}`);
  const at = [...inputs, ...(order.length > shown ? ['…'] : [])].join(', ');
  const outside = isOutsideDomain(culprit, parts, value);
  throw new CalculationError({
    code: outside ? 'outside-domain' : 'result-out-of-range',
    path: 'expression',
    received: at === '' ? 'no inputs' : at,
    requirement: outside
      ? `${quote(culprit)} must have a value at the inputs; it would be that of ${valuesText(culprit, parts)}`
      : `${quote(culprit)} must be a number of ordinary size at the inputs`,
    hint: outside ? 'Check the inputs against the model.' : 'Check the units of the inputs.',
  });
}

function innermost(term: Term, order: readonly string[], values: Values): Term {
  for (const part of partsOf(term)) {
    if (!Number.isFinite(compile(part, order)(values))) return innermost(part, order, values);
  }
  return term;
}

function isOutsideDomain(term: Term, parts: readonly number[], value: number): boolean {
  if (Number.isNaN(value)) return true;
  const [first, second] = parts;
  if (term.kind === 'call') return unbounded.includes(term.name) || (term.name === 'pow' && first === 0);
  if (term.kind !== 'binary') return false;
  return (term.operator === '/' && second === 0) || (term.operator === '^' && first === 0);
}

function valuesText(term: Term, parts: readonly number[]): string {
  if (term.kind === 'call') return `${term.name}(${parts.join(', ')})`;
  return term.kind === 'binary' ? parts.join(` ${term.operator} `) : parts.join('');
}

function quote(term: Term): string {
  const text = printTerm(term);
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
