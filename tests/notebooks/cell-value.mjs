// What a cell shows: the value of its last statement, where that is an expression.
import ts from 'typescript';

/** The source before the expression that a cell shows, and that expression; undefined where the cell shows nothing. */
export function shownExpression(source) {
  const tree = ts.createSourceFile('cell.ts', source, ts.ScriptTarget.ES2022, true);
  const last = tree.statements.at(-1);
  if (last === undefined || !ts.isExpressionStatement(last)) return undefined;
  return { before: source.slice(0, last.getStart()), expression: last.expression.getText() };
}
