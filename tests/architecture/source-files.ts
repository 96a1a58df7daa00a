import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

/** One file of src: its path from src with forward slashes, and its syntax tree. */
export interface SourceFile {
  readonly path: string;
  /** Name of the room, or of the file where it stands beside the rooms. */
  readonly room: string;
  readonly tree: ts.SourceFile;
  readonly imports: readonly Import[];
}

/** What a file imports or re-exports, types included. */
export interface Import {
  /** As written. */
  readonly specifier: string;
  /** Path from src, for a relative import. */
  readonly target?: string;
  readonly line: number;
  readonly node: ts.Node;
}

const root = fileURLToPath(new URL('../../src/', import.meta.url));

/** Every TypeScript file of src. */
export function sourceFiles(): readonly SourceFile[] {
  return readdirSync(root, { recursive: true })
    .map((name) => String(name).replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.ts'))
    .sort()
    .map((path) => parse(path, readFileSync(root + path, 'utf8')));
}

/** Parses one file; its path decides what its relative imports mean. */
export function parse(path: string, text: string): SourceFile {
  const tree = ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
  return { path, room: path.split('/')[0] as string, tree, imports: importsOf(path, tree) };
}

function importsOf(path: string, tree: ts.SourceFile): Import[] {
  const found: Import[] = [];
  const visit = (node: ts.Node): void => {
    const specifier = specifierOf(node);
    if (specifier) {
      const text = specifier.text;
      found.push({
        specifier: text,
        ...(text.startsWith('.') ? { target: targetOf(path, text) } : {}),
        line: lineOf(tree, node),
        node,
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

/** `import … from`, `export … from`, `import()`, `import('…').Type`. */
function specifierOf(node: ts.Node): ts.StringLiteral | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) {
    return node.moduleSpecifier && ts.isStringLiteral(node.moduleSpecifier) ? node.moduleSpecifier : undefined;
  }
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) {
    const [argument] = node.arguments;
    return argument && ts.isStringLiteral(argument) ? argument : undefined;
  }
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument) && ts.isStringLiteral(node.argument.literal)) {
    return node.argument.literal;
  }
  return undefined;
}

function targetOf(path: string, specifier: string): string {
  return posix.join(posix.dirname(path), specifier).replace(/\.js$/, '.ts');
}

/** Line of a node, from 1. */
export function lineOf(tree: ts.SourceFile, node: ts.Node): number {
  return tree.getLineAndCharacterOfPosition(node.getStart(tree)).line + 1;
}
