/** Commands that a formula may use, with the number of groups that must follow. */
const commands: Readonly<Record<string, number>> = {
  frac: 2,
  sqrt: 1,
  mathrm: 1,
  operatorname: 1,
  cdot: 0,
  ',': 0,
  partial: 0,
  ...Object.fromEntries(
    (
      'left right lceil rceil lfloor rfloor arccos arcsin arctan cos cosh sin sinh tan tanh exp ln log max min pi ' +
      'alpha beta gamma delta epsilon zeta eta theta iota kappa lambda mu nu xi rho sigma tau upsilon phi chi psi omega ' +
      'Gamma Delta Theta Lambda Xi Pi Sigma Upsilon Phi Psi Omega'
    )
      .split(' ')
      .map((name) => [name, 0]),
  ),
};

/** What is wrong with a formula in TeX: undefined if nothing is. A checker of the few things that formulas hold. */
export function texFault(tex: string): string | undefined {
  const tokens: readonly string[] = tex.match(/\\[A-Za-z]+|\\.|[{}^_[\]]|[A-Za-z0-9.+\-=|(), ]|[\s\S]/g) ?? [];
  let at = 0;
  let fault: string | undefined;
  const fail = (text: string) => {
    fault ??= `${text} at token ${at} of ${tex}`;
  };

  /** Reads a list up to a closing brace or the end. */
  const list = (): void => {
    let scripts = '';
    let delimiters = 0;
    while (at < tokens.length && tokens[at] !== '}' && fault === undefined) {
      const token = tokens[at++] as string;
      if (token === '^' || token === '_') {
        if (scripts.includes(token)) fail(`double ${token}`);
        scripts += token;
        group();
        continue;
      }
      if (token !== ' ') scripts = '';
      if (token === '{') {
        at--;
        group();
      } else if (token.startsWith('\\')) {
        const name = token.slice(1);
        const count = Object.hasOwn(commands, name) ? (commands[name] as number) : undefined;
        if (count === undefined) fail(`the command ${token}`);
        if (name === 'left') delimiters++;
        if (name === 'right') delimiters--;
        if (delimiters < 0) fail('a right without left');
        if (name === 'sqrt' && tokens[at] === '[') at = tokens.indexOf(']', at) + 1;
        for (let i = 0; i < (count ?? 0); i++) group();
      } else if (!/^[A-Za-z0-9.+\-=|(), ]$/.test(token)) fail(`the character ${JSON.stringify(token)}`);
    }
    if (delimiters !== 0) fail('a left without right');
  };

  const group = (): void => {
    if (tokens[at] !== '{') {
      fail('no group');
      return;
    }
    at++;
    if (tokens[at] === '}') fail('an empty group');
    list();
    if (tokens[at++] !== '}') fail('no end of a group');
  };

  list();
  if (at < tokens.length) fail('a closing brace too many');
  return fault;
}
