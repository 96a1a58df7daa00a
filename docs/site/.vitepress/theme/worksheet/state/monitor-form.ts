import type { Field, Group, Node } from './form.js';
import { field, optionalChoices, optionalField, places, resistanceToleranceFields } from './form-parts.js';
import { type Path, valueAt } from './json-path.js';

const model: Path = ['monitor', 'model'];
const rows: Path = ['monitor', 'rows'];

/** The return-electrode monitor as its maker states it. */
export function monitorGroup(document: unknown): Group {
  return {
    kind: 'group',
    title: 'Return-electrode monitor',
    nodes: [
      optionalField(['monitor', 'connection'], 'How the resistance is connected', {
        example: 'Resistance box between the two contacts of the neutral electrode socket',
        speaksFor: [['monitor']],
      }),
      {
        kind: 'list',
        title: 'Resistances that its display shows, with limits',
        one: 'row',
        path: rows,
        layout: 'rows',
        entries: places(document, rows).map((i) => ({
          title: `Row ${i + 1}`,
          path: [...rows, i],
          nodes: [
            { ...field([...rows, i, 'set'], 'Set', { example: '60 ohm or open', unit: 'ohm' }), speaksFor: [[...rows, i]] },
            optionalField([...rows, i, 'lower'], 'Display from', { example: '54 ohm', unit: 'ohm' }),
            optionalField([...rows, i, 'upper'], 'Display to', { example: '66 ohm', unit: 'ohm' }),
          ],
        })),
        blank: { set: '' },
      },
      field([...model, 'kind'], 'What it watches', {
        choices: [
          { value: '', text: 'thresholds not stated' },
          { value: 'contact-quality', text: 'contact quality: split electrode' },
          { value: 'continuity', text: 'continuity: single-foil electrode' },
        ],
        speaksFor: [model],
      }),
      ...(valueAt(document, model) === undefined ? [] : modelNodes(document)),
    ],
  };
}

function modelNodes(document: unknown): readonly Node[] {
  const at = (...more: string[]): Path => [...model, ...more];
  const series: Path = at('series');
  return [
    { kind: 'group', title: 'Lower threshold: alarm below', nodes: thresholdFields(document, at('lower')) },
    { kind: 'group', title: 'Upper threshold: alarm above', nodes: thresholdFields(document, at('upper')) },
    {
      kind: 'group',
      title: 'Rise above a baseline',
      nodes: [
        optionalField(at('rise', 'fraction'), 'Rise that alarms, as part of the baseline', {
          example: '0.4',
          as: 'number',
          speaksFor: [at('rise')],
        }),
        optionalField(at('rise', 'tolerance'), 'Tolerance of the rise', { example: '5 %', unit: '%' }),
        optionalField(at('rise', 'hysteresis'), 'Hysteresis of the rise', { example: '5 %', unit: '%' }),
        field(at('rise', 'baseline'), 'Baseline', { choices: optionalChoices(['at-start', 'lowest', 'tracked']) }),
        optionalField(at('rise', 'timeConstant'), 'Time constant of a tracked baseline', { example: '30 s', unit: 's' }),
        optionalField(at('rise', 'floor'), 'Watched from a resistance of', { example: '20 ohm', unit: 'ohm' }),
      ],
    },
    {
      kind: 'group',
      title: 'Delays, display, and resistance in series',
      nodes: [
        optionalField(at('alarmDelay'), 'Delay until the alarm', { example: '2 s', unit: 's' }),
        optionalField(at('releaseDelay'), 'Delay until it is released', { example: '1 s', unit: 's' }),
        optionalField(at('display', 'resolution'), 'Display: step', {
          example: '1 ohm',
          unit: 'ohm',
          speaksFor: [at('display')],
        }),
        optionalField(at('display', 'maximum'), 'Display: highest', { example: '999 ohm', unit: 'ohm' }),
        optionalField(at('display', 'open'), 'Display when open', { example: 'over-range', unit: 'ohm' }),
        ...resistanceToleranceFields(document, at('display', 'tolerance'), 'Tolerance of the display'),
        optionalField([...series, 'resistance'], 'In series with what is set', {
          example: '0.3 ohm',
          unit: 'ohm',
          speaksFor: [series],
        }),
        optionalField([...series, 'limits'], 'Known to within', { example: '0.1 ohm', unit: 'ohm' }),
      ],
    },
  ];
}

function thresholdFields(document: unknown, path: Path): readonly Field[] {
  return [
    optionalField([...path, 'resistance'], 'Resistance', { example: '150 ohm', unit: 'ohm', speaksFor: [path] }),
    ...resistanceToleranceFields(document, [...path, 'tolerance'], 'Tolerance'),
    optionalField([...path, 'hysteresis'], 'Hysteresis', { example: '10 ohm', unit: 'ohm' }),
  ];
}
