import { CalculationError, describe, type Fault } from '../checks/index.js';
import { type Dimension, sameDimension } from './dimension/dimension.js';
import { dimensionOf } from './dimension/dimension-of.js';
import { nameDimension } from './dimension/name-dimension.js';
import { parseUnit } from './dimension/parse-unit.js';
import { printFactors, type UnitFactors } from './dimension/unit-factors.js';
import type { ModelOptions } from './model.js';
import { nearSymbol } from './near-symbol.js';
import type { Term } from './term.js';

/** Units of a model whose dimensions fit. */
export interface CheckedUnits {
  readonly result: UnitFactors;
  readonly symbols: ReadonlyMap<string, UnitFactors>;
}

/**
 * Checks the dimensions of a model.
 *
 * @param faults Receives everything that does not fit
 * @returns Unit of the result and of each symbol; undefined without units, and where there are faults
 */
export function checkUnits(
  term: Term,
  used: readonly string[],
  { units, unit }: ModelOptions,
  faults: Fault[],
): CheckedUnits | undefined {
  if (units === undefined) {
    if (unit !== undefined) {
      const requirement = 'needs the units of the symbols: without them nothing can be compared';
      faults.push({ code: 'missing-member', path: 'units', received: 'undefined', requirement });
    }
    return undefined;
  }
  const before = faults.length;
  const symbols = new Map<string, UnitFactors>();
  const dimensions = new Map<string, Dimension>();
  const strange = used.filter((symbol) => !Object.hasOwn(units, symbol));
  for (const [symbol, text] of Object.entries(units)) {
    const parsed = parseUnit(text, `units.${symbol}`);
    if (!('factors' in parsed)) faults.push(...parsed);
    else {
      symbols.set(symbol, parsed.factors);
      dimensions.set(symbol, parsed.dimension);
    }
    if (!used.includes(symbol)) {
      const requirement = 'must be the unit of a symbol of the expression';
      const received = describe(text);
      faults.push({
        code: 'symbol-unused',
        path: `units.${symbol}`,
        received,
        requirement,
        ...nearSymbol(symbol, used),
      });
    }
  }
  const idle = Object.keys(units).filter((symbol) => !used.includes(symbol));
  for (const symbol of strange) {
    const requirement = 'must state the unit, 1 for a plain number';
    const path = `units.${symbol}`;
    faults.push({ code: 'unit-missing', path, received: 'undefined', requirement, ...nearSymbol(symbol, idle) });
  }
  const wanted = unit === undefined ? undefined : parseUnit(unit, 'unit');
  if (wanted && !('factors' in wanted)) faults.push(...wanted);
  const found = dimensionOf(term, dimensions, faults);
  if (found && wanted && 'factors' in wanted && !sameDimension(found, wanted.dimension)) {
    const requirement = `must be the unit of the expression, which comes to ${printFactors(nameDimension(found, symbols.values()))}`;
    faults.push({ code: 'unit-mismatch', path: 'unit', received: describe(unit), requirement });
  }
  if (faults.length > before) return undefined;
  if (!found) return failInexact();
  return { symbols, result: wanted && 'factors' in wanted ? wanted.factors : nameDimension(found, symbols.values()) };
}

function failInexact(): never {
  throw new CalculationError({
    code: 'exponent-not-plain',
    path: 'expression',
    received: 'roots and powers inside one another',
    requirement: 'must have dimensions whose exponents are fractions of ordinary size',
  });
}
