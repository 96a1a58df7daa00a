import type { Field } from './form.js';
import { field, optionalChoices, optionalField } from './form-parts.js';
import { type Path, valueAt } from './json-path.js';

/** The shape of the wave of an output, with what belongs to the shape that is chosen. */
export function waveformFields(document: unknown, path: Path): readonly Field[] {
  const at = (name: string): Path => [...path, name];
  const shape = field(at('kind'), 'Waveform', {
    choices: optionalChoices(['sine', 'gated-sine', 'damped-sine']),
    speaksFor: [path],
  });
  switch (valueAt(document, at('kind'))) {
    case 'gated-sine':
      return [
        shape,
        field(at('dutyCycle'), 'Duty cycle', { example: '25 %', unit: '%' }),
        optionalField(at('repetitionRate'), 'Repetition rate', { example: '30 kHz', unit: 'Hz' }),
      ];
    case 'damped-sine':
      return [
        shape,
        field(at('timeConstant'), 'Time constant of the decay', { example: '4 us', unit: 's' }),
        field(at('repetitionRate'), 'Repetition rate', { example: '30 kHz', unit: 'Hz' }),
        field(at('rest'), 'When the next burst begins', { choices: optionalChoices(['restarts', 'overlaps']) }),
      ];
    default:
      return [shape];
  }
}
