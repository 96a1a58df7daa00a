/**
 * How well a fact is known.
 *
 * - `published`: read in public text of the named source
 * - `secondary`: read in a paper, textbook or guidance that quotes the source
 * - `from memory`: recalled, not read; check your copy of the source
 * - `derived`: computed from first principles
 * - `common practice`: a fact of the trade, no source
 */
export type Standing = 'published' | 'secondary' | 'from memory' | 'derived' | 'common practice';
