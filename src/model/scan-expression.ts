import { limits } from './closed-list.js';
import { refuse } from './refuse.js';

const blank = /[ \t]+/y;
const number = /(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?/y;
const name = /[A-Za-z][A-Za-z0-9_]*/y;
const sign = /[-+*/^(),]/y;

/** Words that mathjs reads as operators or as values, so that they would never reach a symbol. */
const words: ReadonlySet<string> = /* @__PURE__ */ new Set(
  'and end false in Infinity mod NaN not null or to true undefined xor'.split(' '),
);

/**
 * Lets an expression pass to the parser only if it is made of numbers, names, `+ - * / ^`, parentheses and commas.
 * Text, brackets, assignments, comparisons, members and line breaks need characters that are refused here.
 */
export function scanExpression(expression: unknown): string {
  if (typeof expression !== 'string') return refuse(expression, 'must be text');
  if (expression.length > limits.characters) {
    return refuse(expression, `must be text of at most ${limits.characters} characters`);
  }
  let at = 0;
  let depth = 0;
  // An operand that stands right behind another one would be multiplied without a sign.
  let before: 'operand' | 'name' | 'sign' = 'sign';
  while (at < expression.length) {
    const gap = match(blank, expression, at);
    if (gap !== '') {
      at += gap.length;
      continue;
    }
    const digits = match(number, expression, at);
    const word = match(name, expression, at);
    const token = digits || word || match(sign, expression, at);
    if (token === '') refuse(expression, `must not hold ${place(expression, at)}`, hintFor(expression[at] as string));
    const opens = digits !== '' || word !== '' || (token === '(' && before !== 'name');
    if (before !== 'sign' && opens) {
      refuse(expression, `must have a sign before ${place(expression, at)}`, 'Write * for every product: 2 * R.');
    }
    if (words.has(word)) refuse(expression, `must not hold the word ${word}`);
    if (digits !== '') checkNumber(expression, digits);
    depth += token === '(' ? 1 : token === ')' ? -1 : 0;
    if (depth > limits.nesting) refuse(expression, `must not nest parentheses deeper than ${limits.nesting}`);
    before = word !== '' ? 'name' : digits !== '' || token === ')' ? 'operand' : 'sign';
    at += token.length;
  }
  if (expression.trim() === '') refuse(expression, 'must not be empty');
  return expression;
}

function match(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? '';
}

function checkNumber(expression: string, digits: string): void {
  const value = Number(digits);
  const isZero = !/[1-9]/.test(digits.replace(/[eE].*/, ''));
  if (!Number.isFinite(value) || (value === 0 && !isZero)) {
    refuse(expression, `must hold numbers of ordinary size, and ${digits} is none`);
  }
}

function place(expression: string, at: number): string {
  const character = String.fromCodePoint(expression.codePointAt(at) as number);
  return `${JSON.stringify(character)} (character ${at + 1})`;
}

function hintFor(character: string): string | undefined {
  if (character === '%') return 'Write a fraction: 20 % is 0.2.';
  if (/[\u0370-\u03ff]/.test(character)) return 'Write the name of the letter: alpha.';
  if (character === '×' || character === '·') return 'Write *.';
  if (character === '÷' || character === ':') return 'Write / to divide.';
  if (character === '−' || character === '–') return 'Write the minus sign of the keyboard.';
  if (character === '²') return 'Write ^2.';
  if (character === '=') return 'Write the right-hand side alone.';
  return undefined;
}
