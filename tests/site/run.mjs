// `npm run docs:test`: builds the site for a sub-path, checks every link and anchor, and visits the pages in a browser.
import { chromiumPath, chromiumRemedy } from '../package/chromium.mjs';
import { runSite } from '../stages/site.mjs';
import { closingLine, Tally } from '../stages/stage.mjs';

const tally = new Tally();
await runSite(tally, { chromium: chromiumPath(), remedy: chromiumRemedy });
console.log(`\n${tally.summary()}`);
console.log(closingLine(tally));
process.exitCode = tally.failed > 0 ? 1 : 0;
