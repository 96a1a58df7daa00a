import { execFileSync } from 'node:child_process';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deriveLimits } from '../../src/band/index.js';
import { recompute } from '../../src/model/index.js';
import {
  type Bench,
  makeRecord,
  type Output,
  type Plan,
  planVerification,
  type Readings,
  recomputeRecord,
  type Specification,
  type VerificationRecord,
} from '../../src/procedure/index.js';
import { bench, specificationOf } from './documents.js';

/** An output with a curve of the three regimes, a tolerance and sometimes rows. */
const outputs: fc.Arbitrary<Output> = fc
  .record({
    power: fc.integer({ min: 20, max: 400 }),
    low: fc.integer({ min: 60, max: 300 }),
    ratio: fc.double({ min: 2, max: 20, noNaN: true }),
    below: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
    above: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
    toleranceIn: fc.constantFrom('power', 'current', 'voltage'),
    interpolation: fc.constantFrom('log-log', 'monotone-cubic', 'monotone-cubic-log', 'linear'),
    withRow: fc.boolean(),
  })
  .map(({ power, low, ratio, below, above, toleranceIn, interpolation, withRow }): Output => {
    const high = low * ratio;
    const rowPower = power / 2;
    return {
      id: 'out',
      name: 'Output of the tests',
      circuit: 'monopolar',
      connection: 'Active output to the load',
      scale: { kind: 'watt', minimum: 1, maximum: power },
      ratedPower: power,
      ratedLoad: low,
      crestFactor: 2,
      duty: { on: 10, off: 20 },
      curves: [
        {
          setting: power,
          interpolation,
          points: [
            { load: low / 10, power: power / 10 },
            { load: low, power },
            { load: high, power },
            { load: high * 10, power: power / 10 },
          ],
        },
      ],
      otherSettings: 'proportional',
      tolerance: { in: toleranceIn, relative: { below, above } },
      ...(withRow
        ? {
            rows: [
              {
                setting: rowPower,
                load: 500,
                quantity: 'power',
                power: rowPower,
                lower: rowPower * 0.8,
                upper: rowPower * 1.1,
              },
            ],
            settings: [power, rowPower],
          }
        : {}),
    };
  });

const benches: fc.Arbitrary<Bench> = fc
  .record({
    reads: fc.constantFrom('current', 'power'),
    offset: fc.double({ min: 0.95, max: 1.05, noNaN: true }),
  })
  .map(({ reads, offset }) => ({
    ...bench,
    reads,
    loads: bench.loads.map((load) => ({ ...load, resistance: load.resistance * offset })),
  }));

function readingsFor(plan: Plan, factors: readonly number[]): Readings {
  return {
    schema: 'esu-limits/readings',
    version: 1,
    readings: plan.points.flatMap((point, i) => {
      const factor = factors[i % factors.length] as number;
      if (point.nominal === undefined || factor < 0.05) return [];
      return [
        {
          point: point.id,
          phase: 'as-found' as const,
          quantity: point.reads,
          value: point.nominal * factor,
          display: { quantity: 'power' as const, value: (point.expected?.power as number) * factor },
        },
      ];
    }),
  };
}

/** The same document with the members of every object in another order. */
function reversed(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(reversed);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, member]) => [key, reversed(member)]),
  );
}

const documents = fc.record({
  output: outputs,
  bench: benches,
  factors: fc.array(fc.double({ min: 0, max: 4, noNaN: true }), { minLength: 1, maxLength: 20 }),
});

describe('laws of plans and records', () => {
  it('every step of every working re-evaluates to its value', () => {
    fc.assert(
      fc.property(documents, ({ output, bench: b, factors }) => {
        const plan = planVerification(specificationOf(output), b);
        const record = makeRecord(plan, readingsFor(plan, factors));
        const steps = [
          ...plan.points.flatMap((point) => point.working),
          ...record.findings.points.flatMap((row) => row.working),
          ...record.findings.rules.flatMap((rule) => rule.working),
        ];
        expect(steps.length).toBeGreaterThan(0);
        for (const made of steps) {
          // A difference of nearly equal values keeps the error of its inputs, hence the absolute part.
          const scale = Math.max(Math.abs(made.value), ...(made.expression.includes('-') ? [1e-3] : []));
          expect(Math.abs(recompute(made) - made.value)).toBeLessThanOrEqual(1e-12 * scale);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('a plan is the same bytes for any order of keys', () => {
    fc.assert(
      fc.property(documents, ({ output, bench: b }) => {
        const specification = specificationOf(output);
        const plan = planVerification(specification, b);
        const again = planVerification(reversed(specification) as Specification, reversed(b) as Bench);
        expect(JSON.stringify(again)).toBe(JSON.stringify(plan));
      }),
      { numRuns: 25 },
    );
  });

  it('a record survives JSON and assesses to the same findings', () => {
    fc.assert(
      fc.property(documents, ({ output, bench: b, factors }) => {
        const plan = planVerification(specificationOf(output), b);
        const record = makeRecord(plan, readingsFor(plan, factors), { by: 'Invented person' });
        const back = JSON.parse(JSON.stringify(record)) as VerificationRecord;
        expect(back).toEqual(record);
        expect(recomputeRecord(back)).toEqual({ same: true, differences: [] });
      }),
      { numRuns: 25 },
    );
  });

  it('a record that was changed by hand does not recompute', () => {
    const plan = planVerification(specificationOf(fc.sample(outputs, { seed: 1, numRuns: 1 })[0] as Output), bench);
    const record = makeRecord(plan, readingsFor(plan, [1.3]));
    const forged = JSON.parse(JSON.stringify(record)) as { findings: { points: { verdict: string }[] } };
    const row = forged.findings.points.findIndex((point) => point.verdict === 'fail');
    expect(row).toBeGreaterThanOrEqual(0);
    (forged.findings.points[row] as { verdict: string }).verdict = 'pass';
    expect(recomputeRecord(forged as unknown as VerificationRecord)).toEqual({
      same: false,
      differences: [`findings.points[${row}].verdict`],
    });
  });

  it('inward rounding never lets a value pass that the exact limits fail', () => {
    fc.assert(
      fc.property(documents, ({ output, bench: b }) => {
        const { in: toleranceIn, ...tolerance } = output.tolerance as NonNullable<Output['tolerance']>;
        for (const point of planVerification(specificationOf(output), b).points) {
          if (point.expected === undefined || point.load === undefined) continue;
          const load = point.load.resistance;
          const exact = deriveLimits({
            power: point.expected.power,
            load,
            tolerance,
            toleranceIn,
            reads: point.reads,
          }).limits;
          // A limit within 1e-12 of a display step counts as on it; the rest is the rounding of this comparison.
          const slack = 1.001e-12 * (exact.upper as number);
          expect(point.derivedLimits?.lower).toBeGreaterThanOrEqual((exact.lower as number) - slack);
          expect(point.derivedLimits?.upper).toBeLessThanOrEqual((exact.upper as number) + slack);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('the main job does not depend on locale or time zone', () => {
    const run = (environment: Record<string, string>): string => {
      const script = new URL('./print-plan.ts', import.meta.url).pathname;
      return execFileSync(process.execPath, ['--import', 'tsx', script], {
        env: { ...process.env, ...environment },
        encoding: 'utf8',
      });
    };
    const here = run({});
    expect(here.length).toBeGreaterThan(1000);
    expect(run({ TZ: 'Asia/Kathmandu', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' })).toBe(here);
    expect(run({ TZ: 'America/St_Johns', LANG: 'ar_EG.UTF-8', LC_ALL: 'ar_EG.UTF-8' })).toBe(here);
  });
});
