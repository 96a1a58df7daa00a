import { readFileSync } from 'node:fs';
import type { Fault } from 'esu-limits';
import { parseBench, parseSpecification, safeParseBench, safeParseSpecification } from 'esu-limits/schema';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { benchForm } from '../../docs/site/.vitepress/theme/worksheet/state/bench-form.js';
import {
  benchFromText,
  blankBench,
  blankSpecification,
  specificationFromText,
} from '../../docs/site/.vitepress/theme/worksheet/state/document-text.js';
import {
  type Field,
  faultsOf,
  fieldId,
  fieldsOf,
  fieldText,
  holdsFault,
  type List,
  type Node,
  withEntry,
  withFieldText,
  withoutEntry,
} from '../../docs/site/.vitepress/theme/worksheet/state/form.js';
import { pathText, valueAt, withValueAt } from '../../docs/site/.vitepress/theme/worksheet/state/json-path.js';
import {
  ruleChoices,
  specificationForm,
  withRule,
} from '../../docs/site/.vitepress/theme/worksheet/state/specification-form.js';
import { bandText, faultSentence, shortText } from '../../docs/site/.vitepress/theme/worksheet/state/texts.js';

const example = (name: string): unknown => JSON.parse(readFileSync(`examples/workshop/${name}.json`, 'utf8'));
const documents = [
  ['specification', specificationForm, safeParseSpecification, parseSpecification],
  ['bench', benchForm, safeParseBench, parseBench],
] as const;

function fieldAt(nodes: readonly Node[], path: string): Field {
  const found = fieldsOf(nodes).find((field) => pathText(field.path) === path);
  if (found === undefined) throw new Error(`no field ${path}`);
  return found;
}

function listAt(nodes: readonly Node[], path: string): List {
  const lists = nodes.flatMap((node) => (node.kind === 'list' ? [node] : []));
  const found = lists.find((list) => pathText(list.path) === path);
  if (found === undefined) throw new Error(`no list ${path}`);
  return found;
}

describe.each(documents)('the form of a %s', (name, formOf, safeParse, parse) => {
  const document = example(name);

  it('shows what stands there, and typing the same text changes nothing', () => {
    for (const field of fieldsOf(formOf(document))) {
      // A tolerance that is not stated: typing nothing into it gives nothing.
      if (valueAt(document, field.path) === undefined) continue;
      const text = fieldText(document, field);
      expect(withFieldText(document, field, text), pathText(field.path)).toEqual(document);
    }
  });

  it('shows a document in SI numbers as text that means the same', () => {
    const numbers: unknown = JSON.parse(JSON.stringify(parse(document as never)));
    let typed = numbers;
    for (const field of fieldsOf(formOf(numbers))) {
      const text = fieldText(numbers, field);
      if (text !== '') typed = withFieldText(typed, field, text);
    }
    expect(parse(typed as never)).toEqual(parse(numbers as never));
  });

  it('gives every field an identifier of its own', () => {
    const ids = fieldsOf(formOf(document)).map(({ path }) => fieldId(name, path));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('says beside every required field of the blank document what is missing', () => {
    const blank = JSON.parse(name === 'bench' ? blankBench : blankSpecification) as unknown;
    const result = safeParse(blank as never);
    const faults = result.ok ? [] : result.faults;
    expect(faults.length).toBeGreaterThan(4);
    const shown = fieldsOf(formOf(blank)).flatMap((field) => faultsOf(field, faults));
    expect(new Set(shown)).toEqual(new Set(faults));
  });

  it('a text of rubbish in any field is a fault or is taken as text, never an exception', () => {
    const fields = fieldsOf(formOf(document));
    fc.assert(
      fc.property(fc.constantFrom(...fields), fc.string({ unit: 'binary' }), (field, text) => {
        const changed = withFieldText(document, field, text);
        expect(() => formOf(changed)).not.toThrow();
        const result = safeParse(changed as never);
        expect(result.ok || result.faults.length > 0).toBe(true);
      }),
    );
  });

  it('can be made of anything at all', () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => Array.isArray(formOf(value))));
  });
});

