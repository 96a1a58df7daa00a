import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type DampedSine, dampedSine, type GatedSine, gatedSine } from '../../src/waveform/index.js';

interface Row<Wave> {
  readonly wave: Wave;
  readonly rms: string;
  readonly averageRectified: string;
  readonly peak: string;
}

const fixture = JSON.parse(readFileSync(new URL('./fixtures/closed-forms.json', import.meta.url), 'utf8')) as {
  gated: Row<GatedSine>[];
  damped: Row<DampedSine>[];
};

/** Largest relative difference of a figure over all rows. */
function worst<Wave, Figure extends 'rms' | 'averageRectified' | 'peak'>(
  rows: readonly Row<Wave>[],
  figure: Figure,
  figures: (wave: Wave) => Record<Figure, number>,
): number {
  return Math.max(...rows.map((row) => Math.abs(figures(row.wave)[figure] / Number(row[figure]) - 1)));
}

// The bounds are those that the doc comments state, from what was measured: they are not to be loosened.
describe('accuracy against 40 digits', () => {
  it.each(['rms', 'averageRectified'] as const)('of a gated sine, %s', (figure) => {
    expect(fixture.gated.length).toBe(60);
    expect(worst(fixture.gated, figure, gatedSine)).toBeLessThan(1e-15);
  });

  it.each(['rms', 'averageRectified', 'peak'] as const)('of a damped sine, %s', (figure) => {
    expect(fixture.damped.length).toBe(80);
    expect(worst(fixture.damped, figure, dampedSine)).toBeLessThan(1e-13);
  });
});
