import ts from 'typescript';
import { lineOf, type SourceFile } from './source-files.js';

/** Names through which a result would come to depend on the clock, the place, chance or the machine. */
const forbiddenNames = new Set([
  'Date',
  'Intl',
  'console',
  'performance',
  'crypto',
  'process',
  'globalThis',
  'setTimeout',
  'setInterval',
  'eval',
]);

/** Members that do the same, on whatever object: the language of the machine decides what they answer. */
const forbiddenMembers = /^(toLocale[A-Z]\w*|localeCompare)$/;

/** Every use of such a name, one line each. */
export function purityFaults(file: SourceFile): string[] {
  const faults: string[] = [];
  const visit = (node: ts.Node): void => {
    const name = impureName(node);
    if (name) faults.push(`${file.path}:${lineOf(file.tree, node)} uses ${name}`);
    ts.forEachChild(node, visit);
  };
  visit(file.tree);
  return faults;
}

function impureName(node: ts.Node): string | undefined {
  if (ts.isPropertyAccessExpression(node)) {
    const member = node.name.text;
    if (forbiddenMembers.test(member)) return member;
    if (member === 'random' && node.expression.getText() === 'Math') return 'Math.random';
    return undefined;
  }
  if (ts.isElementAccessExpression(node) && ts.isStringLiteralLike(node.argumentExpression)) {
    const member = node.argumentExpression.text;
    return forbiddenMembers.test(member) || (member === 'random' && node.expression.getText() === 'Math')
      ? member
      : undefined;
  }
  if (!ts.isIdentifier(node) || !forbiddenNames.has(node.text)) return undefined;
  return isPlainName(node) ? node.text : undefined;
}

/** False for the name of a member, such as `entry.process` or `{ process: 1 }`. */
function isPlainName(node: ts.Identifier): boolean {
  const parent = node.parent;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isPropertyDeclaration(parent)) {
    return parent.name !== node;
  }
  return true;
}
