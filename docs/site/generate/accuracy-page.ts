import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { bundleSize } from '../../../tests/size/bundle-size.js';
import { sizeCases } from '../../../tests/size/size-cases.js';
import { code, page, table, text } from './text.js';

const source = new URL('../../../src/', import.meta.url);
const benchmark = new URL('../../benchmark.json', import.meta.url);

/** The bounds that doc comments state and tests hold, the benchmark as last run, and the sizes of bundles. */
export async function accuracyPage(): Promise<string> {
  const bounds = boundsOfSource();
  const rooms = [...new Set(bounds.map(({ room }) => room))];
  return page('Accuracy, speed and size', [
    'Bounds are stated with the function that they hold for, and tests hold them: against 40-digit values of mpmath, published tables, or the exact result. A *unit in the last place* is the distance between neighbouring double-precision numbers, about 1.1·10<sup>−16</sup> to 2.2·10<sup>−16</sup> of the value.',
    'They say how well a number is computed. How well it is *known* is another matter, and larger by many powers of ten: see [uncertainty](../guides/uncertainty.md).',
    ...rooms.map((room) => {
      const rows = bounds
        .filter((bound) => bound.room === room)
        .map(({ name, bound }) => [code(name), text(bound.replaceAll('`', ''))]);
      return `## ${room} {#${room}}\n\n${table(['Function', 'Accuracy'], rows)}`;
    }),
    `## Speed {#speed}\n\n${speed()}`,
    `## Size {#size}\n\n${await size()}`,
  ]);
}

interface Bound {
  readonly room: string;
  readonly name: string;
  readonly bound: string;
}

function boundsOfSource(): Bound[] {
  return readdirSync(source, { recursive: true })
    .map((name) => String(name).replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.ts'))
    .sort()
    .flatMap((path) => {
      const room = path.split('/')[0] as string;
      return boundsOf(readFileSync(new URL(path, source), 'utf8')).map((bound) => ({ room, ...bound }));
    });
}

/** Each `@accuracy` of a doc comment, with the name of what stands below it. */
function boundsOf(file: string): { name: string; bound: string }[] {
  return [...file.matchAll(/\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*export (?:async )?(?:function|const) (\w+)/g)].flatMap(
    ([, comment = '', name = '']) => {
      const found = /@accuracy ((?:(?!\n\s*\* @)[\s\S])*)/.exec(comment)?.[1];
      return found === undefined ? [] : [{ name, bound: found.replace(/\s*\n\s*\*\s?/g, ' ').trim() }];
    },
  );
}

/** A row of `npm run bench -- --json`. */
interface BenchRow {
  readonly case: string;
  readonly tool: string;
  readonly n: number;
  readonly median: number;
  readonly unit: string;
  readonly ratio?: number;
}

function speed(): string {
  const how =
    'Speed is measured as a ratio to hand-written code that does the same, since times belong to a machine: `npm run build && npm run bench` measures the built package, `npm run bench:peers` the same work done with other libraries; `-- --json` gives the rows as data. Each case runs in a process of its own, and compares the values before it times anything. Cases that state a goal end with an exit code when it is missed.';
  if (!existsSync(benchmark))
    return `${how}\n\nNo run is kept in the repository at present, so no figures are shown here.`;
  const { machine, versions, date, rows } = JSON.parse(readFileSync(benchmark, 'utf8')) as {
    machine: string;
    versions: string;
    date: string;
    rows: BenchRow[];
  };
  const cells = rows.map((row) => [
    text(row.case),
    text(row.tool),
    String(row.n),
    `${Number(row.median.toPrecision(3))} ${row.unit}`,
    row.ratio === undefined ? '' : String(Number(row.ratio.toPrecision(3))),
  ]);
  return `${how}\n\nAs last run, ${text(date)}, on ${text(machine)}, ${text(versions)}.\n\n${table(['Case', 'Tool', 'n', 'Median', 'Ratio'], cells)}`;
}

/** What a bundler keeps of the library, measured anew. */
async function size(): Promise<string> {
  const how =
    'A bundler leaves out what is not imported. A plain function is small; its twin that shows the working brings the formulas with their sources, and a whole room brings the messages of every fault. Sizes are minified and compressed with gzip, in kilobytes of 1024 bytes; a test holds the limits.';
  const cells: string[][] = [];
  for (const { what, limit, source } of sizeCases) {
    const { gzipped } = await bundleSize(source);
    cells.push([text(what), (gzipped / 1024).toFixed(1), String(limit)]);
  }
  return `${how}\n\n${table(['What is imported', 'Size', 'Limit'], cells)}`;
}
