/** Values of the symbols of a model, in SI units. Other members are left alone. */
export type ModelInputs = Readonly<Record<string, number>>;

/** An expression that was read, checked and compiled. */
export interface ModelExpression {
  /** The expression, as text that `parseModel` reads if it is not too long for it. */
  readonly expression: string;
  /** Symbols that it uses, sorted. */
  readonly symbols: readonly string[];
  /** Its SI unit, `1` for a plain number; only where the units of the symbols were given. */
  readonly unit?: string;
  /** The expression as TeX, without delimiters. */
  readonly tex: string;
  /**
   * The value at inputs that are given by name.
   *
   * @throws CalculationError `missing-member`, `not-a-number` (inputs, all at once), `outside-domain`,
   * `result-out-of-range` (these show the inputs)
   */
  readonly evaluate: (inputs: ModelInputs) => number;
  /**
   * The same as a plain function of numbers, for propagation and Monte Carlo.
   *
   * @param order Name of each argument. Every symbol of the model must be there; further names are ignored, so
   * that several models can share their inputs.
   */
  readonly asFunction: (order: readonly string[]) => (...values: number[]) => number;
}

/** A model with its sensitivities, in the form that `propagate`, `propagateAll` and `monteCarlo` take. */
export interface DifferentiatedModel {
  readonly evaluate: (inputs: ModelInputs) => number;
  /** The partial derivative by each input, as a function of all inputs. */
  readonly sensitivities: Readonly<Record<string, (inputs: ModelInputs) => number>>;
}

/** A measurement model that was read from an expression. It can be handed to `propagate` as it is. */
export interface MeasurementModel extends ModelExpression, DifferentiatedModel {
  /** The result and the expression as TeX, such as `P = I^{2} \, R`; the expression alone without a name. */
  readonly equationTex: string;
  /** The partial derivative by a symbol: its sensitivity coefficient. */
  readonly derivative: (symbol: string) => ModelExpression;
  /** The second partial derivative by two symbols, or twice by the same. */
  readonly secondDerivative: (first: string, second: string) => ModelExpression;
  /**
   * The model for inputs of which it does not use every one, as several models of one measurement do: its
   * sensitivity to the others is 0.
   *
   * @param names Every input; all symbols of the model among them
   */
  readonly forInputs: (names: readonly string[]) => DifferentiatedModel;
  /** Name and derivative as TeX: `\frac{\partial P}{\partial R} = I^{2}`. */
  readonly sensitivityTex: (symbol: string) => string;
}

/** What a model is to be held to. */
export interface ModelOptions {
  /** Symbols that the expression must use, each of them, and no other. Default: those of `units`, else any. */
  readonly symbols?: readonly string[];
  /** SI unit of each symbol without prefix, such as `{ I: 'A', a: '1/K' }`. Default: dimensions are not checked. */
  readonly units?: Readonly<Record<string, string>>;
  /** SI unit that the result must have. Needs `units`. Default: named from its dimension. */
  readonly unit?: string;
  /** Symbol of the result, for TeX. Default: none, and `f` in sensitivities. */
  readonly result?: string;
}
