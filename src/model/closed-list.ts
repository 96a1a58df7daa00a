/** What the closed list says of a function. */
export interface FunctionEntry {
  /** Fewest arguments. */
  readonly least: number;
  /** Most arguments. */
  readonly most: number;
  /** Rounding belongs to workings only: its sensitivity is 0 wherever it has one. */
  readonly rounds?: true;
}

const one: FunctionEntry = { least: 1, most: 1 };
const two: FunctionEntry = { least: 2, most: 2 };
const some: FunctionEntry = { least: 2, most: 20 };
const rounding: FunctionEntry = { least: 1, most: 1, rounds: true };

/** The closed list: arithmetic and elementary functions, nothing that reads, writes or loops. */
export const functionList = {
  abs: one,
  acos: one,
  acosh: one,
  asin: one,
  asinh: one,
  atan: one,
  atan2: two,
  atanh: one,
  cbrt: one,
  ceil: rounding,
  cos: one,
  cosh: one,
  exp: one,
  expm1: one,
  floor: rounding,
  hypot: some,
  log: one,
  log10: one,
  log1p: one,
  log2: one,
  max: some,
  min: some,
  pow: two,
  round: rounding,
  sign: rounding,
  sin: one,
  sinh: one,
  sqrt: one,
  square: one,
  tan: one,
  tanh: one,
} as const satisfies Record<string, FunctionEntry>;

/** A function of the closed list. */
export type FunctionName = keyof typeof functionList;

/** What an expression of a working may call. */
export const allowedFunctions: readonly string[] = /* @__PURE__ */ Object.keys(functionList);

/** What a measurement model may call: the same without rounding. */
export const modelFunctions: readonly string[] = /* @__PURE__ */ allowedFunctions.filter(
  (name) => !('rounds' in functionList[name as FunctionName]),
);

/** Names with a value of their own. */
export const constantList = { pi: Math.PI, e: Math.E } as const;

/** A constant of the closed list. */
export type ConstantName = keyof typeof constantList;

/** Whether a name is a constant of the closed list. */
export function isConstant(name: string): name is ConstantName {
  return Object.hasOwn(constantList, name);
}

/** Whether a name is a function of the closed list. */
export function isFunction(name: string): name is FunctionName {
  return Object.hasOwn(functionList, name);
}

/** Far above any formula: bounds on the work that text from a file can cause. */
export const limits = {
  /** Characters of an expression. */
  characters: 1000,
  /** Parentheses, calls, powers and signs inside one another. */
  nesting: 60,
  /** Parts of an expression that is to be differentiated: numbers, symbols, operators and functions. */
  parts: 400,
} as const;
