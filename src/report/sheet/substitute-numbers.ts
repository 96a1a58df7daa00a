/**
 * An expression in mathjs syntax with its numbers in place of its symbols: `sqrt(P / R)` becomes
 * `sqrt(120 / 500)`. Names without a value, such as functions, stay.
 */
export function substituteNumbers(expression: string, inputs: Readonly<Record<string, number>>): string {
  // Numbers are matched first, so that the e of an exponent is not taken for a symbol.
  return expression.replace(/\d+(?:\.\d+)?(?:[eE][+-]?\d+)?|[A-Za-z_]\w*/g, (token) => {
    const value = Object.hasOwn(inputs, token) ? inputs[token] : undefined;
    if (value === undefined) return token;
    const text = workingNumber(value);
    return value < 0 || text.includes('e') ? `(${text})` : text;
  });
}

/** A number of a working: eight significant digits. */
export function workingNumber(value: number): string {
  return String(Number(value.toPrecision(8)));
}
