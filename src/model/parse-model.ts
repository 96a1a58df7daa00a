import { describe, type Fault, fail } from '../checks/index.js';
import { checkSymbols, listText, unsuitable } from './check-symbols.js';
import { checkUnits } from './check-units.js';
import { modelFunctions } from './closed-list.js';
import { differentiate } from './differentiate.js';
import { divideFactors, printFactors, type UnitFactors } from './dimension/unit-factors.js';
import { checkNames, express, throwAll } from './express.js';
import type { DifferentiatedModel, MeasurementModel, ModelExpression, ModelInputs, ModelOptions } from './model.js';
import { nearSymbol } from './near-symbol.js';
import { printTerm } from './print-term.js';
import { readExpression } from './read-expression.js';
import { symbolsOf } from './term.js';
import { symbolTex } from './tex/symbol-tex.js';

/**
 * Reads a measurement model that is written as an expression.
 *
 * An expression holds numbers, symbols, `pi`, `e`, `+ - * / ^`, parentheses and the functions of `modelFunctions`;
 * everything else is refused. A product needs its sign: `2 R` is refused, since `1 / 2 R` would have two meanings.
 * `^` binds before a sign, and from the right: `-x^2` is −(x²), `2^3^2` is 2⁹.
 *
 * Every part must have a finite value: `1 / (1 / x)` has none at 0. The kinks of `abs`, `min` and `max` are no gap in
 * the model, but derivatives have no value there, nor where the model has none.
 * No code is made from text, so that a strict content security policy lets it run.
 *
 * @param expression Expression in mathjs syntax, at most 1000 characters
 * @param options Symbols, units and the result that the expression is held to
 * @returns The model. It holds no state, and its members can be passed on as plain functions
 * @throws CalculationError `expression-refused`; `symbol-unknown`, `symbol-unused`, `symbol-unsuitable`, `duplicate`,
 * `unit-missing`, `unit-unknown`, `unit-mismatch`, `text-malformed`, `dimensions-differ`, `dimension-not-plain`,
 * `exponent-not-plain` (all at once)
 * @source JCGM 100:2008, 4.1 (the model) and 5.1.3 (sensitivity coefficients)
 * @accuracy Each operation rounds once; elementary functions are those of the engine
 * @example
 * ```ts
 * import { parseModel } from 'esu-limits/model';
 * const model = parseModel('I^2 * R * (1 + a*(T - T0))', {
 *   units: { I: 'A', R: 'ohm', a: '1/K', T: 'K', T0: 'K' },
 *   result: 'P',
 * });
 * model.unit; // → "W"
 * model.evaluate({ I: 0.5, R: 500, a: 0.001, T: 303, T0: 293 }); // → 126.25
 * model.derivative('T').expression; // → "I^2 * R * a"
 * model.derivative('T').unit; // → "W/K"
 * model.sensitivityTex('T'); // → "\\frac{\\partial P}{\\partial T} = I^{2} \\, R \\, a"
 * model.evaluate({ I: 0.5, R: 500 }); // throws missing-member
 * parseModel('I * R + T', { units: { I: 'A', R: 'ohm', T: 'K' } }); // throws dimensions-differ
 * ```
 * @example
 * ```ts
 * import { normalInput, propagate } from 'esu-limits/uncertainty';
 * import { parseModel } from 'esu-limits/model';
 * const inputs = {
 *   I: normalInput({ value: 0.5, standardUncertainty: 0.01 }),
 *   R: normalInput({ value: 500, standardUncertainty: 0 }),
 * };
 * propagate(parseModel('I^2 * R'), inputs).standardUncertainty; // → 5
 * ```
 */
export function parseModel(expression: string, options: ModelOptions = {}): MeasurementModel {
  checkOptions(options);
  const { term } = readExpression(expression, modelFunctions);
  const used = symbolsOf(term);
  const faults = checkSymbols(used, options.symbols);
  const units = checkUnits(term, used, options, faults);
  const result = options.result === undefined ? undefined : checkResult(options.result, used, faults);
  throwAll(faults);

  const unitBy = (symbols: readonly string[]): string | undefined => {
    let factors: UnitFactors | undefined = units?.result;
    for (const symbol of symbols)
      factors = factors && units && divideFactors(factors, units.symbols.get(symbol) ?? new Map());
    return factors && printFactors(factors);
  };
  const sensitivity = memo((symbol: string) => differentiate(term, symbol));
  const first = memo((symbol: string) => {
    const by = sensitivity(symbol);
    return express(by, printTerm(by), [term], unitBy([symbol]));
  });
  const second = memo((a: string, b: string) => {
    const by = differentiate(sensitivity(a), b);
    return express(by, printTerm(by), [term, sensitivity(a)], unitBy([a, b]));
  });
  const derivative = (symbol: string): ModelExpression => first(known(symbol, used));

  const model = express(term, expression.trim(), [], unitBy([]));
  const forInputs = (names: readonly string[]): DifferentiatedModel => {
    const sensitivities = checkNames(names, used).map((name) => [
      name,
      used.includes(name) ? (inputs: ModelInputs) => derivative(name).evaluate(inputs) : () => 0,
    ]);
    return Object.freeze({ evaluate: model.evaluate, sensitivities: Object.freeze(Object.fromEntries(sensitivities)) });
  };
  return Object.freeze({
    ...model,
    ...forInputs(used),
    equationTex: result === undefined ? model.tex : `${result} = ${model.tex}`,
    forInputs,
    derivative,
    secondDerivative: (a: string, b: string) => {
      // The order is of no consequence, so that both orders are one.
      const [one, other] = [known(a, used, 'first'), known(b, used, 'second')].sort() as [string, string];
      return second(one, other);
    },
    sensitivityTex: (symbol: string) =>
      `\\frac{\\partial ${result ?? 'f'}}{\\partial ${symbolTex(known(symbol, used))}} = ${derivative(symbol).tex}`,
  });
}

function checkOptions(options: ModelOptions): void {
  if (typeof options !== 'object' || options === null) fail('wrong-type', 'options', options, 'must be an object');
  const { symbols, units } = options;
  if (symbols !== undefined && !Array.isArray(symbols))
    fail('wrong-type', 'symbols', symbols, 'must be an array of text');
  if (units !== undefined && (typeof units !== 'object' || units === null || Array.isArray(units))) {
    fail('wrong-type', 'units', units, 'must be an object with the unit of each symbol');
  }
}

function checkResult(result: string, used: readonly string[], faults: Fault[]): string {
  const requirement = unsuitable(result);
  const path = 'result';
  const received = describe(result);
  if (requirement !== undefined) faults.push({ code: 'symbol-unsuitable', path, received, requirement });
  else if (used.includes(result)) {
    faults.push({ code: 'duplicate', path, received, requirement: 'must not be a symbol of the expression' });
  }
  return requirement === undefined ? symbolTex(result) : '';
}

function known(symbol: string, used: readonly string[], path = 'symbol'): string {
  if (used.includes(symbol)) return symbol;
  const requirement = used.length === 0 ? 'the model has no symbols' : `must be one of ${listText(used)}`;
  return fail('symbol-unknown', path, symbol, requirement, nearSymbol(String(symbol), used).hint);
}

/** Remembers results; the arguments are symbols of one model, so that there are few. */
function memo<R, Symbols extends readonly string[]>(work: (...symbols: Symbols) => R): (...symbols: Symbols) => R {
  const found = new Map<string, R>();
  return (...symbols) => {
    const key = symbols.join(' ');
    const before = found.get(key);
    if (before !== undefined) return before;
    const result = work(...symbols);
    found.set(key, result);
    return result;
  };
}
