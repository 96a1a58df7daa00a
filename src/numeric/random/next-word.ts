/**
 * The next 32 bits of xoshiro128++, as a signed whole number.
 *
 * @source D. Blackman and S. Vigna, ACM Trans. Math. Softw. 47 (2021)
 */
export function nextWord(state: Int32Array): number {
  const a = state[0] as number;
  const b = state[1] as number;
  const sum = (a + (state[3] as number)) | 0;
  const c = (state[2] as number) ^ a;
  const d = (state[3] as number) ^ b;
  state[0] = a ^ d;
  state[1] = b ^ c;
  state[2] = c ^ (b << 9);
  state[3] = (d << 11) | (d >>> 21);
  return (((sum << 7) | (sum >>> 25)) + a) | 0;
}
