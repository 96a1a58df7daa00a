import type { CallTerm, Term } from '../term.js';
import { symbolTex } from './symbol-tex.js';

const strength = { '+': 1, '-': 1, '*': 2, '/': 4, '^': 3 } as const;

const functionTex: Readonly<Record<string, string>> = {
  acos: '\\arccos',
  acosh: '\\operatorname{arcosh}',
  asin: '\\arcsin',
  asinh: '\\operatorname{arsinh}',
  atan: '\\arctan',
  atan2: '\\operatorname{atan2}',
  atanh: '\\operatorname{artanh}',
  log: '\\ln',
  log10: '\\log_{10}',
  log2: '\\log_{2}',
  round: '\\operatorname{round}',
  sign: '\\operatorname{sgn}',
};

/** A term as TeX for mathematics, without delimiters. */
export function termTex(term: Term): string {
  switch (term.kind) {
    case 'number':
      return numberTex(term.value);
    case 'constant':
      return term.name === 'pi' ? '\\pi' : '\\mathrm{e}';
    case 'symbol':
      return symbolTex(term.name);
    case 'negative':
      return `-${part(term.of, 2, true)}`;
    case 'call':
      return callTex(term);
    case 'binary':
      return binaryTex(term.operator, term.left, term.right);
  }
}

function binaryTex(operator: '+' | '-' | '*' | '/' | '^', left: Term, right: Term): string {
  switch (operator) {
    case '/':
      return `\\frac{${termTex(left)}}{${termTex(right)}}`;
    case '^':
      return powerTex(left, termTex(right));
    case '*': {
      const factor = part(right, 2, true);
      // A space would not tell 2 · 3 from 23, nor a · (b + c) from a function of b + c.
      const space = /^(\d|\\left)/.test(factor) ? ' \\cdot ' : ' \\, ';
      return `${part(left, 2, false)}${space}${factor}`;
    }
    case '-':
      return `${part(left, 1, false)} - ${part(right, 2, true)}`;
    case '+':
      return `${part(left, 1, false)} + ${part(right, 1, true)}`;
  }
}

/** A part, in parentheses if it holds together less strongly than it must, or begins with a sign it must not. */
function part(term: Term, least: number, noSign: boolean): string {
  const text = termTex(term);
  return strengthOf(term) < least || (noSign && text.startsWith('-')) ? parentheses(text) : text;
}

function strengthOf(term: Term): number {
  if (term.kind === 'binary') return strength[term.operator];
  if (term.kind === 'negative') return 2;
  if (term.kind === 'call' && term.name === 'expm1') return 1;
  return term.kind === 'number' && /e/.test(String(term.value)) ? 2 : 4;
}

function powerTex(base: Term, exponent: string): string {
  const alone = base.kind === 'symbol' || base.kind === 'constant' || (base.kind === 'number' && strengthOf(base) > 2);
  return `${alone ? termTex(base) : parentheses(termTex(base))}^{${exponent}}`;
}

function callTex({ name, parts }: CallTerm): string {
  const [first, second] = parts as [Term, Term];
  switch (name) {
    case 'abs':
      return `\\left|${termTex(first)}\\right|`;
    case 'sqrt':
      return `\\sqrt{${termTex(first)}}`;
    case 'cbrt':
      return `\\sqrt[3]{${termTex(first)}}`;
    case 'square':
      return powerTex(first, '2');
    case 'pow':
      return powerTex(first, termTex(second));
    case 'hypot':
      return `\\sqrt{${parts.map((term) => powerTex(term, '2')).join(' + ')}}`;
    case 'ceil':
    case 'floor':
      return `\\left\\l${name} ${termTex(first)}\\right\\r${name}`;
    case 'expm1':
      return `\\exp${parentheses(termTex(first))} - 1`;
    case 'log1p':
      return `\\ln${parentheses(`1 + ${part(first, 1, true)}`)}`;
    default:
      return (functionTex[name] ?? `\\${name}`) + parentheses(parts.map(termTex).join(', '));
  }
}

function parentheses(text: string): string {
  return `\\left(${text}\\right)`;
}

function numberTex(value: number): string {
  const [digits = '', exponent] = String(value).split('e');
  if (exponent === undefined) return digits;
  const power = `10^{${Number(exponent)}}`;
  return digits === '1' ? power : `${digits} \\cdot ${power}`;
}