describe('fields', () => {
  const specification = example('specification');
  const form = specificationForm(specification);

  it('a bad field gets its own fault and no other', () => {
    const field = fieldAt(form, 'outputs[0].ratedLoad');
    const result = safeParseSpecification(withFieldText(specification, field, '400 ohms?'));
    const faults = result.ok ? [] : result.faults;
    expect(faultsOf(field, faults).map(({ path }) => path)).toEqual(['outputs[0].ratedLoad']);
    expect(faultsOf(fieldAt(form, 'outputs[1].ratedLoad'), faults)).toEqual([]);
    expect(holdsFault(form, faults)).toBe(true);
  });

  it('an optional field that is emptied takes its member away, and the object that it leaves empty', () => {
    let document: unknown = { generator: { name: 'x' }, outputs: [{ duty: { on: '10 s', off: '30 s' } }] };
    const nodes = specificationForm(document);
    document = withFieldText(document, fieldAt(nodes, 'outputs[0].duty.on'), '');
    expect(document).toEqual({ generator: { name: 'x' }, outputs: [{ duty: { off: '30 s' } }] });
    document = withFieldText(document, fieldAt(nodes, 'outputs[0].duty.off'), '');
    expect(valueAt(document, ['outputs', 0, 'duty'])).toBeUndefined();
  });

  it('a crest factor is a number, and stays text while it is none', () => {
    const field = fieldAt(form, 'outputs[0].crestFactor');
    expect(valueAt(withFieldText(specification, field, '1.8'), field.path)).toBe(1.8);
    expect(valueAt(withFieldText(specification, field, '1,8'), field.path)).toBe('1,8');
  });

  it('adds and removes entries of a list', () => {
    const bench = example('bench');
    const loads = listAt(benchForm(bench), 'loads');
    const more = withEntry(bench, loads);
    expect(valueAt(more, ['loads', 7])).toEqual({ id: 'L8', resistance: '', powerRating: '' });
    expect(withoutEntry(more, loads, 7)).toEqual(bench);
    expect(valueAt(withoutEntry({ loads: [1] }, loads, 0), ['loads'])).toBeUndefined();
  });

  it('chooses rules of the standard, and keeps parameters of the others', () => {
    const document = { rules: [{ rule: 'output-accuracy', parameters: { below: 0.1 } }] };
    const more = withRule(document, 'peak-voltage', true);
    expect(more).toEqual({ rules: [...document.rules, { rule: 'peak-voltage' }] });
    expect(
      ruleChoices(more)
        .filter(({ on }) => on)
        .map(({ rule }) => rule),
    ).toEqual(['output-accuracy', 'peak-voltage']);
    expect(withRule(withRule(more, 'peak-voltage', false), 'output-accuracy', false)).toEqual({});
  });

  it('does not follow members that are not the document’s own', () => {
    expect(valueAt({}, ['constructor', 'name'])).toBeUndefined();
    const hostile: unknown = JSON.parse('{"__proto__":{"name":"x"}}');
    expect(valueAt(withValueAt(hostile, ['a'], 1), ['name'])).toBeUndefined();
    expect(({} as Record<string, unknown>)['name']).toBeUndefined();
  });
});

describe('JSON that is typed', () => {
  it('says where it is no JSON', () => {
    const { value, typed, faults } = specificationFromText('{ "schema": }');
    expect([value, typed]).toEqual([undefined, undefined]);
    expect(faults[0]?.path).toMatch(/^line 1, column/);
  });

  it('refuses a document of another kind, and says so', () => {
    const bench = readFileSync('examples/workshop/bench.json', 'utf8');
    expect(specificationFromText(bench).faults[0]).toMatchObject({ code: 'unknown-document', path: 'schema' });
    expect(benchFromText(bench).value?.loads).toHaveLength(7);
  });

  it('is silent while nothing is typed', () => {
    expect(benchFromText('  ')).toEqual({ faults: [] });
  });
});

describe('texts', () => {
  it('shows a value as it is, and rounds only what has more digits', () => {
    expect([100, 10, 0.6066300355, 1500].map((ohms) => shortText(ohms, 'ohm'))).toEqual([
      '100 Ω',
      '10 Ω',
      '606.6 mΩ',
      '1.5 kΩ',
    ]);
  });

  it('says that there are no limits', () => {
    expect(bandText({}, 'A')).toBe('no limits');
    expect(bandText({ upper: 0.15 }, 'A')).toBe('≤ 150 mA');
  });

  it('makes a sentence of a fault', () => {
    const fault: Fault = { code: 'negative', path: '', received: '-1', requirement: 'must be 0 or more', hint: 'Why?' };
    expect(faultSentence(fault)).toBe('Must be 0 or more. Why?');
  });
});

