import type * as z from 'zod/mini';
import { type Fault, nearName } from '../checks/index.js';
import { faultsFromIssue } from './fault-from-issue.js';
import { failure, faultOf, type ParseResult } from './fault-list.js';
import { type DocumentName, documentNames, documentVersion } from './parts/header.js';
import { plainCopy } from './plain-copy.js';

/** Reads a document of a known kind from any value, which is copied first: it may be hostile. */
export function parseDocument<T>(name: DocumentName, schema: z.ZodMiniType<T>, input: unknown): ParseResult<T> {
  const { value, faults } = plainCopy(input);
  if (value === undefined && faults.length > 0) return failure(faults);
  return parsePlain(name, schema, value, faults);
}

/**
 * Reads a document of a known kind from plain data, which it may change: looks at what it says it is, and validates it.
 * `before` are the faults that were found on the way here.
 */
export function parsePlain<T>(
  name: DocumentName,
  schema: z.ZodMiniType<T>,
  value: unknown,
  before: readonly Fault[] = [],
): ParseResult<T> {
  const stranger = headerFault(name, value);
  if (stranger !== undefined) return failure([...before, stranger]);
  // A pointer to a JSON Schema, which editors put in, says nothing about the document.
  if (isObject(value)) delete value['$schema'];
  const read = validate(schema, value);
  if (read.ok && before.length === 0) return read;
  return failure(read.ok ? before : [...before, ...withoutRepeats(read.faults, before)]);
}

/** The kind that a value says it is; a fault when it says none or an unknown one. */
export function documentName(value: unknown): DocumentName | Fault {
  const known = documentNames.map((entry) => `esu-limits/${entry}`);
  if (!isObject(value)) return faultOf('wrong-type', '', value, 'must be an object with the members of a document');
  const { schema } = value;
  const requirement = `must be one of: ${known.join(', ')}`;
  if (schema === undefined) return faultOf('missing-member', 'schema', schema, requirement);
  const name = documentNames.find((entry) => schema === `esu-limits/${entry}`);
  if (name !== undefined) return name;
  const near = typeof schema === 'string' ? nearName(schema, known) : undefined;
  return faultOf(
    'unknown-document',
    'schema',
    schema,
    requirement,
    near === undefined ? undefined : `Did you mean "${near}"?`,
  );
}

/** Why a value is not worth reading further: another kind of document, or one of a later version. */
function headerFault(name: DocumentName, value: unknown): Fault | undefined {
  if (!isObject(value)) return faultOf('wrong-type', '', value, 'must be an object with the members of a document');
  const { schema, version } = value;
  // Without a name, all the rest can still be read and all its faults listed.
  if (schema !== undefined && schema !== `esu-limits/${name}`) {
    const said = documentName(value);
    if (typeof said !== 'string') return said;
    return faultOf(
      'unknown-document',
      'schema',
      schema,
      `must be "esu-limits/${name}"`,
      `This is a document of another kind: ${said}.`,
    );
  }
  if (typeof version === 'number' && version > documentVersion) return newerVersion('version', version);
  return undefined;
}

/** The small zod interprets its schemas and makes no code from text, so that the strictest page may run it. */
function validate<T>(schema: z.ZodMiniType<T>, value: unknown): ParseResult<T> {
  const result = safely(() => schema.safeParse(value, { reportInput: true }));
  if (result?.success) return { ok: true, value: result.data };
  if (result !== undefined) {
    return { ok: false, faults: result.error.issues.flatMap((issue) => faultsFromIssue(issue)).map(asNewerVersion) };
  }
  const further = faultOf('too-many-faults', '', value, 'further faults than these are not listed');
  const start = safely(() => schema.safeParse(startOfLists(value), { reportInput: true }));
  return { ok: false, faults: [...(start?.error?.issues ?? []).flatMap((issue) => faultsFromIssue(issue)), further] };
}

/** Hundreds of thousands of faults in one list exhaust the stack inside the validator. */
function safely<R>(work: () => R): R | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** The first entries of every list: enough to name the first faults. */
function startOfLists(value: unknown): unknown {
  if (Array.isArray(value)) return value.slice(0, 100).map(startOfLists);
  if (!isObject(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, startOfLists(member)]));
}

/** A document inside another may be of a later version too. */
function asNewerVersion(fault: Fault): Fault {
  const version = Number(fault.received);
  if (!/(^|\.)version$/.test(fault.path) || !(version > documentVersion)) return fault;
  return newerVersion(fault.path, version);
}

function newerVersion(path: string, version: number): Fault {
  const hint = 'Use a newer version of the library.';
  return faultOf(
    'newer-version',
    path,
    version,
    `must be at most ${documentVersion}, the version that this library reads`,
    hint,
  );
}

/** What was already refused as it was copied is missing now; that is not another fault. */
function withoutRepeats(faults: readonly Fault[], before: readonly Fault[]): readonly Fault[] {
  const known = new Set(before.map((fault) => fault.path));
  return faults.filter((fault) => fault.code !== 'missing-member' || !known.has(fault.path));
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
