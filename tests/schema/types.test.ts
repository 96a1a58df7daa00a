import { describe, expectTypeOf, it } from 'vitest';
import type * as z from 'zod/mini';
import type { Bench, Findings, Plan, Readings, Specification, VerificationRecord } from '../../src/procedure/index.js';
import type { schemaOf } from '../../src/schema/documents/schema-of.js';
import type { unitNames } from '../../src/schema/documents/step-schema.js';
import type { UnitName } from '../../src/working/index.js';

/** A type with everything in it readonly and intersections flattened, so that only what differs in substance differs. */
type Plain<T> = T extends (...parameters: never) => unknown
  ? T
  : T extends object
    ? { readonly [K in keyof T]: Plain<T[K]> }
    : T;

type Out<K extends keyof typeof schemaOf> = Plain<z.output<(typeof schemaOf)[K]>>;

// Checked by `npm run types`: a schema and its type cannot drift apart in silence.
describe('what a schema gives is exactly the type of the document', () => {
  it('specification', () => expectTypeOf<Out<'specification'>>().toEqualTypeOf<Plain<Specification>>());
  it('bench', () => expectTypeOf<Out<'bench'>>().toEqualTypeOf<Plain<Bench>>());
  it('readings', () => expectTypeOf<Out<'readings'>>().toEqualTypeOf<Plain<Readings>>());
  it('plan', () => expectTypeOf<Out<'plan'>>().toEqualTypeOf<Plain<Plan>>());
  it('findings', () => expectTypeOf<Out<'findings'>>().toEqualTypeOf<Plain<Findings>>());
  it('record', () => expectTypeOf<Out<'record'>>().toEqualTypeOf<Plain<VerificationRecord>>());
});

it('the units of workings are all listed', () => {
  expectTypeOf<(typeof unitNames)[number]>().toEqualTypeOf<UnitName>();
});

it('the comparison itself sees a member that is missing, optional or wider', () => {
  expectTypeOf<Plain<{ a: number }>>().not.toEqualTypeOf<Plain<{ a: number; b?: string }>>();
  expectTypeOf<Plain<{ a?: number }>>().not.toEqualTypeOf<Plain<{ a: number }>>();
  expectTypeOf<Plain<{ a?: number }>>().not.toEqualTypeOf<Plain<{ a?: number | undefined }>>();
  expectTypeOf<Plain<{ a: 'x' }>>().not.toEqualTypeOf<Plain<{ a: string }>>();
});
