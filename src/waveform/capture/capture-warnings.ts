import type { Warning } from '../../checks/index.js';
import type { ConverterRange } from './capture.js';
import type { ChannelScan } from './scan-channels.js';

/** Fewer samples than this in a cycle of the carrier miss its crests by more than 5 %. */
const fewSamples = 10;
/** Fewer whole bursts than this say little about their spread. */
const fewBursts = 3;
/** A run of equal samples at the top of this share of a cycle: on a sine it would mean more than 4 % cut off. */
const flatShare = 0.1;
const flatSamples = 4;
/** A carrier that differs by more from what is expected is another one. */
const carrierDifference = 0.2;

/** A channel whose samples look cut off at the top or the bottom, or are known to be. */
export function clippingWarning(
  name: string,
  { lowest, highest, longestFlat }: ChannelScan,
  cycle: number,
  range: ConverterRange | undefined,
): Warning[] {
  if (range !== undefined && (lowest <= range.lowest || highest >= range.highest)) {
    return [{ code: 'capture-clipped', message: `The ${name} reaches the end of the range of its converter.` }];
  }
  if (lowest === highest || longestFlat < Math.max(flatSamples, flatShare * cycle)) return [];
  return [
    {
      code: 'capture-clipped',
      message: `The ${name} stays at its extreme for ${longestFlat} samples: it is clipped, unless its tops are flat.`,
    },
  ];
}

/** Too few samples in a cycle, or a carrier that is not the expected one. */
export function samplingWarnings(cycle: number, interval: number, expected: number | undefined): Warning[] {
  const warnings: Warning[] = [];
  if (cycle > 0 && cycle < fewSamples) {
    warnings.push({
      code: 'few-samples',
      message: `A cycle of the carrier has ${cycle.toFixed(1)} samples: peaks are missed, and the carrier may be an alias.`,
    });
  }
  if (expected !== undefined && cycle > 0) {
    const found = 1 / (cycle * interval);
    if (Math.abs(found / expected - 1) > carrierDifference) {
      warnings.push({
        code: 'capture-aliased',
        message: `The carrier is found at ${found.toPrecision(4)} Hz where ${expected} Hz is expected.`,
      });
    }
  }
  return warnings;
}

/** What the window could not be made of. */
export function windowWarnings(kind: 'bursts' | 'cycles' | 'record', count: number, cycle: number): Warning[] {
  if (kind === 'cycles') return [];
  if (kind === 'bursts') {
    if (count >= fewBursts) return [];
    const whole = count === 1 ? 'one whole burst' : `${count} whole bursts`;
    return [{ code: 'few-bursts', message: `The means are taken over ${whole} only.` }];
  }
  const means = 'the means are those of the whole record, whatever its length.';
  if (count > 0) return [{ code: 'few-bursts', message: `Only one burst begins in the capture: ${means}` }];
  if (cycle > 0) return [{ code: 'few-bursts', message: `The capture holds too few cycles for a window: ${means}` }];
  return [{ code: 'no-carrier', message: `No carrier is found: ${means}` }];
}
