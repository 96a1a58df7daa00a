import type { SourceId, Standing } from '../working/index.js';

/** Guidance for the current of a touch. */
export interface ContactCurrentGuidance {
  /** At work, in amperes rms. */
  readonly occupational: number;
  /** For the public, in amperes rms. */
  readonly public: number;
  /** In hertz. */
  readonly from: number;
  /** In hertz. */
  readonly to: number;
  readonly source: SourceId;
  readonly standing: Standing;
}

/** Reference levels of ICNIRP (2010) for contact currents at the frequencies of HF surgery. */
export const contactCurrentGuidance: ContactCurrentGuidance = {
  occupational: 0.04,
  public: 0.02,
  from: 100e3,
  to: 10e6,
  source: 'icnirp-2010',
  standing: 'secondary',
};
