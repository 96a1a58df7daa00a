import { readFileSync } from 'node:fs';

/** What a user bundles, and how large it may be. */
export interface SizeCase {
  readonly what: string;
  /** In kilobytes of 1024 bytes, minified and compressed with gzip. */
  readonly limit: number;
  readonly source: string;
}

/** Everything of a room. */
export function all(...rooms: readonly string[]): string {
  return rooms.map((room) => `export * from './src/${room}/index.js';`).join('\n');
}

/** Exports of a room from the files that are wanted; what was added to a room lies in folders of it. */
function exportsOf(room: string, wanted: (path: string) => boolean): string {
  const index = readFileSync(new URL(`../../src/${room}/index.ts`, import.meta.url), 'utf8');
  const statements = [...index.matchAll(/export [^;]+ from '\.\/([^']+)';/g)];
  return statements
    .filter(([, path = '']) => wanted(path))
    .map(([statement]) => statement.replace("'./", `'./src/${room}/`))
    .join('\n');
}

const named = (room: string, names: string): string => `export { ${names} } from './src/${room}/index.js';`;

/** The functions that answer with plain numbers and bands; their twins, which show the working, carry the formulas. */
const calculation = [
  named('circuit', 'currentFromPower, powerFromCurrent, powerFromVoltage, voltageFromPower'),
  named('band', 'bandAround, convertBand, intersectBands, marginIn, roundBand'),
  named('curve', 'loadCurve'),
].join('\n');

const closedForms = named(
  'waveform',
  'averageRespondingReading, crestFactorOfGatedSine, dampedSine, gatedSine, pulseTrain, sineWave, squareWave, triangleWave',
);
const captures = named('waveform', 'analyseCapture');

/** What a verdict needs: the uncertainty, k, the probability that it is right, the risk of the rule. */
const budget = named('uncertainty', 'expandedUncertainty, normalInput, propagate, rectangularInput');
const plainRisk = `${budget}\n${named('decision', 'conformanceProbability, globalRisk, testUncertaintyRatio')}`;

/** Functions that a calculation imports first, then what they are part of, whole. */
export const sizeCases: readonly SizeCase[] = [
  { what: 'one function: currentFromPower', limit: 1, source: "export { currentFromPower } from './src/index.js';" },
  { what: 'circuit, band, curve: what limits are calculated with', limit: 5, source: calculation },
  {
    what: 'circuit, band and curve, every function and working',
    limit: 14,
    source: `${exportsOf('circuit', (path) => !path.includes('/'))}\n${all('band', 'curve')}`,
  },
  // Their twins, which show the working, carry three dozen formulas.
  {
    what: 'strays, leads, heat, sources, without their own working',
    limit: 7,
    source: exportsOf('circuit', (path) => path.includes('/') && !path.includes('/explain-')),
  },
  {
    what: 'strays, leads, heat, sources, every working',
    limit: 10.5,
    source: exportsOf('circuit', (path) => path.includes('/')),
  },
  { what: 'waveform: closed forms', limit: 6, source: closedForms },
  { what: 'waveform: captures', limit: 6, source: captures },
  { what: 'waveform: both, without spectra', limit: 9.5, source: `${closedForms}\n${captures}` },
  { what: 'monitor: states', limit: 5, source: named('monitor', 'monitorStates') },
  { what: 'monitor, every function and working', limit: 18, source: all('monitor') },
  { what: 'uncertainty, decision: budget, k, conformance, ratio, global risk', limit: 14, source: plainRisk },
  {
    what: 'the same with Monte Carlo',
    limit: 16,
    source: `${plainRisk}\n${named('uncertainty', 'monteCarlo')}`,
  },
  {
    what: 'uncertainty and decision, every function and working',
    limit: 28,
    source: `${exportsOf('uncertainty', (path) => !/^(captures|vectors)\//.test(path))}\n${all('decision')}`,
  },
  {
    what: 'the same with captures and pairs of quantities',
    limit: 32,
    source: all('uncertainty', 'decision'),
  },
];
