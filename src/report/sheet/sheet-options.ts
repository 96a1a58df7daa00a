/** What a worksheet or a record contains. */
export interface SheetOptions {
  /** Whether the working of every number is printed with it. Left out, a sentence says where it is. Default: true. */
  readonly working?: boolean;
}
