import type { Entry, List } from './form.js';
import { field, optionalChoices, optionalField, places } from './form-parts.js';
import { type Path, valueAt } from './json-path.js';

const arrangements = [
  { value: 'earth-referenced-load-between-electrodes', text: 'referenced to earth, load between the electrodes' },
  { value: 'earth-referenced-load-to-earth', text: 'referenced to earth, load from active to earth' },
  { value: 'isolated', text: 'isolated from earth' },
  { value: 'bipolar', text: 'bipolar' },
];

/** The measurements of HF leakage that a specification asks for. */
export function leakageList(document: unknown): List {
  const path: Path = ['leakage'];
  const count = places(document, path).length;
  return {
    kind: 'list',
    title: 'Measurements of HF leakage',
    one: 'measurement of leakage',
    path,
    layout: 'groups',
    entries: places(document, path).map((i) => leakageEntry(document, [...path, i], i)),
    blank: {
      id: `leakage-${count + 1}`,
      output: valueAt(document, ['outputs', 0, 'id']) ?? '',
      setting: '',
      arrangement: '',
      measuredAt: '',
      connection: '',
    },
  };
}

function leakageEntry(document: unknown, path: Path, index: number): Entry {
  const at = (...more: string[]): Path => [...path, ...more];
  const id = valueAt(document, at('id'));
  const outputs = places(document, ['outputs']).flatMap((i) => {
    const [value, name] = ['id', 'name'].map((member) => valueAt(document, ['outputs', i, member]));
    return typeof value === 'string' ? [{ value, text: typeof name === 'string' && name !== '' ? name : value }] : [];
  });
  const arrangement = valueAt(document, at('arrangement'));
  const hasLoadings = arrangement === 'isolated' || arrangement === 'bipolar' || valueAt(document, at('loading')) !== undefined;
  const loadings = optionalField(at('loading'), 'Output meanwhile, one a line; empty: both, as the arrangement asks', {
    as: 'lines',
    example: 'rated-load',
  });
  return {
    title: typeof id === 'string' && id.trim() !== '' ? id : `Measurement ${index + 1}`,
    path,
    nodes: [
      { ...field(at('id'), 'Short identifier', { example: 'cut' }), speaksFor: [path] },
      field(at('output'), 'Output', { choices: outputs }),
      field(at('setting'), 'Setting', { example: '200 W', unit: 'W' }),
      field(at('arrangement'), 'Arrangement', { choices: arrangements }),
      field(at('measuredAt'), 'Measured at', {
        choices: [
          { value: 'leads', text: 'the ends of the leads' },
          { value: 'terminals', text: 'the terminals of the unit' },
        ],
      }),
      ...(hasLoadings ? [loadings] : []),
      field(at('connection'), 'How it is connected', {
        example: 'Leads hung clear, measuring resistor to the protective earth terminal',
      }),
      {
        kind: 'group',
        title: 'Limit of the maker, where it is not that of the standard',
        nodes: [
          optionalField(at('limit', 'statedIn'), 'Stated in', {
            example: 'Service manual, page 12',
            speaksFor: [at('limit')],
          }),
          optionalField(at('limit', 'current'), 'Highest current', { example: '150 mA', unit: 'A' }),
          optionalField(at('limit', 'shareOfRatedPower'), 'Or part of the rated power', { example: '1 %', unit: '%' }),
          optionalField(at('limit', 'measuringResistance'), 'Measuring resistor', { example: '200 ohm', unit: 'ohm' }),
          optionalField(at('limit', 'clause'), 'Clause'),
          optionalField(at('limit', 'edition'), 'Edition'),
          field(at('limit', 'standing'), 'How well it is known', {
            choices: optionalChoices(['published', 'secondary', 'from memory', 'derived', 'common practice']),
          }),
        ],
      },
    ],
  };
}
