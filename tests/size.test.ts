import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { type BundleSize, bundleSize } from './size/bundle-size.js';

const kilobyte = 1024;
const rows: (BundleSize & { readonly what: string })[] = [];

async function measure(what: string, source: string): Promise<BundleSize> {
  const size = await bundleSize(source);
  rows.push({ what, ...size });
  return size;
}

function all(...rooms: readonly string[]): string {
  return rooms.map((room) => `export * from './src/${room}/index.js';`).join('\n');
}

/** Exports of a room from the files that are wanted; what was added to a room lies in folders of it. */
function exportsOf(room: string, wanted: (path: string) => boolean): string {
  const index = readFileSync(new URL(`../src/${room}/index.ts`, import.meta.url), 'utf8');
  const statements = [...index.matchAll(/export [^;]+ from '\.\/([^']+)';/g)];
  return statements
    .filter(([, path = '']) => wanted(path))
    .map(([statement]) => statement.replace("'./", `'./src/${room}/`))
    .join('\n');
}

const circuitExports = (wanted: (path: string) => boolean): string => exportsOf('circuit', wanted);

/** The functions that answer with plain numbers and bands; their twins, which show the working, carry the formulas. */
const calculation = `
export { currentFromPower, powerFromCurrent, powerFromVoltage, voltageFromPower } from './src/circuit/index.js';
export { bandAround, convertBand, intersectBands, marginIn, roundBand } from './src/band/index.js';
export { loadCurve } from './src/curve/index.js';
`;

const closedForms = `
export { averageRespondingReading, crestFactorOfGatedSine, dampedSine, gatedSine, pulseTrain } from './src/waveform/index.js';
export { sineWave, squareWave, triangleWave } from './src/waveform/index.js';
`;

/** What a verdict needs: the uncertainty, k, the probability that it is right, the risk of the rule. */
const plainRisk = `
export { expandedUncertainty, normalInput, propagate, rectangularInput } from './src/uncertainty/index.js';
export { conformanceProbability, globalRisk, testUncertaintyRatio } from './src/decision/index.js';
`;

afterAll(() => {
  const lines = rows.map(({ what, minified, gzipped, packages }) =>
    [what.padEnd(30), `${minified}`.padStart(9), `${gzipped}`.padStart(9), ` ${packages.join(', ')}`].join(' '),
  );
  console.log(
    [`${'bundle, in bytes'.padEnd(30)}  minified      gzip  packages`, ...lines]
      .map((line) => line.trimEnd())
      .join('\n'),
  );
});

