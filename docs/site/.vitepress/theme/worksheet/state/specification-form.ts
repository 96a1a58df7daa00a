import { type RuleId, standardRules } from 'esu-limits/procedure';
import { blankOutput } from './document-text.js';
import type { Entry, Node } from './form.js';
import { choicesOf, field, optionalChoices, optionalField, places, quantityChoices, toleranceFields, unitOf } from './form-parts.js';
import { type Path, valueAt, withValueAt } from './json-path.js';
import { leakageList } from './leakage-form.js';
import { monitorGroup } from './monitor-form.js';
import { waveformFields } from './waveform-form.js';

/** The main members of a specification as a form; the rest is edited in the JSON. */
export function specificationForm(document: unknown): readonly Node[] {
  return [
    {
      kind: 'group',
      title: 'Generator',
      isOpen: true,
      nodes: [
        field(['generator', 'name'], 'Name', { example: 'Training generator, 200 W' }),
        optionalField(['generator', 'identification'], 'Identification'),
        optionalField(['generator', 'serialNumber'], 'Serial number'),
        optionalField(['source'], 'Where the data were read', { example: 'Data sheet, edition 1, page 4' }),
        optionalField(['note'], 'Note, printed on every sheet'),
        optionalField(['cautions'], 'Cautions of the maker, one a line', { as: 'lines' }),
      ],
    },
    {
      kind: 'list',
      title: 'Outputs',
      one: 'output',
      path: ['outputs'],
      layout: 'groups',
      entries: places(document, ['outputs']).map((i) => outputEntry(document, ['outputs', i], i)),
      blank: blankOutput(places(document, ['outputs']).length + 1),
    },
    monitorGroup(document),
    leakageList(document),
  ];
}

function outputEntry(document: unknown, path: Path, index: number): Entry {
  const at = (...more: (string | number)[]): Path => [...path, ...more];
  const name = valueAt(document, at('name'));
  const scale = valueAt(document, at('scale', 'kind'));
  const curves = at('curves');
  const points = at('points');
  const unitOfRow = (row: Path) => ({ unit: unitOf(valueAt(document, [...row, 'quantity'])) });
  return {
    title: typeof name === 'string' && name.trim() !== '' ? name : `Output ${index + 1}`,
    path,
    nodes: [
      field(at('name'), 'Name of output and mode', { example: 'Monopolar cut' }),
      field(at('id'), 'Short identifier', { example: 'cut' }),
      field(at('circuit'), 'Circuit', { choices: choicesOf(['monopolar', 'bipolar']) }),
      field(at('connection'), 'How the load is connected', {
        example: 'Active output to the load, other end to the neutral electrode socket',
      }),
      field(at('scale', 'kind'), 'The control shows', {
        choices: [
          { value: 'watt', text: 'watts' },
          { value: 'level', text: 'levels' },
        ],
        covers: [at('scale')],
      }),
      ...(scale === 'level'
        ? [field(at('scale', 'levels'), 'Levels from low to high, one a line', { as: 'lines', example: 'level 1' })]
        : [
            field(at('scale', 'minimum'), 'Lowest setting', { example: '5 W', unit: 'W' }),
            field(at('scale', 'maximum'), 'Highest setting', { example: '200 W', unit: 'W' }),
            optionalField(at('scale', 'step'), 'Step', { example: '5 W', unit: 'W' }),
          ]),
      field(at('ratedPower'), 'Rated power', { example: '200 W', unit: 'W' }),
      field(at('ratedLoad'), 'Rated load', { example: '400 ohm', unit: 'ohm' }),
      ...toleranceFields(document, at('tolerance'), 'Tolerance'),
      ...toleranceFields(document, at('displayTolerance'), 'Tolerance of the display'),
      optionalField(at('crestFactor'), 'Crest factor', { as: 'number', example: '1.6' }),
      field(at('crestFactorAt'), 'Crest factor holds at', {
        choices: optionalChoices(['rated load', 'open circuit']),
      }),
      ...waveformFields(document, at('waveform')),
      optionalField(at('maximumPeakVoltage'), 'Maximum peak voltage', { example: '1100 V', unit: 'V' }),
      optionalField(at('carrierFrequency'), 'Carrier frequency', { example: '430 kHz', unit: 'Hz' }),
      optionalField(at('duty', 'on'), 'Longest activation', { example: '10 s', unit: 's' }),
      optionalField(at('duty', 'off'), 'Shortest pause', { example: '30 s', unit: 's' }),
      field(at('otherSettings'), 'At a setting without a curve', {
        choices: [
          { value: '', text: 'expect nothing' },
          { value: 'refuse', text: 'expect nothing (stated)' },
          { value: 'proportional', text: 'scale the next higher curve' },
        ],
      }),
      {
        kind: 'list',
        title: 'Load curves',
        one: 'curve',
        path: curves,
        layout: 'groups',
        entries: places(document, curves).map((i) => curveEntry(document, [...curves, i], i)),
        blank: {
          setting: '',
          points: [
            { load: '', power: '' },
            { load: '', power: '' },
          ],
        },
      },
      {
        kind: 'list',
        title: 'Points to test besides those of curves and rows',
        one: 'test point',
        path: points,
        layout: 'rows',
        entries: places(document, points).map((i) => ({
          title: `Test point ${i + 1}`,
          path: [...points, i],
          nodes: [
            {
              ...field([...points, i, 'setting'], 'Setting', { example: '80 W', unit: 'W' }),
              speaksFor: [[...points, i]],
            },
            field([...points, i, 'load'], 'Load', { example: '200 ohm', unit: 'ohm' }),
            optionalField([...points, i, 'power'], 'Power', { example: '58 W', unit: 'W' }),
            ...toleranceFields(document, [...points, i, 'tolerance'], 'Tolerance'),
          ],
        })),
        blank: { setting: '', load: '' },
      },
      {
        kind: 'list',
        title: 'Rows of a published limit table',
        one: 'row',
        path: at('rows'),
        layout: 'rows',
        entries: places(document, at('rows')).map((i) => ({
          title: `Row ${i + 1}`,
          path: at('rows', i),
          nodes: [
            field(at('rows', i, 'setting'), 'Setting', { example: '80 W', unit: 'W' }),
            field(at('rows', i, 'load'), 'Load', { example: '500 ohm', unit: 'ohm' }),
            field(at('rows', i, 'quantity'), 'Limits in', { choices: quantityChoices }),
            optionalField(at('rows', i, 'lower'), 'Lower limit', { example: '358 mA', ...unitOfRow(at('rows', i)) }),
            optionalField(at('rows', i, 'upper'), 'Upper limit', { example: '438 mA', ...unitOfRow(at('rows', i)) }),
            optionalField(at('rows', i, 'power'), 'Power', { example: '80 W', unit: 'W' }),
          ],
        })),
        blank: { setting: '', load: '', quantity: 'current', lower: '', upper: '' },
      },
    ],
  };
}

