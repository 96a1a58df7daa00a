/** The little of the CSV reader and writer that is used here. Its own types bring those of Node along, which the source does without. */
declare module 'papaparse' {
  interface ParseError {
    readonly type: string;
    readonly code: string;
    readonly message: string;
    readonly row?: number;
  }
  interface ParseOptions {
    readonly delimiter: string;
    readonly newline: string;
  }
  const Papa: {
    parse(
      text: string,
      options: ParseOptions,
    ): { readonly data: readonly (readonly string[])[]; readonly errors: readonly ParseError[] };
    unparse(rows: readonly (readonly (string | number)[])[], options: { readonly newline: string }): string;
  };
  export default Papa;
}