describe('size of what a user bundles', () => {
  it('what limits are calculated with, of circuit, band and curve: at most 5 kB', async () => {
    const { gzipped, packages } = await measure('circuit + band + curve, plain', calculation);
    expect(gzipped).toBeLessThanOrEqual(5 * kilobyte);
    expect(packages).toEqual([]);
  });

  it('circuit without the effects of the bench, band and curve, with every formula and its working: at most 14 kB', async () => {
    const source = `${circuitExports((path) => !path.includes('/'))}\n${all('band', 'curve')}`;
    const { gzipped, packages } = await measure('circuit + band + curve, all', source);
    expect(gzipped).toBeLessThanOrEqual(14 * kilobyte);
    expect(packages).toEqual([]);
  });

  // Their twins, which show the working, carry three dozen formulas.
  it('strays, leads, heat and sources without the twins of their own: at most 7 kB', async () => {
    const source = circuitExports((path) => path.includes('/') && !path.includes('/explain-'));
    const { gzipped, packages } = await measure('strays, leads, heat, sources', source);
    expect(gzipped).toBeLessThanOrEqual(7 * kilobyte);
    expect(packages).toEqual([]);
  });

  it('the same with the working of every one of them: at most 10.5 kB', async () => {
    const { gzipped, packages } = await measure(
      'the same, every working',
      circuitExports((path) => path.includes('/')),
    );
    expect(gzipped).toBeLessThanOrEqual(10.5 * kilobyte);
    expect(packages).toEqual([]);
  });

  it('waveform in closed form, without spectra: at most 6 kB', async () => {
    const { gzipped, packages } = await measure('waveform, closed forms', closedForms);
    expect(gzipped).toBeLessThanOrEqual(6 * kilobyte);
    expect(packages).toEqual([]);
  });

  it('the analysis of captures: at most 6 kB', async () => {
    const source = "export { analyseCapture } from './src/waveform/index.js';";
    const { gzipped, packages } = await measure('waveform, captures', source);
    expect(gzipped).toBeLessThanOrEqual(6 * kilobyte);
    expect(packages).toEqual([]);
  });

  it('both together, with what they share once: at most 9.5 kB', async () => {
    const source = `${closedForms}\nexport { analyseCapture } from './src/waveform/index.js';`;
    const { gzipped } = await measure('waveform without spectra', source);
    expect(gzipped).toBeLessThanOrEqual(9.5 * kilobyte);
  });

  it('the states of a monitor: at most 5 kB', async () => {
    const { gzipped, packages } = await measure(
      'monitor, states',
      "export { monitorStates } from './src/monitor/index.js';",
    );
    expect(gzipped).toBeLessThanOrEqual(5 * kilobyte);
    expect(packages).toEqual([]);
  });

  it('monitor with challenges, trip points, readings and pads, and every working: at most 18 kB', async () => {
    const { gzipped, packages } = await measure('monitor, all', all('monitor'));
    expect(gzipped).toBeLessThanOrEqual(18 * kilobyte);
    expect(packages).toEqual([]);
  });

  it('first order, coverage, conformance, test uncertainty ratio and global risk: at most 14 kB', async () => {
    const { gzipped, packages } = await measure('uncertainty + decision, plain', plainRisk);
    expect(gzipped).toBeLessThanOrEqual(14 * kilobyte);
    expect(packages).toEqual([]);
  });

  it('uncertainty and decision, with Monte Carlo, instruments, every rule and its working: at most 28 kB', async () => {
    const source = `${exportsOf('uncertainty', (path) => !/^(captures|vectors)\//.test(path))}\n${all('decision')}`;
    const { gzipped, packages } = await measure('uncertainty + decision, all', source);
    expect(gzipped).toBeLessThanOrEqual(28 * kilobyte);
    expect(packages).toEqual([]);
  });

  it('the same with the budgets of captures and quantities of several components: at most 32 kB', async () => {
    const { gzipped, packages } = await measure('the same, captures, vectors', all('uncertainty', 'decision'));
    expect(gzipped).toBeLessThanOrEqual(32 * kilobyte);
    expect(packages).toEqual([]);
  });

  it('one function: at most 1 kB, so that the rest is left out', async () => {
    const { gzipped } = await measure('currentFromPower', "export { currentFromPower } from './src/index.js';");
    expect(gzipped).toBeLessThanOrEqual(kilobyte);
  });

  it.each(['units', 'procedure'])('%s depends on no package', async (room) => {
    const { packages } = await measure(room, all(room));
    expect(packages).toEqual([]);
  });

  it('the core entry depends on no package', async () => {
    const { packages } = await measure('esu-limits', "export * from './src/index.js';");
    expect(packages).toEqual([]);
  });

  it('report: its package is the CSV writer', async () => {
    const { packages } = await measure('report', all('report'));
    expect(packages).toEqual(['papaparse']);
  });

  it('schema: its packages are zod and the CSV reader', async () => {
    const { packages } = await measure('schema', all('schema'));
    expect(packages).toEqual(['papaparse', 'zod']);
  });
});

describe('the size check itself', () => {
  it('sees a package', async () => {
    const { packages } = await bundleSize("export { z } from 'zod';");
    expect(packages).toEqual(['zod']);
  });

  it('sees a package that is left outside the bundle', async () => {
    const { packages } = await bundleSize("export { z } from 'zod';", ['zod']);
    expect(packages).toEqual(['zod']);
  });

  it('drops what is not used', async () => {
    const one = await bundleSize("export { currentFromPower } from './src/index.js';");
    const everything = await bundleSize("export * from './src/index.js';");
    expect(one.gzipped).toBeLessThan(everything.gzipped / 4);
  });
});
