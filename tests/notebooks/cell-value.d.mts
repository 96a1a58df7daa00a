/** The source before the expression that a cell shows, and that expression; undefined where the cell shows nothing. */
export function shownExpression(source: string): { readonly before: string; readonly expression: string } | undefined;
