/** What a text can be a value of. `fraction` is written in percent; `number` has no unit. */
export type QuantityKind =
  | 'power'
  | 'current'
  | 'voltage'
  | 'resistance'
  | 'frequency'
  | 'time'
  | 'inductance'
  | 'capacitance'
  | 'temperature'
  | 'length'
  | 'fraction'
  | 'number';

/** How a current or a voltage is stated; every other quantity is `plain`. */
export type QuantityForm = 'rms' | 'peak' | 'peak-to-peak' | 'plain';

/** SI unit of a parsed value, as it is written in a working; `1` for a fraction or a plain number. */
export type SiUnit = 'W' | 'A' | 'V' | 'ohm' | 'Hz' | 's' | 'H' | 'F' | 'K' | 'm' | '1';

/** SI prefix of the trade; the empty one is no prefix. */
export type PrefixSymbol = 'p' | 'n' | 'µ' | 'm' | 'c' | '' | 'k' | 'M' | 'G';

/** A unit that texts may use. */
export interface UnitEntry {
  /** What it is a unit of. */
  readonly quantity: QuantityKind;
  /** Name of the unit. */
  readonly name: string;
  /** SI unit of the value that comes out. */
  readonly unit: SiUnit;
  /** Accepted spellings without prefix; the first is the one that is printed, the second the one printed in ASCII. */
  readonly symbols: readonly string[];
  /** Accepted prefixes, in ascending order. */
  readonly prefixes: readonly PrefixSymbol[];
  /** The SI value is the number times ten to this power. Default: 0. */
  readonly exponent?: number;
  /** The SI value is the number times this. Default: 1. */
  readonly factor?: number;
  /** Hundredths of the SI unit that are added, exactly: 27315 for degrees Celsius. Default: 0. */
  readonly offsetHundredths?: number;
}

/** Spellings and meaning of the prefixes, in ascending order; the first spelling is the one that is printed. */
export const prefixVocabulary = [
  { symbol: 'p', name: 'pico', spellings: ['p'], exponent: -12 },
  { symbol: 'n', name: 'nano', spellings: ['n'], exponent: -9 },
  { symbol: 'µ', name: 'micro', spellings: ['\u00b5', '\u03bc', 'u'], exponent: -6 },
  { symbol: 'm', name: 'milli', spellings: ['m'], exponent: -3 },
  { symbol: 'c', name: 'centi', spellings: ['c'], exponent: -2 },
  { symbol: '', name: '', spellings: [''], exponent: 0 },
  { symbol: 'k', name: 'kilo', spellings: ['k'], exponent: 3 },
  { symbol: 'M', name: 'mega', spellings: ['M'], exponent: 6 },
  { symbol: 'G', name: 'giga', spellings: ['G'], exponent: 9 },
] as const satisfies readonly {
  readonly symbol: PrefixSymbol;
  readonly name: string;
  readonly spellings: readonly string[];
  readonly exponent: number;
}[];

/** Words after a unit of current or voltage, and the form that they mean; without a word a value is rms. */
export const formVocabulary = [
  { word: 'peak-to-peak', form: 'peak-to-peak' },
  { word: 'pk-pk', form: 'peak-to-peak' },
  { word: 'p-p', form: 'peak-to-peak' },
  { word: 'pp', form: 'peak-to-peak' },
  { word: 'peak', form: 'peak' },
  { word: 'pk', form: 'peak' },
  { word: 'rms', form: 'rms' },
  { word: 'RMS', form: 'rms' },
] as const satisfies readonly { readonly word: string; readonly form: QuantityForm }[];

/**
 * Every unit that a text may use, as data. It is the grammar itself: what is not here is refused.
 * The prefixes of a unit are those of the trade: a megaampere or a millihertz does not occur on a bench,
 * and is far more often a slip of the shift key.
 */
export const unitVocabulary: readonly UnitEntry[] = [
  { quantity: 'power', name: 'watt', unit: 'W', symbols: ['W'], prefixes: ['µ', 'm', '', 'k'] },
  { quantity: 'current', name: 'ampere', unit: 'A', symbols: ['A'], prefixes: ['p', 'n', 'µ', 'm', ''] },
  { quantity: 'voltage', name: 'volt', unit: 'V', symbols: ['V'], prefixes: ['n', 'µ', 'm', '', 'k'] },
  {
    quantity: 'resistance',
    name: 'ohm',
    unit: 'ohm',
    symbols: ['\u03a9', 'ohm', '\u2126', 'ohms'],
    prefixes: ['µ', 'm', '', 'k', 'M', 'G'],
  },
  { quantity: 'frequency', name: 'hertz', unit: 'Hz', symbols: ['Hz'], prefixes: ['', 'k', 'M', 'G'] },
  { quantity: 'time', name: 'second', unit: 's', symbols: ['s'], prefixes: ['p', 'n', 'µ', 'm', ''] },
  { quantity: 'time', name: 'minute', unit: 's', symbols: ['min'], prefixes: [''], factor: 60 },
  { quantity: 'time', name: 'hour', unit: 's', symbols: ['h'], prefixes: [''], factor: 3600 },
  { quantity: 'inductance', name: 'henry', unit: 'H', symbols: ['H'], prefixes: ['p', 'n', 'µ', 'm', ''] },
  { quantity: 'capacitance', name: 'farad', unit: 'F', symbols: ['F'], prefixes: ['p', 'n', 'µ', 'm', ''] },
  { quantity: 'temperature', name: 'kelvin', unit: 'K', symbols: ['K'], prefixes: ['m', ''] },
  {
    quantity: 'temperature',
    name: 'degree Celsius',
    unit: 'K',
    symbols: ['°C', 'degC'],
    prefixes: [''],
    offsetHundredths: 27315,
  },
  { quantity: 'length', name: 'metre', unit: 'm', symbols: ['m'], prefixes: ['µ', 'm', 'c', ''] },
  { quantity: 'fraction', name: 'percent', unit: '1', symbols: ['%'], prefixes: [''], exponent: -2 },
  { quantity: 'number', name: 'plain number', unit: '1', symbols: [''], prefixes: [''] },
];
