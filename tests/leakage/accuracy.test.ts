import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  type LeadOnMetal,
  type LeakageConversion,
  leadCapacitance,
  leakageAtNominal,
  leakageFromStray,
  type StrayPath,
  type StrayQuestion,
  strayFromLeakage,
} from '../../src/leakage/index.js';

const fixture = JSON.parse(readFileSync(new URL('./fixtures/leakage.json', import.meta.url), 'utf8')) as {
  stray: { question: StrayPath; current: string }[];
  inverse: { question: StrayQuestion; capacitance: string }[];
  referred: { question: LeakageConversion; current: string }[];
  lead: { question: LeadOnMetal; upper: string }[];
};

/** Largest distance from the 40-digit values, relative. */
function worst(rows: readonly (readonly [ours: number, theirs: string])[]): number {
  expect(rows.length).toBe(30);
  return Math.max(...rows.map(([ours, theirs]) => Math.abs(ours / Number(theirs) - 1)));
}

// The bounds are from what was measured (1.5, 2, 2 and 1 times 2^-52): they are not to be loosened.
describe('values at 40 digits', () => {
  it('of leakage from strays', () => {
    const rows = fixture.stray.map(({ question, current }) => [leakageFromStray(question).current, current] as const);
    expect(worst(rows)).toBeLessThan(3 * Number.EPSILON);
  });

  it('of strays from leakage, up to nine tenths of what the resistor alone lets through', () => {
    const rows = fixture.inverse.map(
      ({ question, capacitance }) => [strayFromLeakage(question).capacitance, capacitance] as const,
    );
    expect(worst(rows)).toBeLessThan(4 * Number.EPSILON);
  });

  it('of leakage referred to another resistor', () => {
    const rows = fixture.referred.map(
      ({ question, current }) => [leakageAtNominal(question).current, current] as const,
    );
    expect(worst(rows)).toBeLessThan(3 * Number.EPSILON);
  });

  it('of leads over metal', () => {
    const rows = fixture.lead.map(({ question, upper }) => [leadCapacitance(question).upper, upper] as const);
    expect(worst(rows)).toBeLessThan(4 * Number.EPSILON);
  });
});
