/**
 * The first outputs of SplitMix64: it spreads a small seed over the whole state of another generator.
 *
 * @source G. L. Steele, D. Lea and C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA (2014)
 */
export function splitMix64(seed: number, count: number): readonly bigint[] {
  const wrap = (value: bigint): bigint => BigInt.asUintN(64, value);
  const outputs: bigint[] = [];
  for (let i = 1; i <= count; i++) {
    let z = wrap(BigInt(seed) + BigInt(i) * 0x9e3779b97f4a7c15n);
    z = wrap((z ^ (z >> 30n)) * 0xbf58476d1ce4e5b9n);
    z = wrap((z ^ (z >> 27n)) * 0x94d049bb133111ebn);
    outputs.push(z ^ (z >> 31n));
  }
  return outputs;
}
