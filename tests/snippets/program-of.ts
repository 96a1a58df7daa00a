import ts from 'typescript';

/** A snippet made into the body of an async function: imports are calls, and each promised value is compared. */
export interface SnippetProgram {
  /** JavaScript over the names `__import`, `__value`, `__throws`, `__prints`. */
  readonly body: string;
  /** How many values, errors and printed texts are compared. */
  readonly comparisons: number;
}

/** What a comment behind a statement promises. */
interface Promised {
  readonly kind: 'value' | 'throws';
  /** First line of the text after the arrow or the word. */
  readonly text: string;
  /** Comment lines below it, without `//`. */
  readonly further: readonly string[];
}

/** Makes the program; throws an Error for a promise that belongs to no statement. */
export function programOf(code: string): SnippetProgram {
  const tree = ts.createSourceFile('snippet.ts', code, ts.ScriptTarget.ES2022, true);
  let comparisons = 0;
  const parts = tree.statements.map((statement) => {
    if (ts.isImportDeclaration(statement)) return importCall(statement);
    const promised = promiseBehind(code, statement);
    if (!promised) return statement.getText();
    comparisons += 1;
    return comparison(tree, statement, promised);
  });
  const promises = code.split('\n').filter((line) => /\/\/ (→|throws )/.test(line)).length;
  if (promises !== comparisons) {
    throw new Error(`${promises} comments promise a value, but ${comparisons} stand behind a statement of the snippet`);
  }
  const { outputText } = ts.transpileModule(parts.join('\n'), {
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext, verbatimModuleSyntax: true },
  });
  return { body: outputText, comparisons };
}

function importCall(statement: ts.ImportDeclaration): string {
  const clause = statement.importClause;
  const source = `await __import(${statement.moduleSpecifier.getText()})`;
  if (!clause) return `${source};`;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return '';
  const names: string[] = clause.name ? [`default: ${clause.name.text}`] : [];
  const bindings = clause.namedBindings;
  if (bindings && ts.isNamespaceImport(bindings)) return `const ${bindings.name.text} = ${source};`;
  for (const element of bindings?.elements ?? []) {
    if (!element.isTypeOnly) names.push(`${element.propertyName?.text ?? element.name.text}: ${element.name.text}`);
  }
  return `const { ${names.join(', ')} } = ${source};`;
}

/** The comment on the statement's last line, or alone on the next line. */
function promiseBehind(code: string, statement: ts.Statement): Promised | undefined {
  const lines = code.slice(statement.end).split('\n');
  for (const [index, line] of lines.slice(0, 2).entries()) {
    const match = /^\s*\/\/ (?:→ (?:(throws) )?|(throws) )(.*)$/.exec(line);
    if (match) {
      const further: string[] = [];
      for (const next of lines.slice(index + 1)) {
        if (!/^\/\/(?! (→|throws ))/.test(next)) break;
        further.push(next.slice(2));
      }
      return { kind: match[1] || match[2] ? 'throws' : 'value', text: (match[3] as string).trimEnd(), further };
    }
    if (line.trim() !== '') return undefined;
  }
  return undefined;
}

function comparison(tree: ts.SourceFile, statement: ts.Statement, promised: Promised): string {
  const line = tree.getLineAndCharacterOfPosition(statement.getStart()).line;
  const rest = [line, JSON.stringify(promised.text), JSON.stringify(promised.further)].join(', ');
  if (ts.isVariableStatement(statement) && promised.kind === 'value') {
    const [declaration] = statement.declarationList.declarations;
    if (declaration && ts.isIdentifier(declaration.name)) {
      return `${statement.getText()}\n__value(${declaration.name.text}, ${rest});`;
    }
  }
  if (!ts.isExpressionStatement(statement)) throw new Error(`no value to compare: ${statement.getText()}`);
  const expression = statement.expression.getText();
  if (promised.kind === 'throws') return `await __throws(async () => (${expression}), ${rest});`;
  const printed = /^console\.log\(([\s\S]*)\)$/.exec(expression)?.[1];
  if (printed !== undefined) return `__prints([${printed}], ${rest});`;
  return `__value((${expression}), ${rest});`;
}
