import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expressionTex, parseModel } from '../../src/model/index.js';
import { catalogue } from '../../src/working/index.js';
import { expressions } from './expressions.js';
import { texFault } from './tex-faults.js';

describe('a symbol in TeX', () => {
  it.each([
    ['R', 'R'],
    ['T0', 'T_{0}'],
    ['T_0', 'T_{0}'],
    ['alpha', '\\alpha'],
    ['alpha20', '\\alpha_{20}'],
    ['Omega_R', '\\Omega_{R}'],
    ['I_lower', 'I_{\\mathrm{lower}}'],
    ['x_i_12', 'x_{i,12}'],
    ['Delta_theta', '\\Delta_{\\theta}'],
    ['mR', '\\mathrm{mR}'],
    ['R12C', '\\mathrm{R12C}'],
    ['x_T0', 'x_{\\mathrm{T0}}'],
    ['epsilon', '\\epsilon'],
    ['omicron', '\\mathrm{omicron}'],
    ['pi', '\\pi'],
    ['e', '\\mathrm{e}'],
  ])('%s is %s', (name, tex) => {
    expect(expressionTex(name)).toBe(tex);
  });
});

describe('an expression in TeX', () => {
  it.each([
    ['I^2 * R', 'I^{2} \\, R'],
    ['2 * 3 * x', '2 \\cdot 3 \\, x'],
    ['a * (b + c)', 'a \\cdot \\left(b + c\\right)'],
    ['(a + b) / c', '\\frac{a + b}{c}'],
    ['(a / b)^2', '\\left(\\frac{a}{b}\\right)^{2}'],
    ['(x^2)^3', '\\left(x^{2}\\right)^{3}'],
    ['2^x^y', '2^{x^{y}}'],
    ['T_0^2', 'T_{0}^{2}'],
    ['-x^2', '-x^{2}'],
    ['(-x)^2', '\\left(-x\\right)^{2}'],
    ['a - (b - c)', 'a - \\left(b - c\\right)'],
    ['a - (-b)', 'a - \\left(-b\\right)'],
    ['a + b - c', 'a + b - c'],
    ['a * -b', 'a \\cdot \\left(-b\\right)'],
    ['sqrt(P / R)', '\\sqrt{\\frac{P}{R}}'],
    ['cbrt(x) + abs(y)', '\\sqrt[3]{x} + \\left|y\\right|'],
    ['sin(x)^2', '\\left(\\sin\\left(x\\right)\\right)^{2}'],
    [
      'log(x) * log10(x) * log2(x)',
      '\\ln\\left(x\\right) \\, \\log_{10}\\left(x\\right) \\, \\log_{2}\\left(x\\right)',
    ],
    ['exp(x) + e^x', '\\exp\\left(x\\right) + \\mathrm{e}^{x}'],
    ['2 * expm1(x)', '2 \\cdot \\left(\\exp\\left(x\\right) - 1\\right)'],
    ['log1p(-x)', '\\ln\\left(1 + \\left(-x\\right)\\right)'],
    ['hypot(x, y)', '\\sqrt{x^{2} + y^{2}}'],
    ['square(x + 1) + pow(x, y)', '\\left(x + 1\\right)^{2} + x^{y}'],
    ['max(a, b, c)', '\\max\\left(a, b, c\\right)'],
    ['atan2(y, x)', '\\operatorname{atan2}\\left(y, x\\right)'],
    ['acosh(x)', '\\operatorname{arcosh}\\left(x\\right)'],
    ['1e-9 * x', '10^{-9} \\, x'],
    ['2.5e-9^x', '\\left(2.5 \\cdot 10^{-9}\\right)^{x}'],
    ['x * 1e21', 'x \\cdot 10^{21}'],
    ['floor(x / q) + ceil(x)', '\\left\\lfloor \\frac{x}{q}\\right\\rfloor + \\left\\lceil x\\right\\rceil'],
    ['sign(x) * round(y)', '\\operatorname{sgn}\\left(x\\right) \\, \\operatorname{round}\\left(y\\right)'],
  ])('%s is %s', (expression, tex) => {
    expect(expressionTex(expression)).toBe(tex);
    expect(texFault(tex)).toBeUndefined();
  });

  it('is sound for every formula of the catalogue', () => {
    for (const { id, expression } of catalogue)
      expect([id, texFault(expressionTex(expression))]).toEqual([id, undefined]);
  });

  it('is sound for random expressions and their sensitivities: the commands of mathematics, and nothing else', () => {
    fc.assert(
      fc.property(expressions(), (text) => {
        const model = parseModel(text, { result: 'y_1' });
        expect(texFault(model.equationTex)).toBeUndefined();
        for (const symbol of model.symbols) expect(texFault(model.sensitivityTex(symbol))).toBeUndefined();
      }),
      { numRuns: 500, seed: 7 },
    );
  });
});

describe('the TeX of a model', () => {
  it('has the result before it where the result has a name', () => {
    const named = parseModel('V^2 / R_0', { result: 'P_out' });
    expect(named.tex).toBe('\\frac{V^{2}}{R_{0}}');
    expect(named.equationTex).toBe('P_{\\mathrm{out}} = \\frac{V^{2}}{R_{0}}');
    expect(named.sensitivityTex('R_0')).toBe(
      '\\frac{\\partial P_{\\mathrm{out}}}{\\partial R_{0}} = -\\frac{V^{2}}{R_{0}^{2}}',
    );
    const plain = parseModel('V^2 / R_0');
    expect(plain.equationTex).toBe(plain.tex);
    expect(plain.sensitivityTex('V')).toBe('\\frac{\\partial f}{\\partial V} = \\frac{2 \\, V}{R_{0}}');
  });
});

describe('the check of TeX itself', () => {
  it.each([
    ['\\input{x}', 'the command'],
    ['\\href{x}{y}', 'the command'],
    ['x^{2}^{3}', 'double ^'],
    ['x^2', 'no group'],
    ['\\frac{a}', 'no group'],
    ['{a', 'no end'],
    ['a}', 'closing brace'],
    ['\\left(a', 'left without right'],
    ['\\frac{\\left(a}{b\\right)}', 'left without right'],
    ['a\\right)', 'right without left'],
    ['<b>', 'the character'],
    ['$x$', 'the character'],
    ['x%', 'the character'],
    ['\\sqrt{}', 'empty group'],
  ])('finds the fault of %s', (tex, fault) => {
    expect(texFault(tex)).toContain(fault);
  });
});
