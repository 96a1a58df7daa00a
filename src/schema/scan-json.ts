import type { Fault } from '../checks/index.js';
import { mostFaults } from './document-limits.js';
import { faultOf } from './fault-list.js';
import { lineCounter } from './line-counter.js';
import { pathText } from './path-text.js';
import { unsafeNameRequirement, unsafeNames } from './unsafe-names.js';

/** A list or an object that is open at the place of the scan. */
interface Frame {
  /** Names that the object has so far; absent for a list. */
  readonly names?: Set<string>;
  /** Index or name of the member that is being read. */
  member: number | string;
}

type State = 'value' | 'first value' | 'name' | 'first name' | 'after';

/**
 * Reads JSON (RFC 8259) once from end to end without building anything, before a parser builds it: the place of what
 * is not JSON in line and column, nesting that is too deep, names that repeat in one object (a parser would keep the
 * last in silence) and names that reach into prototypes. It keeps its own stack, so that no depth can exhaust the
 * program's. An empty list means that `JSON.parse` reads the text.
 */
export function scanJson(text: string, maximumDepth: number): readonly Fault[] {
  const faults: Fault[] = [];
  const frames: Frame[] = [];
  const lines = lineCounter(text);
  let at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  let state: State = 'value';

  const malformed = (requirement: string, hint?: string): readonly Fault[] => {
    const received = at < text.length ? text.slice(at, at + 20) : 'the end of the text';
    return [...faults, faultOf('not-json', lines.placeAt(at), received, requirement, hint)];
  };
  const close = (): void => {
    frames.pop();
    at++;
    state = 'after';
  };

  for (;;) {
    at = skipBlanks(text, at);
    const character = text[at];
    const frame = frames.at(-1);

    if (state === 'after') {
      if (frame === undefined) {
        return character === undefined ? faults : malformed('must end here', 'A document is one JSON value.');
      }
      const end = frame.names === undefined ? ']' : '}';
      if (character === end) {
        close();
      } else if (character === ',') {
        at++;
        if (frame.names === undefined) frame.member = Number(frame.member) + 1;
        state = frame.names === undefined ? 'value' : 'name';
      } else {
        return malformed(`must be a comma or ${end}`, hintAt(text, at));
      }
      continue;
    }

    if (state === 'name' || state === 'first name') {
      if (character === '}' && state === 'first name') {
        close();
        continue;
      }
      if (character !== '"') {
        const comma = character === '}' ? 'Remove the comma before the closing brace.' : undefined;
        return malformed('must be the name of a member in double quotes', comma ?? hintAt(text, at));
      }
      const stop = stringEnd(text, at);
      if (stop < 0) {
        at = -stop - 1;
        return malformed(stringRequirement);
      }
      const raw = text.slice(at, stop);
      const name = raw.includes('\\') ? (JSON.parse(raw) as string) : raw.slice(1, -1);
      const names = frame?.names as Set<string>;
      (frame as Frame).member = name;
      if ((names.has(name) || unsafeNames.has(name)) && faults.length <= mostFaults) {
        const path = pathText(frames.map(({ member }) => member));
        const hint = `It stands in ${lines.placeAt(at)}.`;
        faults.push(
          unsafeNames.has(name)
            ? faultOf('unsafe-member', path, name, unsafeNameRequirement, hint)
            : faultOf('duplicate', path, name, 'must stand only once in its object', hint),
        );
      }
      names.add(name);
      at = skipBlanks(text, stop);
      if (text[at] !== ':') return malformed('must be a colon after the name of a member');
      at++;
      state = 'value';
      continue;
    }

    if (character === ']' && state === 'first value') {
      close();
    } else if (character === '{' || character === '[') {
      if (frames.length >= maximumDepth) {
        const requirement = `must be nested at most ${maximumDepth} deep`;
        return [...faults, faultOf('too-deep', lines.placeAt(at), character, requirement)];
      }
      frames.push(character === '{' ? { names: new Set(), member: '' } : { member: 0 });
      at++;
      state = character === '{' ? 'first name' : 'first value';
    } else if (character === '"') {
      const stop = stringEnd(text, at);
      if (stop < 0) {
        at = -stop - 1;
        return malformed(stringRequirement);
      }
      at = stop;
      state = 'after';
    } else {
      const stop = scalarEnd(text, at);
      if (stop === at) {
        const comma = character === ']' ? 'Remove the comma before the closing bracket.' : undefined;
        return malformed('must be a value', comma ?? hintAt(text, at));
      }
      at = stop;
      state = 'after';
    }
  }
}

const stringRequirement = 'must be part of a text in double quotes, with control characters and backslashes escaped';

function skipBlanks(text: string, start: number): number {
  let at = start;
  for (;;) {
    const code = text.charCodeAt(at);
    if (code !== 0x20 && code !== 0x0a && code !== 0x0d && code !== 0x09) return at;
    at++;
  }
}

/** Place after a text in quotes that starts at `start`; −1 − the place of what is wrong in it. */
function stringEnd(text: string, start: number): number {
  let at = start + 1;
  for (;;) {
    const code = text.charCodeAt(at);
    if (code === 0x22) return at + 1;
    // Not a number: the text has ended.
    if (!(code >= 0x20)) return -at - 1;
    if (code !== 0x5c) {
      at++;
    } else if ('"\\/bfnrt'.includes(text.charAt(at + 1) || ' ')) {
      at += 2;
    } else if (/^u[\da-fA-F]{4}$/.test(text.slice(at + 1, at + 6))) {
      at += 6;
    } else {
      return -at - 1;
    }
  }
}

/** Place after a number, `true`, `false` or `null`; `start` when none stands there. */
function scalarEnd(text: string, start: number): number {
  for (const word of ['true', 'false', 'null']) if (text.startsWith(word, start)) return start + word.length;
  let at = text[start] === '-' ? start + 1 : start;
  const whole = digitsEnd(text, at);
  if (whole === at) return start;
  // A zero stands alone before the point: what follows it is then not the end of a value.
  at = text[at] === '0' ? at + 1 : whole;
  if (text[at] === '.') {
    const stop = digitsEnd(text, at + 1);
    if (stop > at + 1) at = stop;
  }
  if (text[at] === 'e' || text[at] === 'E') {
    const first = text[at + 1] === '+' || text[at + 1] === '-' ? at + 2 : at + 1;
    const stop = digitsEnd(text, first);
    if (stop > first) at = stop;
  }
  return at;
}

function digitsEnd(text: string, start: number): number {
  let at = start;
  while (text.charCodeAt(at) >= 0x30 && text.charCodeAt(at) <= 0x39) at++;
  return at;
}

/** What a person most likely meant by something that JSON does not have. */
function hintAt(text: string, at: number): string | undefined {
  const rest = text.slice(at, at + 12);
  if (rest === '') return text.trim() === '' ? 'The text is empty.' : 'The text breaks off here.';
  if (/^[/#]/.test(rest)) return 'JSON has no comments; use the member "note".';
  if (/^['\u2018-\u201f]/.test(rest)) return 'Use straight double quotes.';
  if (/^[+-]?(NaN|Infinity)/.test(rest)) return 'JSON has no such number.';
  if (/^[+.]/.test(rest)) return 'A number begins with a digit or a minus.';
  if (/^\d/.test(rest) && text[at - 1] === '0') return 'A number has no leading zero.';
  if (/^[A-Za-z_]/.test(rest)) return 'Names and texts stand in double quotes.';
  return undefined;
}
