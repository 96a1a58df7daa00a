// What axe finds that hinders people: its serious and critical findings.
import axe from 'axe-core';

/** Rules that axe counts as experimental, and that hold here all the same: a button is called by what it shows. */
const more = { 'label-content-name-mismatch': { enabled: true } };

/**
 * One line for each serious or critical finding in a part of the page, the whole page when none is named.
 * `only` names the rules to run, where the others have run before.
 */
export async function axeFindings(page, { part, only } = {}) {
  await page.evaluate(`if (globalThis.axe === undefined) { ${axe.source} }`);
  const settings = { iframes: false, resultTypes: ['violations'], ...(only ? { runOnly: only } : { rules: more }) };
  return page.evaluate(
    async ([selector, options]) => {
      const { violations, passes } = await globalThis.axe.run(selector ?? document, options);
      if (passes.length === 0) return [`axe checked nothing in ${selector ?? 'the page'}`];
      return violations
        .filter(({ impact }) => impact === 'serious' || impact === 'critical')
        .map(({ id, nodes }) => `${id}: ${nodes.length} times, such as ${nodes[0].html.slice(0, 200)}`);
    },
    [part, settings],
  );
}
