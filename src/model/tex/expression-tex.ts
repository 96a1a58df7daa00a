import { allowedFunctions } from '../closed-list.js';
import { readExpression } from '../read-expression.js';
import { termTex } from './term-tex.js';

/**
 * An expression of a working or of the formula catalogue as TeX, without delimiters.
 *
 * @param expression Expression in mathjs syntax, of the closed list
 * @returns TeX of commands for mathematics alone: nothing of the text can be another command
 * @throws CalculationError `expression-refused`
 * @example
 * ```ts
 * import { expressionTex } from 'esu-limits/model';
 * expressionTex('sqrt(P / R_0)'); // → "\\sqrt{\\frac{P}{R_{0}}}"
 * ```
 */
export function expressionTex(expression: string): string {
  return termTex(readExpression(expression, allowedFunctions).term);
}
