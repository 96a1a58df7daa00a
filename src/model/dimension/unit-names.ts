import { type Dimension, dimension } from './dimension.js';

/**
 * Coherent units of the SI, by name: a value of a model is a number of these.
 * Where two have the same dimension, the first is the one that names a result.
 */
export const unitNames: ReadonlyMap<string, Dimension> = /* @__PURE__ */ new Map<string, Dimension>([
  // kg, m, s, A, K, mol, cd
  ['W', dimension(1, 2, -3)],
  ['V', dimension(1, 2, -3, -1)],
  ['A', dimension(0, 0, 0, 1)],
  ['ohm', dimension(1, 2, -3, -2)],
  ['Hz', dimension(0, 0, -1)],
  ['s', dimension(0, 0, 1)],
  ['K', dimension(0, 0, 0, 0, 1)],
  ['H', dimension(1, 2, -2, -2)],
  ['F', dimension(-1, -2, 4, 2)],
  ['m', dimension(0, 1)],
  ['J', dimension(1, 2, -2)],
  ['C', dimension(0, 0, 1, 1)],
  ['S', dimension(-1, -2, 3, 2)],
  ['kg', dimension(1)],
  ['N', dimension(1, 1, -2)],
  ['Pa', dimension(1, -1, -2)],
  ['Wb', dimension(1, 2, -2, -1)],
  ['T', dimension(1, 0, -2, -1)],
  ['mol', dimension(0, 0, 0, 0, 0, 1)],
  ['cd', dimension(0, 0, 0, 0, 0, 0, 1)],
  ['VA', dimension(1, 2, -3)],
  ['var', dimension(1, 2, -3)],
  ['rad', dimension()],
  ['sr', dimension()],
]);

/** Spellings that mean a unit of the list. */
export const otherSpellings: ReadonlyMap<string, string> = /* @__PURE__ */ new Map([
  ['\u03a9', 'ohm'],
  ['\u2126', 'ohm'],
  ['ohms', 'ohm'],
]);
