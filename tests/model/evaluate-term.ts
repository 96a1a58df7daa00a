import { partsOf, type Term } from '../../src/model/term.js';
import { constant, elementary, type HyperDual, lift, over, plus, times, toThe } from './hyper-dual.js';

/** Where two are equal, neither is chosen: there is no derivative. */
const kink = constant(Number.NaN);

/** A term in hyper-dual arithmetic. `seen` receives each intermediate result. */
export function evaluateTerm(
  term: Term,
  inputs: Readonly<Record<string, HyperDual>>,
  seen: (result: HyperDual) => void,
): HyperDual {
  const result = evaluateParts(
    term,
    partsOf(term).map((part) => evaluateTerm(part, inputs, seen)),
    inputs,
  );
  seen(result);
  return result;
}

function evaluateParts(
  term: Term,
  parts: readonly HyperDual[],
  inputs: Readonly<Record<string, HyperDual>>,
): HyperDual {
  const [a, b] = parts as [HyperDual, HyperDual];
  switch (term.kind) {
    case 'number':
      return constant(term.value);
    case 'constant':
      return constant(term.name === 'pi' ? Math.PI : Math.E);
    case 'symbol':
      return inputs[term.name] as HyperDual;
    case 'negative':
      return times(constant(-1), a);
    case 'binary':
      if (term.operator === '+') return plus(a, b);
      if (term.operator === '-') return plus(a, b, -1);
      if (term.operator === '*') return times(a, b);
      return term.operator === '/' ? over(a, b) : toThe(a, b);
    case 'call':
      return call(term.name, parts);
  }
}

function call(name: string, parts: readonly HyperDual[]): HyperDual {
  const [a, b] = parts as [HyperDual, HyperDual];
  const of = elementary[name];
  if (of) return lift(a, of(a.value));
  switch (name) {
    case 'pow':
      return toThe(a, b);
    case 'hypot': {
      const sum = parts.map((part) => times(part, part)).reduce((x, y) => plus(x, y));
      return lift(sum, (elementary['sqrt'] as (x: number) => readonly [number, number, number])(sum.value));
    }
    case 'max':
      return parts.reduce((x, y) => (x.value > y.value ? x : x.value < y.value ? y : kink));
    case 'min':
      return parts.reduce((x, y) => (x.value < y.value ? x : x.value > y.value ? y : kink));
    case 'atan2': {
      // The angle turns by (x dy − y dx) / (x² + y²); its value is that of the right quadrant.
      const angle = Math.abs(b.value) > Math.abs(a.value) ? arcTangent(over(a, b)) : arcTangent(over(b, a), -1);
      return { ...angle, value: Math.atan2(a.value, b.value) };
    }
    default:
      throw new Error(`${name} has no rule in the tests`);
  }
}

function arcTangent(u: HyperDual, sign = 1): HyperDual {
  const [g, g1, g2] = (elementary['atan'] as (x: number) => readonly [number, number, number])(u.value);
  return lift(u, [sign * g, sign * g1, sign * g2]);
}
