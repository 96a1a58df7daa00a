import { parseLength, parseQuantity, parseTemperature, parseTime } from '../../src/units/index.js';
import type { Check } from './check.js';

/** Factors of the prefixes, as NIST SP 330 (2019) is quoted: all exact, so the tolerance is nothing. */
const prefixes = [
  ['pico', '1 pF', 1e-12, 'F'],
  ['nano', '1 nF', 1e-9, 'F'],
  ['micro', '1 \u00b5F', 1e-6, 'F'],
  ['milli', '1 mA', 1e-3, 'A'],
  ['kilo', '1 kohm', 1e3, 'ohm'],
  ['mega', '1 Mohm', 1e6, 'ohm'],
  ['giga', '1 Gohm', 1e9, 'ohm'],
] as const;

/** Definitions of units: texts read as the values that the definitions give. */
export const unitsChecks: readonly Check[] = [
  ...prefixes.map(
    ([name, text, published, unit]): Check => ({
      id: `units-prefix-${name}`,
      room: 'units',
      title: `SI prefix ${name}: ${text}`,
      source: 'NIST SP 330 (2019), SI prefixes, as quoted in a manual page on the SI',
      standing: 'secondary',
      published,
      unit,
      tolerance: 0,
      compute: () => parseQuantity(text).value,
    }),
  ),
  {
    id: 'units-prefix-centi',
    room: 'units',
    title: 'SI prefix centi: 16 900 cm is 169 m',
    source: 'NIST, The NIST Reference on Constants, Units, and Uncertainty, SI prefixes, example 2',
    standing: 'published',
    published: 169,
    unit: 'm',
    tolerance: 0,
    compute: () => parseLength('16900 cm'),
  },
  {
    id: 'units-celsius-triple-point',
    room: 'units',
    title: 'Triple point of water: 0.01 °C is 273.16 K, exactly',
    source: 'National Physical Laboratory, Temperature units and temperature scales',
    standing: 'published',
    published: 273.16,
    unit: 'K',
    tolerance: 0,
    compute: () => parseTemperature('0.01 °C'),
  },
  {
    id: 'units-celsius-zero',
    room: 'units',
    title: 'Celsius temperature is thermodynamic temperature minus 273.15 K: 0 °C',
    source: 'IUPAC Gold Book, Celsius temperature (Green Book, 2nd ed., p. 48)',
    standing: 'published',
    published: 273.15,
    unit: 'K',
    tolerance: 0,
    compute: () => parseTemperature('0 °C'),
  },
  {
    id: 'units-minute',
    room: 'units',
    title: '1 min = 60 s',
    source:
      'The International System of Units (SI), 1st ed. (1970), as quoted in the OPTIMADE definition of the minute',
    standing: 'secondary',
    published: 60,
    unit: 's',
    tolerance: 0,
    compute: () => parseTime('1 min'),
  },
  {
    id: 'units-hour',
    room: 'units',
    title: '1 h = 3600 s',
    source: 'The International System of Units (SI), units accepted for use with the SI: from memory',
    standing: 'from memory',
    published: 3600,
    unit: 's',
    tolerance: 0,
    compute: () => parseTime('1 h'),
  },
];