describe('parts that were JSON alone', () => {
  const type = (document: unknown, formOf: (document: unknown) => readonly Node[], typed: Record<string, string>) =>
    Object.entries(typed).reduce((now, [path, text]) => withFieldText(now, fieldAt(formOf(now), path), text), document);

  it('a monitor, a leakage measurement, a waveform and a test point are made by the form alone', () => {
    const { monitor: _, leakage: __, ...rest } = example('specification') as Record<string, unknown>;
    let document: unknown = withEntry(rest, listAt(specificationForm(rest), 'leakage'));
    document = type(document, specificationForm, {
      'monitor.connection': 'Box between the contacts',
      'monitor.model.kind': 'contact-quality',
      'monitor.model.lower.resistance': '10 ohm',
      'monitor.model.lower.tolerance.absolute': '-2 ohm/+3 ohm',
      'monitor.model.lower.hysteresis': '2 ohm',
      'monitor.model.upper.resistance': '150 ohm',
      'monitor.model.upper.tolerance.relative': '5 %',
      'monitor.model.rise.fraction': '0.4',
      'monitor.model.rise.baseline': 'lowest',
      'monitor.model.alarmDelay': '2 s',
      'monitor.model.display.resolution': '1 ohm',
      'monitor.model.display.maximum': '999 ohm',
      'monitor.model.display.open': 'over-range',
      'leakage[0].setting': '200 W',
      'leakage[0].arrangement': 'isolated',
      'leakage[0].measuredAt': 'leads',
      'leakage[0].loading': 'rated-load',
      'leakage[0].connection': 'Through the resistor to earth',
      'leakage[0].limit.statedIn': 'Invented manual',
      'leakage[0].limit.current': '120 mA',
      'outputs[1].waveform.kind': 'damped-sine',
      'outputs[1].waveform.timeConstant': '4 us',
      'outputs[1].waveform.repetitionRate': '30 kHz',
      'outputs[1].points[0].tolerance.text': '-10 %/+20 %',
      'outputs[1].points[0].tolerance.in': 'power',
    });
    const sheet = parseSpecification(document as never);
    expect(sheet.monitor?.model).toEqual({
      kind: 'contact-quality',
      lower: { resistance: 10, tolerance: { absolute: { below: 2, above: 3 } }, hysteresis: 2 },
      upper: { resistance: 150, tolerance: { relative: 0.05 } },
      rise: { fraction: 0.4, baseline: 'lowest' },
      alarmDelay: 2,
      display: { resolution: 1, maximum: 999, open: 'over-range' },
    });
    expect(sheet.leakage?.[0]).toMatchObject({
      setting: 200,
      loading: ['rated-load'],
      limit: { current: 0.12, statedIn: 'Invented manual' },
    });
    expect(sheet.outputs[1]?.waveform).toEqual({ kind: 'damped-sine', timeConstant: 4e-6, repetitionRate: 30_000 });
    expect(sheet.outputs[1]?.points?.[0]?.tolerance).toEqual({ in: 'power', relative: { below: 0.1, above: 0.2 } });
  });

  it('a box is a decade or has values', () => {
    const { resistanceBox: _, ...rest } = example('bench') as Record<string, unknown>;
    const accuracy = { 'resistanceBox.accuracy.relative': '0.5 %' };
    const decade = type(rest, benchForm, {
      'resistanceBox.step': '1 ohm',
      'resistanceBox.maximum': '999 ohm',
      ...accuracy,
    });
    expect(parseBench(decade as never).resistanceBox).toEqual({ step: 1, maximum: 999, accuracy: { relative: 0.005 } });
    const values = type(rest, benchForm, { 'resistanceBox.values': '50 ohm\n100 ohm', ...accuracy });
    expect(parseBench(values as never).resistanceBox).toEqual({ values: [50, 100], accuracy: { relative: 0.005 } });
    expect(() => fieldAt(benchForm(values), 'resistanceBox.step')).toThrow();
  });

  it('two sides are typed and shown as one text, and what is begun is kept', () => {
    const sided: Field = { kind: 'field', path: ['a'], label: '', as: 'sides', unit: 'ohm' };
    for (const [text, member] of [
      ['-2 ohm/+3 ohm', { below: '2 ohm', above: '3 ohm' }],
      ['-2 ohm', { below: '2 ohm' }],
      ['+3 ohm', { above: '3 ohm' }],
      ['3 ohm', '3 ohm'],
      ['-2 ohm/', '-2 ohm/'],
      ['-2 ohm/+', '-2 ohm/+'],
      ['+3 ohm/-2 ohm', '+3 ohm/-2 ohm'],
      ['', ''],
    ] as const) {
      const document = withFieldText({}, sided, text);
      expect(document, text).toEqual({ a: member });
      expect(fieldText(document, sided)).toBe(text);
    }
    expect(fieldText({ a: { above: 3, below: 2 } }, sided)).toBe('-2 ohm/+3 ohm');
    fc.assert(
      fc.property(fc.stringMatching(/^[-+/0-9 ohm.]{0,12}$/), (text) => {
        expect(fieldText(withFieldText({}, sided, text), sided)).toBe(text);
      }),
    );
  });

  it('says beside a field what an unfinished monitor, box or measurement lacks', () => {
    const unfinished = type(example('specification'), specificationForm, {
      'monitor.model.upper.resistance': '',
      'monitor.model.kind': '',
      'monitor.connection': '',
    });
    const result = safeParseSpecification(unfinished as never);
    const faults = result.ok ? [] : result.faults;
    expect(faults.length).toBeGreaterThan(2);
    const shown = fieldsOf(specificationForm(unfinished)).flatMap((field) => faultsOf(field, faults));
    expect(new Set(shown)).toEqual(new Set(faults));
    const box = type(example('bench'), benchForm, {
      'resistanceBox.maximum': '',
      'resistanceBox.accuracy.relative': '5',
    });
    const bench = safeParseBench(box as never);
    const boxFaults = bench.ok ? [] : bench.faults;
    expect(boxFaults.length).toBeGreaterThan(0);
    const beside = fieldsOf(benchForm(box)).flatMap((field) => faultsOf(field, boxFaults));
    expect(new Set(beside)).toEqual(new Set(boxFaults));
  });
});
