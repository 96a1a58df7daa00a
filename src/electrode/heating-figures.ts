import type { SourceId, Standing } from '../working/index.js';

/** A heating factor that the trade quotes. */
export interface HeatingFigure {
  /** In A²·s. */
  readonly heatingFactor: number;
  readonly title: string;
  readonly standing: Standing;
  readonly source?: SourceId;
}

/** Heating factors that neutral electrodes are tested or spoken of with. None applies unless it is given by name. */
export const heatingFigures: Readonly<Record<'thermal-test' | 'commonly-quoted', HeatingFigure>> = {
  'thermal-test': {
    heatingFactor: 29.4,
    title: 'Thermal test with 700 mA for 60 s',
    standing: 'published',
    source: 'aami-hf18',
  },
  'commonly-quoted': {
    heatingFactor: 30,
    title: 'The rounded figure that is commonly quoted',
    standing: 'secondary',
  },
};