function curveEntry(document: unknown, path: Path, index: number): Entry {
  const setting = valueAt(document, [...path, 'setting']);
  const points: Path = [...path, 'points'];
  const shown = typeof setting === 'number' ? `${setting} W` : typeof setting === 'string' ? setting : '';
  return {
    title: shown.trim() === '' ? `Curve ${index + 1}` : `Curve at ${shown}`,
    path,
    nodes: [
      field([...path, 'setting'], 'Setting', { example: '200 W', unit: 'W' }),
      {
        kind: 'list',
        title: 'Points, loads rising',
        one: 'point',
        path: points,
        layout: 'rows',
        entries: places(document, points).map((i) => ({
          title: `Point ${i + 1}`,
          path: [...points, i],
          nodes: [
            field([...points, i, 'load'], 'Load', { example: '400 ohm', unit: 'ohm' }),
            field([...points, i, 'power'], 'Power', { example: '200 W', unit: 'W' }),
          ],
        })),
        blank: { load: '', power: '' },
      },
    ],
  };
}

/** Rules of the standard, and whether the specification chooses them. */
export function ruleChoices(document: unknown): readonly { rule: RuleId; title: string; text: string; on: boolean }[] {
  const chosen = chosenRules(document);
  return (Object.keys(standardRules) as RuleId[]).map((rule) => ({
    rule,
    title: `${standardRules[rule].title} (${standardRules[rule].clause})`,
    text: standardRules[rule].text,
    on: chosen.some((entry) => ruleOf(entry) === rule),
  }));
}

/** The document with a rule of the standard chosen or not. */
export function withRule(document: unknown, rule: RuleId, on: boolean): unknown {
  const others = chosenRules(document).filter((entry) => ruleOf(entry) !== rule);
  const rules = on ? [...others, { rule }] : others;
  return withValueAt(document, ['rules'], rules.length === 0 ? undefined : rules);
}

function chosenRules(document: unknown): readonly unknown[] {
  const rules = valueAt(document, ['rules']);
  return Array.isArray(rules) ? rules : [];
}

function ruleOf(entry: unknown): unknown {
  return valueAt(entry, ['rule']);
}
