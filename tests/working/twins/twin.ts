import type fc from 'fast-check';

/** What a formula of the catalogue is compared with: the fast code, fed with the formula's inputs. */
export interface Twin {
  /**
   * The value by the code that the library runs: a call of the fast function.
   * Where the formula is a step inside a function, the call that reaches it.
   */
  readonly fast: (inputs: Readonly<Record<string, number>>) => number;
  /** Generators of the symbols whose unit does not tell their physical range. */
  readonly symbols?: Readonly<Record<string, fc.Arbitrary<number>>>;
  /** In place of both: a generator of all inputs together, where they depend on each other. */
  readonly inputs?: fc.Arbitrary<Readonly<Record<string, number>>>;
}

/** The twins of a room, by formula identifier: each file beside this one exports one as `twins`. */
export type Twins = Readonly<Record<string, Twin>>;
