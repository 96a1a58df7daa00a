import { boxGroup } from './box-form.js';
import { blankLoad } from './document-text.js';
import type { Entry, Node } from './form.js';
import { field, optionalField, places, quantityChoices, unitOf } from './form-parts.js';
import { type Path, valueAt } from './json-path.js';

const ruleNames = [
  'simple-acceptance',
  'guarded-acceptance',
  'guarded-rejection',
  'specific-consumer-risk',
  'specific-producer-risk',
  'non-binary',
  'test-uncertainty-ratio',
  'global-consumer-risk',
] as const;

/** The main members of a bench as a form; the rest is edited in the JSON. */
export function benchForm(document: unknown): readonly Node[] {
  const functions: Path = ['instrument', 'reads'];
  return [
    {
      kind: 'group',
      title: 'Bench and instrument',
      isOpen: true,
      nodes: [
        field(['name'], 'Name of the bench', { example: 'Equipment workshop, bench 2' }),
        field(['instrument', 'name'], 'Instrument, true rms', { example: 'True-rms HF current meter' }),
        optionalField(['instrument', 'identification'], 'Its identification'),
        optionalField(['instrument', 'calibratedUntil'], 'Calibrated until', { example: '2027-03-31' }),
        optionalField(['instrument', 'maximumPeakVoltage'], 'Highest peak voltage', { example: '6 kV', unit: 'V' }),
        optionalField(['instrument', 'maximumCrestFactor'], 'Highest crest factor', { as: 'number', example: '10' }),
        optionalField(['instrument', 'frequencyRange', 'lower'], 'Frequency from', { example: '100 kHz', unit: 'Hz' }),
        optionalField(['instrument', 'frequencyRange', 'upper'], 'Frequency to', { example: '5 MHz', unit: 'Hz' }),
      ],
    },
    {
      kind: 'list',
      title: 'What the instrument reads',
      one: 'quantity',
      path: functions,
      layout: 'groups',
      entries: places(document, functions).map((i) => functionEntry(document, [...functions, i], i)),
      blank: { quantity: 'power', ranges: [{ maximum: '', resolution: '' }] },
    },
    {
      kind: 'list',
      title: 'Loads',
      one: 'load',
      path: ['loads'],
      layout: 'rows',
      entries: places(document, ['loads']).map((i) => ({
        title: `Load ${i + 1}`,
        path: ['loads', i],
        nodes: [
          field(['loads', i, 'id'], 'Identifier', { example: 'L500' }),
          field(['loads', i, 'resistance'], 'Resistance', { example: '500 ohm', unit: 'ohm' }),
          optionalField(['loads', i, 'tolerance'], 'Tolerance', { example: '1 %', unit: '%' }),
          field(['loads', i, 'powerRating'], 'Power rating', { example: '250 W', unit: 'W' }),
          optionalField(['loads', i, 'maximumPeakVoltage'], 'Peak voltage', { example: '5 kV', unit: 'V' }),
        ],
      })),
      blank: blankLoad(places(document, ['loads']).length + 1),
    },
    {
      kind: 'list',
      title: 'Leads',
      one: 'set of leads',
      path: ['leads'],
      layout: 'groups',
      entries: places(document, ['leads']).map((i) => leadEntry(document, ['leads', i], i)),
      blank: { id: `leads-${places(document, ['leads']).length + 1}`, name: '', circuits: ['monopolar'] },
    },
    boxGroup(document),
    { kind: 'group', title: 'Decision', nodes: decisionNodes(document) },
  ];
}

function functionEntry(document: unknown, path: Path, index: number): Entry {
  const at = (...more: (string | number)[]): Path => [...path, ...more];
  const quantity = valueAt(document, at('quantity'));
  const unit = unitOf(quantity);
  return {
    title: typeof quantity === 'string' ? quantity : `Quantity ${index + 1}`,
    path,
    nodes: [
      field(at('quantity'), 'Quantity', { choices: quantityChoices }),
      optionalField(at('accuracy', 'ofReading'), 'Accuracy, of the reading', { example: '1.5 %', unit: '%' }),
      optionalField(at('accuracy', 'ofRange'), 'Accuracy, of the range', { example: '0.5 %', unit: '%' }),
      optionalField(at('accuracy', 'counts'), 'Accuracy, last digits', { as: 'number', example: '3' }),
      optionalField(at('accuracy', 'drift'), 'Drift since the calibration', { example: '0.5 %', unit: '%' }),
      {
        kind: 'list',
        title: 'Ranges',
        one: 'range',
        path: at('ranges'),
        layout: 'rows',
        entries: places(document, at('ranges')).map((i) => ({
          title: `Range ${i + 1}`,
          path: at('ranges', i),
          nodes: [
            field(at('ranges', i, 'maximum'), 'Up to', { example: `2 ${unit}`, unit }),
            field(at('ranges', i, 'resolution'), 'Resolution', { example: `1 m${unit}`, unit }),
          ],
        })),
        blank: { maximum: '', resolution: '' },
      },
    ],
  };
}

function leadEntry(document: unknown, path: Path, index: number): Entry {
  const name = valueAt(document, [...path, 'name']);
  return {
    title: typeof name === 'string' && name.trim() !== '' ? name : `Leads ${index + 1}`,
    path,
    nodes: [
      field([...path, 'id'], 'Identifier', { example: 'mono-leads' }),
      field([...path, 'name'], 'Name', { example: 'Monopolar test leads, 0.5 m' }),
      field([...path, 'circuits'], 'Circuits, one a line', { as: 'lines', example: 'monopolar' }),
      optionalField([...path, 'maximumPeakVoltage'], 'Highest peak voltage', { example: '6 kV', unit: 'V' }),
    ],
  };
}

function decisionNodes(document: unknown): readonly Node[] {
  const path: Path = ['decisionRule'];
  const kind = valueAt(document, [...path, 'kind']);
  const rule = field([...path, 'kind'], 'How uncertainty enters a verdict', {
    choices: [
      { value: '', text: 'simple acceptance (not stated)' },
      ...ruleNames.map((name) => ({ value: name, text: name.replaceAll('-', ' ') })),
    ],
    covers: [path],
  });
  const number = (name: string, label: string, example: string) =>
    optionalField([...path, name], label, { as: 'number', example });
  switch (kind) {
    case 'guarded-acceptance':
    case 'guarded-rejection':
    case 'non-binary':
      return [rule, number('ratio', 'Guard band, in expanded uncertainties', '1')];
    case 'specific-consumer-risk':
    case 'specific-producer-risk':
      return [rule, { ...number('risk', 'Largest risk', '2.5 %'), as: 'text', unit: '%' }];
    case 'global-consumer-risk':
      return [
        rule,
        { ...number('risk', 'Largest risk', '2 %'), as: 'text', unit: '%' },
        { ...number('reliability', 'Part that conforms, from your own history', '95 %'), as: 'text', unit: '%' },
      ];
    case 'test-uncertainty-ratio':
      return [
        rule,
        field([...path, 'method'], 'Method', {
          choices: ['managed-risk', 'root-sum-square', 'whole-below-four', 'relaxed-below-four'].map((value) => ({
            value,
            text: value.replaceAll('-', ' '),
          })),
        }),
      ];
    default:
      return [rule];
  }
}
