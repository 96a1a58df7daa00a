/** One tool that does the work of a case. */
export interface Contender {
  readonly tool: string;
  readonly version: string;
  /** Its results, or a sample of them, for the comparison before any time counts. */
  readonly values: () => ArrayLike<number> | Promise<ArrayLike<number>>;
  /** Does the work once and returns a number that depends on every result, so that none can be left out. */
  readonly run?: () => number;
  /** In place of `run`: the tool times itself, as another process must. */
  readonly timedRun?: () => Promise<{ readonly seconds: number; readonly sum: number }>;
  /** Ends what the tool has started. */
  readonly end?: () => void;
}

/** The library against another tool, or against code written by hand. */
export interface ComparisonCase {
  readonly name: string;
  /** Results in one run. */
  readonly n: number;
  /** The library first, then what it is compared with. */
  readonly contenders: () => readonly [Contender, Contender] | Promise<readonly [Contender, Contender]>;
  /** Largest time of the library as a multiple of the other's time. */
  readonly goal: number;
  /** Largest relative difference of a value; 1e-12 unless stated. */
  readonly tolerance?: number;
  /**
   * Each timed run comes right after one of the same tool that is not timed: while the other tool works for seconds,
   * an engine gives back its memory and forgets code.
   */
  readonly warmEach?: boolean;
  /** Rounds that count, an odd number: fewer where one takes seconds; 15 unless stated. */
  readonly rounds?: number;
  /** What the case needs and this machine lacks, with the way to get it. */
  readonly missing?: () => string | undefined;
}

/** Samples of one quantity of the library, with an upper limit. */
export interface Measurement {
  readonly what: string;
  readonly unit: 's' | 'MB';
  readonly samples: readonly number[];
  /** Upper limit of the median. */
  readonly goal?: number;
}

/** A case that measures itself: memory, the start of a process. */
export interface MeasuredCase {
  readonly name: string;
  readonly n: number;
  readonly measure: () => Promise<readonly Measurement[]>;
}

export type BenchCase = ComparisonCase | MeasuredCase;

/** One row of the result. */
export interface BenchRow {
  readonly case: string;
  readonly tool: string;
  readonly version: string;
  readonly n: number;
  readonly unit: 's' | 'MB';
  readonly min: number;
  readonly median: number;
  readonly max: number;
  /** Time of this tool as a multiple of the other's: the median over the rounds. */
  readonly ratio?: number;
  /** Upper limit of `ratio`, or of `median` where there is no ratio. */
  readonly goal?: number;
  readonly met?: boolean;
}
