import { expressionTex } from '../../../src/model/index.js';
import { type CatalogueEntry, catalogue, type Source, sources } from '../../../src/working/index.js';
import { capital, code, page, table, text } from './text.js';

/** The catalogue, a page for each room and one that lists them, by the path under the site. */
export function formulaPages(): ReadonlyMap<string, string> {
  const rooms = [...new Set(catalogue.map(({ room }) => room))];
  const pages = new Map<string, string>();
  pages.set('reference/formulas.md', indexOf(rooms));
  for (const room of rooms) {
    const entries = catalogue.filter((entry) => entry.room === room);
    pages.set(
      `reference/formulas/${room}.md`,
      page(`Formulas: ${room}`, [
        'Expressions, symbols and units are those of the working of a result; `recompute` of `esu-limits/model` evaluates any of them again.',
        ...entries.map(sectionOf),
      ]),
    );
  }
  return pages;
}

function indexOf(rooms: readonly string[]): string {
  const lists = rooms.map((room) => {
    const rows = catalogue
      .filter((entry) => entry.room === room)
      .map((entry) => [
        `[${text(entry.title)}](./formulas/${room}.md#${entry.id})`,
        code(entry.symbol),
        sourceOf(entry).standing,
      ]);
    return `## ${capital(room)}\n\n${table(['Formula', 'Symbol', 'Standing'], rows)}`;
  });
  return page('Formulas', [
    `The ${catalogue.length} formulas of the library, rendered from the catalogue from which every working takes its steps. A test evaluates each expression over random inputs and compares it with the fast function that results come from: what is printed is what is computed.`,
    'Values are in SI units, rms unless a symbol says peak; relative values are fractions. *Standing* says how well a source is known; [worked checks](./checks.md) are the comparisons with published values.',
    standings,
    ...lists,
    `## Sources\n\n${table(
      ['Source', 'Standing', 'Note'],
      Object.entries(sources as Readonly<Record<string, Source>>).map(([id, source]) => [
        `<span id="source-${id}"></span>${text(source.title)}`,
        source.standing,
        text(source.note ?? ''),
      ]),
    )}`,
  ]);
}

const standings = table(
  ['Standing', 'Meaning'],
  [
    ['published', 'read in public text of the named source'],
    ['secondary', 'read in a paper, textbook or guidance that quotes the source'],
    ['from memory', 'recalled, not read: check your copy of the source'],
    ['derived', 'computed from first principles'],
    ['common practice', 'a fact of the trade, no source'],
  ],
);

function sectionOf(entry: CatalogueEntry): string {
  const source = sourceOf(entry);
  const clause = entry.clause === undefined ? '' : `, ${text(entry.clause)}`;
  const symbols = Object.entries(entry.inputs).map(([symbol, unit]) => [
    `$${expressionTex(symbol)}$`,
    code(symbol),
    text(entry.meanings[symbol] ?? ''),
    code(unit),
  ]);
  return [
    `## ${text(entry.title)} {#${entry.id}}`,
    `$$\n${expressionTex(entry.symbol)} = ${expressionTex(entry.expression)}\n$$`,
    `\`\`\`text\n${entry.symbol} = ${entry.expression}\n\`\`\``,
    ...(symbols.length === 0 ? [] : [table(['', 'Symbol', 'Meaning', 'Unit'], symbols)]),
    `Result in ${code(entry.unit)} · ${code(entry.id)} · source: [${text(source.title)}](../formulas.md#source-${entry.source})${clause} · ${source.standing}`,
  ].join('\n\n');
}

function sourceOf(entry: CatalogueEntry): Source {
  return sources[entry.source];
}
