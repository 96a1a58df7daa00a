import fc from 'fast-check';

/*
 * Generators of physical values. A raw double mostly finds overflow; these find faults that a bench would.
 * `fc.double` draws evenly over the floating-point numbers of its range, so that each decade has its share.
 */

function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

/** A value of a stretch, for symbols of one formula. */
export const valueBetween = between;

/** Power that a generator delivers, in watts: 0.1–400. */
export const power = (): fc.Arbitrary<number> => between(0.1, 400);

/** Test load, in ohms: 1–10 000. */
export const load = (): fc.Arbitrary<number> => between(1, 10_000);

/** Rms current, in amperes: 1 mA–5 A. */
export const current = (): fc.Arbitrary<number> => between(0.001, 5);

/** Rms voltage, in volts: 0.1–5000. */
export const voltage = (): fc.Arbitrary<number> => between(0.1, 5000);

/** Reactance of a load, in ohms, either sign. */
export const reactance = (): fc.Arbitrary<number> =>
  fc.oneof(between(0.01, 5000), between(-5000, -0.01), fc.constant(0));

/** Crest factor, 1–20. */
export const crestFactor = (): fc.Arbitrary<number> => between(1, 20);

/** Frequency of the output, in hertz: 100 kHz–5 MHz. */
export const frequency = (): fc.Arbitrary<number> => between(1e5, 5e6);

/** A fraction that a tolerance states: 0.1 %–60 %. */
export const toleranceFraction = (): fc.Arbitrary<number> => between(0.001, 0.6);

/** What an instrument resolves, in the unit of the reading. */
export const resolution = (): fc.Arbitrary<number> =>
  fc.constantFrom(0.0001, 0.001, 0.002, 0.005, 0.01, 0.05, 0.1, 0.25, 0.5, 1);

/** Relative tolerance, the same or another on each side, both sides given. */
export const relativeTolerance = (): fc.Arbitrary<{ relative: number | { below: number; above: number } }> =>
  fc.oneof(
    toleranceFraction().map((relative) => ({ relative })),
    fc.record({ below: toleranceFraction(), above: toleranceFraction() }).map((relative) => ({ relative })),
  );

/** How a band is read: any of the three quantities. */
export const quantity = (): fc.Arbitrary<'power' | 'current' | 'voltage'> =>
  fc.constantFrom('power' as const, 'current' as const, 'voltage' as const);

/** Published points of a curve: 2–12 loads at least 1 % apart, powers of 0.1–400 W in any order. */
export const curvePoints = ({
  minimum = 2,
  maximum = 12,
} = {}): fc.Arbitrary<{ readonly load: number; readonly power: number }[]> =>
  fc
    .tuple(between(1, 200), fc.array(fc.tuple(between(1.01, 3), power()), { minLength: minimum, maxLength: maximum }))
    .map(([start, rows]) => {
      let next = start;
      return rows.map(([ratio, watts]) => {
        next *= ratio;
        return { load: next, power: watts };
      });
    });

/** Limits of a generator with a stretch of constant power at least a tenth wide. */
export const regimeLimits = (): fc.Arbitrary<{
  readonly power: number;
  readonly currentLimit: number;
  readonly voltageLimit: number;
}> =>
  fc
    .record({ power: between(5, 400), corner: between(5, 300), width: between(1.1, 40) })
    .map(({ power: watts, corner, width }) => ({
      power: watts,
      currentLimit: Math.sqrt(watts / corner),
      voltageLimit: Math.sqrt(watts * corner * width),
    }));
