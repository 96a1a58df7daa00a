import type { VerificationRecord } from '../../src/procedure/index.js';

/** Text that would do harm, or break a layout, in one of the formats. */
export const hostileTexts: readonly string[] = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  '| a | b |\n| - | - |',
  '=HYPERLINK("http://example.invalid","x")',
  '+1+cmd|calc',
  '-2+3',
  '@SUM(A1)',
  '\tTab first',
  '[link](javascript:alert(1)) `code` *bold* _it_ # head',
  'right to left \u202E txt.exe',
  'bell \u0007 and nul \u0000',
  'a'.repeat(300),
  '&amp; &lt; \u2019 Ω µ 検査',
];

/** The free texts of a record that a file brings in; identifiers and words of the library stay. */
const freeMembers = new Set([
  'note',
  'source',
  'name',
  'identification',
  'serialNumber',
  'connection',
  'calibratedUntil',
  'by',
  'date',
  'remarks',
  'outputName',
  'lead',
]);

/** The record with every free text replaced. */
export function withText(record: VerificationRecord, text: string): VerificationRecord {
  const replace = (value: unknown, key = ''): unknown => {
    if (typeof value === 'string') return freeMembers.has(key) && value !== 'esu-limits' ? text : value;
    if (Array.isArray(value)) {
      return key === 'cautions' && value.every((entry) => typeof entry === 'string')
        ? value.map(() => text)
        : value.map((entry) => replace(entry, key));
    }
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, member]) => [name, replace(member, name)]));
  };
  return replace(record) as VerificationRecord;
}
