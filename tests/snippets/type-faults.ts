import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import type { Snippet } from './snippet.js';

const tests = fileURLToPath(new URL('../', import.meta.url)).replaceAll('\\', '/');

/** Compiles every snippet as a module of its own that imports the package by name; one line for each fault. */
export function typeFaults(snippets: readonly Snippet[]): string[] {
  const config = ts.readConfigFile(`${tests}tsconfig.json`, ts.sys.readFile).config as { include: string[] };
  const { options } = ts.parseJsonConfigFileContent({ ...config, include: [], files: [] }, ts.sys, tests);
  // A snippet shows one thing: a value that it does not use is no fault.
  const settings: ts.CompilerOptions = { ...options, noEmit: true, noUnusedLocals: false, noUnusedParameters: false };
  const byPath = new Map(snippets.map((snippet, i) => [`${tests}snippet-${i}.ts`, snippet]));
  const host = ts.createCompilerHost(settings);
  const { getSourceFile, fileExists, readFile } = host;
  const textOf = (path: string) => {
    const snippet = byPath.get(path);
    return snippet && `${snippet.code}\nexport {};\n`;
  };
  host.fileExists = (path) => byPath.has(path) || fileExists.call(host, path);
  host.readFile = (path) => textOf(path) ?? readFile.call(host, path);
  host.getSourceFile = (path, language, ...more) => {
    const text = textOf(path);
    return text === undefined
      ? getSourceFile.call(host, path, language, ...more)
      : ts.createSourceFile(path, text, language, true);
  };
  const program = ts.createProgram([...byPath.keys()], settings, host);
  return [...byPath].flatMap(([path, snippet]) => {
    const file = program.getSourceFile(path);
    const found = [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)];
    return found.map((fault) => {
      const line = file?.getLineAndCharacterOfPosition(fault.start ?? 0).line ?? 0;
      return `${snippet.file}:${snippet.line + line}: ${ts.flattenDiagnosticMessageText(fault.messageText, ' ')}`;
    });
  });
}
