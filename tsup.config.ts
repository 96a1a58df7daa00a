import { cpSync, readFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { buildSync, type Plugin } from 'esbuild';
import { defineConfig, type Options } from 'tsup';

/** The rooms that the package gives out by a sub-path. */
const { exports: subPaths } = JSON.parse(readFileSync('package.json', 'utf8')) as { exports: Record<string, unknown> };
const rooms = Object.keys(subPaths).flatMap((path) => /^\.\/([a-z]+)$/.exec(path)?.[1] ?? []);
const indexOf = (room: string) => `src/${room}/index.ts`;
const entries = Object.fromEntries(rooms.map((room) => [room, indexOf(room)]));

/** What a file exports at run time. */
function exportsOf(file: string): readonly string[] {
  const { metafile } = buildSync({
    entryPoints: [file],
    bundle: true,
    format: 'esm',
    write: false,
    metafile: true,
    outdir: '.',
    packages: 'external',
  });
  return Object.values(metafile.outputs)[0]?.exports ?? [];
}

const core = new Set(exportsOf('src/index.ts'));
const shared = new Map(
  rooms.flatMap((room) => {
    const names = exportsOf(indexOf(room));
    return names.some((name) => core.has(name)) ? ([[resolve(indexOf(room)), names]] as const) : [];
  }),
);

/**
 * The core is one file, since each further file costs a start more than its code does. Whatever else is built takes
 * from that file what the file exports, so that no class and no table is in the package twice.
 */
const coreFromItsFile = (file: './index.js' | './index.cjs'): Plugin => ({
  name: 'core from its file',
  setup: ({ onResolve, onLoad }) => {
    onResolve({ filter: /index\.(c?js|ts)$/ }, ({ path, resolveDir, namespace }) => {
      if (namespace === 'room' && path === file) return { path, external: true, sideEffects: false };
      const source = resolve(resolveDir || '.', path).replace(/\.js$/, '.ts');
      return namespace !== 'room' && shared.has(source)
        ? { path: source, namespace: 'room', sideEffects: false }
        : undefined;
    });
    onLoad({ filter: /./, namespace: 'room' }, ({ path }) => {
      const names = shared.get(path) ?? [];
      const given = names.filter((name) => core.has(name));
      const rest = names.filter((name) => !core.has(name));
      const own = rest.length > 0 ? `export { ${rest.join(', ')} } from ${JSON.stringify(path)};` : '';
      return { contents: `export { ${given.join(', ')} } from '${file}';\n${own}`, resolveDir: dirname(path) };
    });
  },
});

const others: Options = {
  entry: entries,
  target: 'es2022',
  platform: 'neutral',
  splitting: true,
  external: ['mathjs', 'zod', 'papaparse'],
};

export default defineConfig([
  {
    entry: { index: 'src/index.ts' },
    format: ['esm', 'cjs'],
    target: 'es2022',
    platform: 'neutral',
    splitting: false,
    // Short names and no less: `minify` would drop the marks by which a bundler knows what it may leave out.
    esbuildOptions: (options) => {
      options.minifyIdentifiers = true;
      options.minifySyntax = true;
    },
    sourcemap: true,
    dts: { entry: { index: 'src/index.ts', ...entries }, compilerOptions: { ignoreDeprecations: '6.0' } },
    onSuccess: async () => cpSync('docs/json-schema', 'dist/json-schema', { recursive: true }),
  },
  { ...others, format: ['esm'], esbuildPlugins: [coreFromItsFile('./index.js')] },
  { ...others, format: ['cjs'], esbuildPlugins: [coreFromItsFile('./index.cjs')] },
  {
    entry: { 'esu-limits.browser': 'src/browser.ts' },
    format: ['iife'],
    globalName: 'esuLimits',
    target: 'es2022',
    platform: 'browser',
    minify: true,
    noExternal: [/.*/],
    outExtension: () => ({ js: '.js' }),
  },
]);
