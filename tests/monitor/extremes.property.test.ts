import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CalculationError } from '../../src/checks/index.js';
import {
  areaAtResistance,
  challengesFor,
  displayFit,
  type Monitor,
  monitorStates,
  padImpedance,
  readingRows,
  tripPoints,
} from '../../src/monitor/index.js';

/** Any number that JSON can hold, plain ones among them; now and then one that it cannot. */
const any = fc.oneof(
  { weight: 4, arbitrary: fc.double({ min: 0, max: 1e3, noNaN: true }) },
  { weight: 2, arbitrary: fc.double({ min: 0, noNaN: true, noDefaultInfinity: true }) },
  { weight: 1, arbitrary: fc.double() },
  { weight: 1, arbitrary: fc.constantFrom(0, -0, 5e-324, 1e-300, 1e300, Number.MAX_VALUE) },
);
const limit = fc.record(
  { resistance: any, hysteresis: any, tolerance: fc.record({ absolute: any }) },
  { requiredKeys: ['resistance'] },
);
const rise = fc.record(
  {
    fraction: any,
    tolerance: any,
    hysteresis: any,
    floor: any,
    baseline: fc.constantFrom('at-start', 'lowest', 'tracked'),
    timeConstant: any,
  },
  { requiredKeys: ['fraction', 'baseline'] },
);
const monitors = fc.record(
  {
    kind: fc.constant('contact-quality'),
    lower: limit,
    upper: limit,
    rise,
    alarmDelay: any,
    releaseDelay: any,
    series: fc.record({ resistance: any, limits: any }),
  },
  { requiredKeys: ['kind'] },
) as fc.Arbitrary<Monitor>;
const accuracy = fc.record({ relative: any, absolute: any });
const settings = { numRuns: 600 };

/** A result that JSON holds as it is, or a coded error: nothing else. */
function isSafe(work: () => unknown): void {
  let result: unknown;
  try {
    result = work();
  } catch (error) {
    if (error instanceof CalculationError) return;
    throw error;
  }
  // A number that JSON cannot hold would come back as null; 0 and −0 are one number to it.
  const plain = (_: string, value: unknown) => (Object.is(value, -0) ? 0 : value);
  expect(JSON.parse(JSON.stringify(result))).toEqual(JSON.parse(JSON.stringify(result, plain)));
  const walk = (value: unknown): void => {
    if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
    if (value !== null && typeof value === 'object') for (const member of Object.values(value)) walk(member);
    expect(value).not.toBeUndefined();
  };
  walk(result);
}

describe('whatever is given, a finite result or a coded error', () => {
  it('monitorStates', () => {
    const traces = fc.record({
      interval: any,
      start: any,
      resistance: fc.array(fc.oneof(any, fc.constant('open' as const)), { maxLength: 8 }),
    });
    fc.assert(
      fc.property(monitors, traces, (monitor, trace) => isSafe(() => monitorStates(monitor, trace))),
      settings,
    );
  });

  it('challengesFor', () => {
    const boxes = fc.oneof(
      fc.record({ step: any, maximum: any, accuracy }),
      fc.record({ values: fc.array(any, { maxLength: 6 }).map((list) => [...list].sort((a, b) => a - b)), accuracy }),
    );
    fc.assert(
      fc.property(monitors, boxes, (monitor, box) => isSafe(() => challengesFor(monitor, box))),
      settings,
    );
  });

  it('tripPoints', () => {
    const steps = fc
      .array(fc.record({ set: any, alarm: fc.boolean() }), { maxLength: 6 })
      .map((list) => [...list].sort((a, b) => a.set - b.set));
    const sweeps = fc.array(fc.record({ steps, responseTime: any, baseline: any }, { requiredKeys: ['steps'] }), {
      maxLength: 3,
    });
    const bench = fc.record(
      { monitor: monitors, accuracy, coverageFactor: any, timeLimits: any },
      { requiredKeys: ['monitor', 'accuracy'] },
    );
    fc.assert(
      fc.property(sweeps, bench, (list, given) => isSafe(() => tripPoints(list, given))),
      settings,
    );
  });

  it('readings and pads', () => {
    const contact = fc.record({ resistance: any, capacitance: any, area: any }, { requiredKeys: ['resistance'] });
    const pads = fc.record({ contacts: fc.tuple(contact, contact), tissue: any });
    const rows = fc.array(fc.record({ set: any, displayed: any }), { maxLength: 5 });
    fc.assert(
      fc.property(pads, rows, any, any, accuracy, (pad, list, one, two, off) => {
        const reading = { frequency: one, reads: 'magnitude' } as const;
        isSafe(() => padImpedance(pad, reading));
        isSafe(() => areaAtResistance(pad, { ...reading, seen: two, foil: 'first' }));
        isSafe(() => displayFit({ rows: list, resolution: one, accuracy: off }));
        isSafe(() => readingRows({ rows: [{ set: one }], tolerance: { absolute: two }, resolution: two }));
        isSafe(() => readingRows({ rows: [{ set: 'open', below: one }], resolution: two }));
      }),
      settings,
    );
  });
});
