/** A sweep over a monitor, ready to draw. */
export interface SweepPicture {
  readonly title: string;
  /** Resistances in the order in which they were set, in ohms, and whether the monitor alarmed. */
  readonly steps: readonly { readonly set: number; readonly alarm: boolean }[];
  /** Where the monitor may trip, in ohms as set: a band, or a single value. */
  readonly threshold?: { readonly lower: number; readonly upper: number; readonly label: string };
  /** Time from setting the value that tripped to the alarm, in seconds, and the longest permitted. */
  readonly response?: { readonly time: number; readonly permitted?: number };
}
