import type { Term } from './term.js';

const strength = { '+': 1, '-': 1, '*': 2, '/': 2, '^': 3 } as const;
const atom = 4;

/** How strongly the parts of a term hold together. A sign binds as a product does. */
function strengthOf(term: Term): number {
  if (term.kind === 'binary') return strength[term.operator];
  return term.kind === 'negative' ? strength['*'] : atom;
}

/** A term as an expression: read again it has the same value, to the last bit. */
export function printTerm(term: Term): string {
  switch (term.kind) {
    case 'number':
      return String(term.value);
    case 'constant':
    case 'symbol':
      return term.name;
    case 'negative':
      // -(a * b) and (-a) * b are the same number.
      return `-${printPart(term.of, strength['*'], true)}`;
    case 'call':
      return `${term.name}(${term.parts.map(printTerm).join(', ')})`;
    case 'binary': {
      const own = strength[term.operator];
      if (term.operator === '^') return `${printPart(term.left, atom, false)}^${printPart(term.right, atom, false)}`;
      // Terms of the same strength are read from the left: those on the right keep their parentheses.
      return `${printPart(term.left, own, false)} ${term.operator} ${printPart(term.right, own + 1, true)}`;
    }
  }
}

function printPart(term: Term, least: number, noSign: boolean): string {
  const text = printTerm(term);
  return strengthOf(term) < least || (noSign && text.startsWith('-')) ? `(${text})` : text;
}
