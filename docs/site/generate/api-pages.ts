import { readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Application, type TypeDocOptions } from 'typedoc';
import type { PluginOptions } from 'typedoc-plugin-markdown';

const out = fileURLToPath(new URL('../api/', import.meta.url));

/** The API as Markdown, one page for each entry of the package, with the settings of `npm run api`. */
export async function writeApiPages(): Promise<void> {
  rmSync(out, { recursive: true, force: true });
  const options: TypeDocOptions & Partial<PluginOptions> = {
    sort: ['alphabetical'],
    sortEntryPoints: false,
    name: 'API',
    out,
    plugin: ['typedoc-plugin-markdown', 'typedoc-vitepress-theme'],
    router: 'module',
    entryFileName: 'index',
    hidePageHeader: true,
    hideBreadcrumbs: true,
    useCodeBlocks: false,
    expandObjects: false,
    parametersFormat: 'table',
    interfacePropertiesFormat: 'table',
    sanitizeComments: true,
    useHTMLAnchors: true,
    logLevel: 'Warn',
  };
  // Everything else is as in typedoc.config.mjs, which typedoc reads by itself.
  const application = await Application.bootstrapWithPlugins(options as TypeDocOptions);
  // A name that the core gives out again is documented with its room: the core comes last.
  const [core = '', ...rooms] = application.options.getValue('entryPoints');
  application.options.setValue('entryPoints', [...rooms, core]);
  const project = await application.convert();
  if (!project) throw new Error('typedoc found nothing');
  application.validate(project);
  await application.generateOutputs(project);
  const { logger } = application;
  if (logger.hasErrors() || logger.hasWarnings()) throw new Error('typedoc reported errors or warnings');
  nameCorePage();
}

/** The core's page is called by what it is: `index` is the list of the pages. */
function nameCorePage(): void {
  renameSync(`${out}index-1.md`, `${out}core.md`);
  for (const name of readdirSync(out)) {
    const text = readFileSync(out + name, 'utf8')
      .replaceAll('index-1', 'core')
      .replace('[index](core.md)', '[core](core.md)')
      .replace('"text": "index"', '"text": "core"')
      .replace(/^# index$/m, '# core');
    writeFileSync(out + name, text);
  }
}
