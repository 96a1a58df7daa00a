/** What `…` in a promised value stands for: whatever else the object has, whatever else follows in the array. */
const restKey = '…';

const rest = Object.defineProperty({ [restKey]: true }, Symbol.iterator, {
  value: function* () {
    yield restKey;
  },
});

/**
 * Reads a promised value: a JavaScript literal, in which `…` stands for the rest of an object or an array.
 * A literal may go on in the comment lines below; they are taken one by one until it is whole.
 */
export function expectedValue(text: string, further: readonly string[]): unknown {
  let whole = text;
  for (let taken = 0; ; taken++) {
    try {
      return new Function('__rest', `return (${withRest(whole)}\n);`)(rest);
    } catch (error) {
      if (taken === further.length) throw new Error(`not a literal: ${whole}`, { cause: error });
      whole += `\n${further[taken]}`;
    }
  }
}

function withRest(text: string): string {
  let quote = '';
  let result = '';
  for (const letter of text) {
    if (quote === '' && (letter === "'" || letter === '"' || letter === '`')) quote = letter;
    else if (letter === quote) quote = '';
    result += letter === restKey && quote === '' ? '...__rest' : letter;
  }
  return result;
}

/** Cuts away from `actual` what `…` in `expected` leaves open, and the `…` itself: both are then to be equal. */
export function withoutRest(expected: unknown, actual: unknown): { expected: unknown; actual: unknown } {
  const plain = ArrayBuffer.isView(actual) ? Array.from(actual as unknown as ArrayLike<number>) : actual;
  if (Array.isArray(expected) && Array.isArray(plain)) {
    const open = expected.at(-1) === restKey;
    const wanted = open ? expected.slice(0, -1) : expected;
    const pairs = (open ? plain.slice(0, wanted.length) : plain).map((value, i) => withoutRest(wanted[i], value));
    return {
      expected: wanted.map((value, i) => (pairs[i] ? pairs[i].expected : value)),
      actual: pairs.map((pair) => pair.actual),
    };
  }
  if (isRecord(expected) && isRecord(plain)) {
    const open = restKey in expected;
    const wanted: Record<string, unknown> = {};
    const found: Record<string, unknown> = {};
    for (const [key, value] of Object.entries(plain)) {
      if (!(key in expected)) {
        if (!open) found[key] = value;
        continue;
      }
      const pair = withoutRest(expected[key], value);
      wanted[key] = pair.expected;
      found[key] = pair.actual;
    }
    for (const [key, value] of Object.entries(expected)) if (key !== restKey && !(key in wanted)) wanted[key] = value;
    return { expected: wanted, actual: found };
  }
  return { expected, actual: plain };
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
