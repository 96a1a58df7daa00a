import type { Standing } from './standing.js';

/** A caution that is part of a result or of a plan, and is printed with it. */
export interface Caution {
  readonly id: string;
  readonly text: string;
  readonly standing: Standing;
}
