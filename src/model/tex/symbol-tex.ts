/** Letters that have a TeX command of their own; the other capitals look like Latin ones. */
const greek: ReadonlySet<string> = /* @__PURE__ */ new Set(
  (
    'alpha beta gamma delta epsilon zeta eta theta iota kappa lambda mu nu xi pi rho sigma tau upsilon phi chi psi ' +
    'omega Gamma Delta Theta Lambda Xi Pi Sigma Upsilon Phi Psi Omega'
  ).split(' '),
);

/**
 * A symbol as TeX: `T_0` and `T0` as T with the index 0, `alpha` as the letter, `I_lower` with an upright index.
 * Names hold letters, digits and underscores only, so nothing of them can be a command.
 */
export function symbolTex(name: string): string {
  const [head = '', ...indices] = name.split('_');
  const [, letters = '', digits = ''] = /^([A-Za-z]+)(\d*)$/.exec(head) ?? [];
  // B12C and the like: no index can be told from the name.
  if (letters === '') return withIndex(`\\mathrm{${head}}`, indices.map(indexTex));
  return withIndex(wordTex(letters), [...(digits === '' ? [] : [digits]), ...indices.map(indexTex)]);
}

function withIndex(base: string, indices: readonly string[]): string {
  return indices.length === 0 ? base : `${base}_{${indices.join(',')}}`;
}

function indexTex(index: string): string {
  return /^\d+$/.test(index) ? index : wordTex(index);
}

function wordTex(word: string): string {
  if (greek.has(word)) return `\\${word}`;
  return word.length === 1 ? word : `\\mathrm{${word}}`;
}
