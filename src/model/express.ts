import { CalculationError, describe, type Fault, fail, requireFinite } from '../checks/index.js';
import { type Compiled, compile, type Values } from './compile.js';
import { failMissingValue } from './missing-value.js';
import type { ModelExpression, ModelInputs } from './model.js';
import { nearSymbol } from './near-symbol.js';
import { symbolsOf, type Term } from './term.js';
import { termTex } from './tex/term-tex.js';

/**
 * Makes the public form of a term.
 *
 * @param guards Terms that must have a value too: a derivative has none where its model has none
 */
export function express(
  term: Term,
  expression: string,
  guards: readonly Term[],
  unit: string | undefined,
): ModelExpression {
  const needed = [...new Set([...guards, term].flatMap(symbolsOf))].sort();
  const named = evaluator(needed, guards, term);
  return Object.freeze({
    expression,
    symbols: Object.freeze(symbolsOf(term)),
    ...(unit === undefined ? {} : { unit }),
    tex: termTex(term),
    evaluate: (inputs: ModelInputs) => named(readInputs(inputs, needed)),
    asFunction: (order: readonly string[]) => asFunction(order, needed, guards, term),
  });
}

function evaluator(order: readonly string[], guards: readonly Term[], term: Term): Compiled {
  const of = checked(term, order);
  if (guards.length === 0) return of;
  const before = guards.map((guard) => checked(guard, order));
  return (values) => {
    for (const guard of before) guard(values);
    return of(values);
  };
}

function checked(term: Term, order: readonly string[]): Compiled {
  const of = compile(term, order);
  return (values) => {
    const value = of(values);
    return value - value === 0 ? value : failMissingValue(term, order, values);
  };
}

function asFunction(
  order: readonly string[],
  needed: readonly string[],
  guards: readonly Term[],
  term: Term,
): (...values: number[]) => number {
  const names = checkNames(order, needed);
  const run = evaluator(names, guards, term);
  return (...values) => {
    if (values.length !== names.length) {
      fail('wrong-count', 'values', values, `must be ${names.length}: ${names.join(', ')}`);
    }
    for (let i = 0; i < values.length; i++) {
      const value = values[i] as number;
      if (value - value !== 0 || typeof value !== 'number') requireFinite(value, names[i] as string);
    }
    return run(values);
  };
}

/** Names of arguments or inputs: each once, and every symbol among them. */
export function checkNames(order: readonly string[], needed: readonly string[]): readonly string[] {
  if (!Array.isArray(order)) fail('wrong-type', 'order', order, 'must be an array of symbols');
  const names: readonly string[] = [...order];
  const faults: Fault[] = [];
  for (const [i, name] of names.entries()) {
    if (typeof name !== 'string') {
      faults.push({ code: 'wrong-type', path: `order[${i}]`, received: describe(name), requirement: 'must be text' });
    } else if (names.indexOf(name) !== i) {
      const requirement = 'must be given once';
      faults.push({ code: 'duplicate', path: `order[${i}]`, received: describe(name), requirement });
    }
  }
  for (const symbol of needed.filter((name) => !names.includes(name))) {
    const requirement = `must name every symbol, and ${symbol} is not there`;
    faults.push({ code: 'missing-member', path: 'order', received: describe(order), requirement });
  }
  throwAll(faults);
  return names;
}

function readInputs(inputs: ModelInputs, needed: readonly string[]): Values {
  if (typeof inputs !== 'object' || inputs === null) fail('wrong-type', 'inputs', inputs, 'must be an object');
  const values: number[] = [];
  for (const symbol of needed) {
    const value = inputs[symbol];
    // Infinity − Infinity and NaN − NaN are no 0.
    if (typeof value !== 'number' || value - value !== 0 || !Object.hasOwn(inputs, symbol)) failInputs(inputs, needed);
    values.push(value);
  }
  return values;
}

function failInputs(inputs: ModelInputs, needed: readonly string[]): never {
  const others = Object.keys(inputs).filter((name) => !needed.includes(name));
  const faults: Fault[] = [];
  for (const symbol of needed) {
    const path = `inputs.${symbol}`;
    const value = Object.hasOwn(inputs, symbol) ? inputs[symbol] : undefined;
    if (!Object.hasOwn(inputs, symbol)) {
      const requirement = 'must be given';
      faults.push({ code: 'missing-member', path, received: 'undefined', requirement, ...nearSymbol(symbol, others) });
    } else if (typeof value !== 'number' || !Number.isFinite(value)) {
      faults.push({ code: 'not-a-number', path, received: describe(value), requirement: 'must be a finite number' });
    }
  }
  throw new CalculationError(faults[0] as Fault, faults.slice(1));
}

export function throwAll(faults: readonly Fault[]): void {
  const [first, ...further] = faults;
  if (first) throw new CalculationError(first, further);
}
