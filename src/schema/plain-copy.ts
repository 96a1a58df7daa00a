import type { Fault } from '../checks/index.js';
import { defaultLimits, mostFaults, mostValues } from './document-limits.js';
import { faultOf } from './fault-list.js';
import { pathText } from './path-text.js';
import { unsafeNameRequirement, unsafeNames } from './unsafe-names.js';

/**
 * Copies any value into plain lists and objects, so that nothing after it meets a getter, a cycle, a depth without end
 * or a name that reaches into a prototype. Members that are undefined count as absent.
 */
export function plainCopy(input: unknown): { readonly value: unknown; readonly faults: readonly Fault[] } {
  const { maximumDepth } = defaultLimits;
  const faults: Fault[] = [];
  const path: PropertyKey[] = [];
  let values = 0;

  const note = (fault: Fault): void => {
    if (faults.length <= mostFaults) faults.push(fault);
  };
  const stop = (fault: Fault): never => {
    faults.push(fault);
    throw stopped;
  };
  const count = (more: number): void => {
    values += more;
    if (values > mostValues) {
      stop(faultOf('too-large', pathText(path), values, `must hold at most ${mostValues} values`));
    }
  };

  const copy = (value: unknown): unknown => {
    if (typeof value !== 'object' || value === null) return value;
    if (path.length >= maximumDepth) {
      const hint = 'An object that contains itself has no end either.';
      return stop(faultOf('too-deep', pathText(path), value, `must be nested at most ${maximumDepth} deep`, hint));
    }
    if (Array.isArray(value)) {
      count(value.length);
      const list: unknown[] = [];
      for (let i = 0; i < value.length; i++) {
        path.push(i);
        list.push(copy(value[i]));
        path.pop();
      }
      return list;
    }
    if (Object.prototype.toString.call(value) !== '[object Object]') {
      note(faultOf('wrong-type', pathText(path), value, 'must be plain data: text, numbers, lists and objects'));
      return undefined;
    }
    const names = Object.keys(value);
    count(names.length);
    const object: Record<string, unknown> = {};
    for (const name of names) {
      path.push(name);
      if (unsafeNames.has(name)) {
        note(faultOf('unsafe-member', pathText(path), name, unsafeNameRequirement));
      } else {
        const member = copy((value as Record<string, unknown>)[name]);
        if (member !== undefined) object[name] = member;
      }
      path.pop();
    }
    return object;
  };

  try {
    return { value: copy(input), faults };
  } catch (reason) {
    if (reason !== stopped) {
      // A getter or a proxy of the caller threw something, which is not looked at: it could throw again.
      faults.push(faultOf('wrong-type', pathText(path), 'a value that throws', 'must be plain data'));
    }
    return { value: undefined, faults };
  }
}

/** What is thrown when the copy ends early; the fault is in the list. */
const stopped = Symbol('stopped');
