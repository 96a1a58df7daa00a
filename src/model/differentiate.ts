import { add, multiply, simplify, unity, zero } from './arithmetic.js';
import { limits, modelFunctions } from './closed-list.js';
import { ownRule } from './derivative-rules.js';
import { math } from './math.js';
import { printTerm } from './print-term.js';
import { readTerm } from './read-term.js';
import { refuse } from './refuse.js';
import { countParts, dependsOn, partsOf, type Term, withParts } from './term.js';

/** A part with a rule of its own, and the name that stands in for it. */
interface Held {
  readonly name: string;
  readonly part: Term;
  readonly derivative: Term;
}

/**
 * The partial derivative of a term.
 *
 * mathjs differentiates. Parts for which it has no good rule are held: a name stands in for each of them, and the
 * chain rule adds what they contribute, d/dx f(x, h(x)) = ∂f/∂x + ∂f/∂h · dh/dx.
 *
 * @throws CalculationError `expression-refused` if the term is so large that its derivative would be unreadable
 */
export function differentiate(term: Term, symbol: string): Term {
  if (!dependsOn(term, symbol)) return zero;
  if (term.kind === 'symbol') return unity;
  if (countParts(term) > limits.parts) {
    return refuse(printTerm(term), `must have at most ${limits.parts} parts to be differentiated`);
  }
  const derive = (part: Term) => differentiate(part, symbol);
  const rule = ownRule(term);
  if (rule) return rule(derive);
  const held: Held[] = [];
  const outline = hold(term, symbol, derive, held);
  const direct = dependsOn(outline, symbol) ? byRules(outline, symbol) : zero;
  const derivative = held.reduce(
    (sum, { name, derivative }) => add(sum, multiply(byRules(outline, name), derivative)),
    direct,
  );
  return release(derivative, new Map(held.map(({ name, part }) => [name, part])));
}

/** Puts a name in the place of each part that depends on the symbol and has a rule of its own. */
function hold(term: Term, symbol: string, derive: (part: Term) => Term, held: Held[]): Term {
  if (!dependsOn(term, symbol)) return term;
  const rule = ownRule(term);
  if (!rule) {
    return withParts(
      term,
      partsOf(term).map((part) => hold(part, symbol, derive, held)),
    );
  }
  // No symbol of a model begins with an underscore.
  const name = `_${held.length}`;
  held.push({ name, part: term, derivative: rule(derive) });
  return { kind: 'symbol', name };
}

function release(term: Term, parts: ReadonlyMap<string, Term>): Term {
  if (term.kind === 'symbol') return parts.get(term.name) ?? term;
  return withParts(
    term,
    partsOf(term).map((part) => release(part, parts)),
  );
}

function byRules(term: Term, symbol: string): Term {
  if (term.kind === 'symbol') return term.name === symbol ? unity : zero;
  const expression = printTerm(term);
  const node = math.derivative(math.parse(expression), symbol, { simplify: false });
  return simplify(readTerm(node, modelFunctions, (requirement) => refuse(expression, requirement)));
}
