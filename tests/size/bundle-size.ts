import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';

const root = fileURLToPath(new URL('../../', import.meta.url));

/** Size of a bundle, in bytes, and the packages that its code would load. */
export interface BundleSize {
  readonly minified: number;
  readonly gzipped: number;
  /** Packages that the bundled files import, whether bundled or not. */
  readonly packages: readonly string[];
}

/** Bundles a module that is given as source text, as a user's bundler would. */
export async function bundleSize(source: string, external: readonly string[] = []): Promise<BundleSize> {
  const result = await build({
    stdin: { contents: source, resolveDir: root, loader: 'ts' },
    bundle: true,
    minify: true,
    format: 'esm',
    target: 'es2022',
    platform: 'neutral',
    mainFields: ['browser', 'module', 'main'],
    external: [...external],
    metafile: true,
    write: false,
  });
  const output = result.outputFiles[0];
  if (!output) throw new Error('esbuild wrote nothing');
  const bundled = Object.keys(result.metafile.inputs).map(
    (path) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1],
  );
  const left = Object.values(result.metafile.outputs).flatMap(({ imports }) => imports.map(({ path }) => path));
  return {
    minified: output.contents.length,
    gzipped: gzipSync(output.contents, { level: 9 }).length,
    packages: [...new Set([...bundled, ...left])].filter((name) => name !== undefined).sort(),
  };
}
