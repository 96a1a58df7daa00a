import { describe, type Fault } from '../checks/index.js';
import { isConstant, isFunction } from './closed-list.js';
import { nearSymbol } from './near-symbol.js';

const pattern = /^[A-Za-z][A-Za-z0-9]*(_[A-Za-z0-9]+)*$/;
const longest = 40;

/** Everything that is wrong with the symbols of an expression, and with the list that declares them. */
export function checkSymbols(used: readonly string[], declared: readonly string[] | undefined): Fault[] {
  const faults: Fault[] = [];
  // A slip of the pen leaves one symbol unknown and another one unused: these are likely to belong together.
  const idle = (declared ?? []).filter((symbol) => !used.includes(symbol));
  const strange = used.filter((symbol) => !declared?.includes(symbol));
  for (const symbol of used) {
    const requirement = unsuitable(symbol);
    if (requirement !== undefined) {
      faults.push({ code: 'symbol-unsuitable', path: 'expression', received: describe(symbol), requirement });
    } else if (declared && !declared.includes(symbol)) {
      faults.push({
        code: 'symbol-unknown',
        path: 'expression',
        received: describe(symbol),
        requirement: declared.length === 0 ? 'no symbol is declared' : `must be one of ${listText(declared)}`,
        ...nearSymbol(symbol, idle, declared),
      });
    }
  }
  const seen = new Set<string>();
  for (const [i, symbol] of (declared ?? []).entries()) {
    const path = `symbols[${i}]`;
    const received = describe(symbol);
    const requirement = unsuitable(symbol);
    if (requirement !== undefined) faults.push({ code: 'symbol-unsuitable', path, received, requirement });
    else if (seen.has(symbol)) faults.push({ code: 'duplicate', path, received, requirement: 'must be given once' });
    else if (!used.includes(symbol)) {
      const requirement = 'must occur in the expression';
      faults.push({ code: 'symbol-unused', path, received, requirement, ...nearSymbol(symbol, strange, used) });
    }
    seen.add(symbol);
  }
  return faults;
}

/** Why a name cannot be a symbol; undefined if it can. */
export function unsuitable(symbol: unknown): string | undefined {
  if (typeof symbol !== 'string') return 'must be text';
  if (isFunction(symbol)) return 'must not be the name of a function: call it with parentheses, or rename the symbol';
  if (isConstant(symbol)) return 'must not be the name of a constant';
  if (symbol.length > longest) return `must have at most ${longest} characters`;
  if (!pattern.test(symbol)) return 'must be letters and digits, with single underscores between them';
  // toString, valueOf, constructor: names that every object seems to have.
  return symbol in {} ? 'must not be the name of a member of every object' : undefined;
}

export function listText(names: readonly string[]): string {
  return names.slice(0, 12).join(', ') + (names.length > 12 ? ', …' : '');
}
