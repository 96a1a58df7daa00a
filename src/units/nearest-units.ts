import { spellings } from './spellings.js';
import { prefixVocabulary, type QuantityKind, type UnitEntry, unitVocabulary } from './vocabulary.js';

/** Units that a text of these quantities may use, each with its prefixes. */
export function listUnits(kinds: readonly QuantityKind[] | undefined): string[] {
  const listed: string[] = [];
  for (const entry of entriesOf(kinds)) {
    // Without an expected quantity the bare units suffice.
    const prefixes = kinds === undefined ? [''] : [...entry.prefixes].sort((a, b) => a.length - b.length);
    for (const prefix of prefixes) if (entry.symbols[0] !== '') listed.push(prefix + typed(entry));
  }
  return listed;
}

/** The spelling of a unit that every keyboard has. */
function typed(entry: UnitEntry): string {
  return entry.quantity === 'resistance' ? 'ohm' : (entry.symbols[0] as string);
}

/** Quantities as text. */
export function listKinds(kinds: readonly QuantityKind[] | undefined): string {
  return kinds === undefined ? 'the list' : kinds.join(' or ');
}

function entriesOf(kinds: readonly QuantityKind[] | undefined): readonly UnitEntry[] {
  return kinds === undefined ? unitVocabulary : unitVocabulary.filter(({ quantity }) => kinds.includes(quantity));
}

/** Says so where prefix and unit are known and do not belong together: megaamperes, millihertz. */
export function prefixOutside(rest: string): string | undefined {
  for (const { spellings: befores, name } of prefixVocabulary) {
    for (const before of befores) {
      const entry = rest.startsWith(before) ? spellings.get(rest.slice(before.length))?.entry : undefined;
      if (before !== '' && entry?.symbols.includes(rest.slice(before.length)) && entry.symbols[0] !== '') {
        return `must have a unit of the trade: ${rest} would be ${name}${entry.name}`;
      }
    }
  }
  return undefined;
}

/** Known units that a text may have meant: another case, another code point, a name, a prefix alone. */
export function nearestUnits(rest: string, kinds: readonly QuantityKind[] | undefined): string[] {
  const wanted = rest.normalize('NFKC').toLowerCase();
  const bare = wanted.replace(/s$/, '');
  const found = new Set<string>();
  for (const entry of entriesOf(kinds)) {
    for (const { symbol, name, spellings: befores } of prefixVocabulary) {
      if (!entry.prefixes.includes(symbol) || entry.symbols[0] === '') continue;
      const unit = symbol + typed(entry);
      // A prefix alone is no unit in another case: 1e3k is not a thousand kelvins.
      const byCase =
        rest !== 'k' && befores.some((before) => entry.symbols.some((s) => (before + s).toLowerCase() === wanted));
      const byName =
        bare.length >= name.length + 3 && bare.startsWith(name) && entry.name.startsWith(bare.slice(name.length));
      const byPrefix = kinds !== undefined && symbol !== '' && rest === symbol;
      if (byCase || byName || byPrefix) found.add(unit);
    }
  }
  return [...found];
}
