import type { Field, Group } from './form.js';
import { optionalField } from './form-parts.js';
import { type Path, valueAt } from './json-path.js';

/** The decade or substitution box with which a monitor is challenged, and what lies in its way. */
export function boxGroup(document: unknown): Group {
  const at = (...more: string[]): Path => ['resistanceBox', ...more];
  const values: Field = optionalField(at('values'), 'Its values, one a line', {
    as: 'lines',
    unit: 'ohm',
    example: '100 ohm',
  });
  const decade = [
    optionalField(at('step'), 'Step of a decade', { example: '1 ohm', unit: 'ohm' }),
    optionalField(at('maximum'), 'Highest of a decade', { example: '999 ohm', unit: 'ohm' }),
    optionalField(at('minimum'), 'Lowest of a decade', { example: '0 ohm', unit: 'ohm' }),
  ];
  const hasValues = valueAt(document, at('values')) !== undefined;
  const isDecade = ['step', 'maximum', 'minimum'].some((name) => valueAt(document, at(name)) !== undefined);
  return {
    kind: 'group',
    title: 'Decade or substitution box, for the monitor',
    nodes: [
      optionalField(at('name'), 'Name of the box', { example: 'Decade box', speaksFor: [at()] }),
      ...(hasValues && !isDecade ? [] : decade),
      ...(isDecade && !hasValues ? [] : [values]),
      optionalField(at('accuracy', 'relative'), 'Accuracy, of the value', {
        example: '0.5 %',
        unit: '%',
        speaksFor: [at('accuracy')],
      }),
      optionalField(at('accuracy', 'absolute'), 'Accuracy, added to it', { example: '0.1 ohm', unit: 'ohm' }),
      optionalField(['fixture', 'resistance'], 'Cable and contacts in series', {
        example: '0.2 ohm',
        unit: 'ohm',
        speaksFor: [['fixture']],
      }),
      optionalField(['fixture', 'limits'], 'Known to within', { example: '0.1 ohm', unit: 'ohm' }),
      optionalField(['timing', 'limits'], 'Times are read to within', {
        example: '0.3 s',
        unit: 's',
        speaksFor: [['timing']],
      }),
    ],
  };
}
