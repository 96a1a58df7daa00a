import { type CodeEntry, codeList } from '../../../src/checks/codes.js';
import { page, text } from './text.js';

/** Every code with cause and remedy; the anchor of a code is the code. */
export function errorPage(): string {
  const entries: [string, CodeEntry][] = Object.entries(codeList);
  return page('Errors and warnings', [
    `Bad input ends in a \`CalculationError\` whose members \`code\`, \`path\`, \`received\`, \`requirement\` and \`hint\` say what is wrong where; \`faults\` lists everything that is wrong. What is not fatal is in the \`warnings\` of a result. Both take their codes from this list of ${entries.length}. The address of a code is \`errors.html#\` and the code.`,
    ...entries.map(([code, { cause, remedy }]) => `## ${code} {#${code}}\n\n${text(cause)} ${text(remedy)}`),
  ]);
}
