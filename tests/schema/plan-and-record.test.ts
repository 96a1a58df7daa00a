import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import {
  assessReadings,
  makeRecord,
  planVerification,
  type Reading,
  recomputeRecord,
} from '../../src/procedure/index.js';
import {
  parseBench,
  parseFindings,
  parsePlan,
  parseReadings,
  parseRecord,
  parseSpecification,
  readDocument,
  safeParseRecord,
} from '../../src/schema/index.js';
import { jsonSchemaOf } from '../../src/schema/json-schema-of.js';
import { fixture } from './fixtures.js';

const specification = parseSpecification(fixture('specification-text.json'));
const bench = parseBench(fixture('bench-text.json'));
const plan = planVerification(specification, bench);
const readings = parseReadings({
  ...fixture('readings-si.json'),
  readings: plan.points.map(
    (point, i): Reading => ({
      point: i === 0 ? '1' : point.id,
      phase: 'as-found',
      quantity: point.reads,
      // The second is ten times too high, as a slip of the decimal point would make it.
      value: (point.nominal ?? 0.5) * (i === 1 ? 10 : 1.02),
      display: { quantity: 'power', value: 80 },
      note: 'Invented.',
    }),
  ),
});
const findings = assessReadings(plan, readings);
const record = makeRecord(plan, readings, {
  occasion: 'after repair',
  by: 'Invented technician',
  date: '',
  remarks: 'Nothing\nfurther.',
});

/** What a file would hold. */
const written = <T>(document: T): T => JSON.parse(JSON.stringify(document)) as T;

describe('what the library writes, it reads', () => {
  it.each([
    ['plan', plan, parsePlan],
    ['findings', findings, parseFindings],
    ['record', record, parseRecord],
  ] as const)('%s', (name, document, parse) => {
    expect(plan.points.length).toBeGreaterThan(3);
    expect(parse(written(document))).toEqual(written(document));
    expect(readDocument(JSON.stringify(document))).toEqual(written(document));
    const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(jsonSchemaOf(name));
    validate(written(document));
    expect(validate.errors).toBeNull();
  });

  it('and a record that was read back is recomputed to itself', () => {
    expect(recomputeRecord(parseRecord(written(record)))).toEqual({ same: true, differences: [] });
  });
});

describe('a record that was changed', () => {
  const changed = (change: (tree: ReturnType<typeof fixture>) => void): string[] => {
    const tree = written(record) as unknown as ReturnType<typeof fixture>;
    change(tree);
    const result = safeParseRecord(tree);
    return result.ok ? [] : result.faults.map(({ code, path }) => `${code} at ${path}`);
  };

  it.each<[string, (tree: ReturnType<typeof fixture>) => void]>([
    [
      'newer-version at version',
      (tree) => {
        tree.version = 2;
      },
    ],
    [
      'newer-version at plan.version',
      (tree) => {
        tree.plan.version = 2;
      },
    ],
    [
      'newer-version at plan.specification.version',
      (tree) => {
        tree.plan.specification.version = 7;
      },
    ],
    [
      'unknown-member at plan.points[0].colour',
      (tree) => {
        tree.plan.points[0].colour = 'red';
      },
    ],
    [
      'missing-member at plan.points[0].limits',
      (tree) => {
        delete tree.plan.points[0].limits;
      },
    ],
    [
      'not-a-number at plan.points[0].nominal',
      (tree) => {
        tree.plan.points[0].nominal = Number.NaN;
      },
    ],
    [
      'wrong-type at plan.points[0].wantedLoad',
      (tree) => {
        tree.plan.points[0].wantedLoad = '500 ohm';
      },
    ],
    [
      'duplicate at plan.points[1].id',
      (tree) => {
        tree.plan.points[1].id = tree.plan.points[0].id;
      },
    ],
    [
      'not-positive at plan.specification.outputs[0].ratedPower',
      (tree) => {
        tree.plan.specification.outputs[0].ratedPower = -1;
      },
    ],
    [
      'not-positive at plan.bench.loads[0].resistance',
      (tree) => {
        tree.plan.bench.loads[0].resistance = 0;
      },
    ],
    [
      'unknown-choice at findings.points[0].verdict',
      (tree) => {
        tree.findings.points[0].verdict = 'perhaps';
      },
    ],
    [
      'unknown-choice at findings.points[0].working[0].unit',
      (tree) => {
        tree.findings.points[0].working[0].unit = 'furlong';
      },
    ],
    [
      'unknown-choice at findings.points[0].working[0].source',
      (tree) => {
        tree.findings.points[0].working[0].source = 'hearsay';
      },
    ],
    [
      'wrong-type at findings.points[0].working[0].value',
      (tree) => {
        tree.findings.points[0].working[0].value = null;
      },
    ],
    [
      'negative at readings.readings[0].value',
      (tree) => {
        tree.readings.readings[0].value = -1;
      },
    ],
    [
      'out-of-range at findings.final.pass',
      (tree) => {
        tree.findings.final.pass = -1;
      },
    ],
    [
      'unknown-choice at signature.occasion',
      (tree) => {
        tree.signature.occasion = 'whim';
      },
    ],
    [
      'unknown-document at schema',
      (tree) => {
        tree.schema = 'esu-limits/plan';
      },
    ],
  ])('%s', (fault, change) => {
    expect(changed(change)).toEqual([fault]);
  });
});
