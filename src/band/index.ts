export type { Band } from './band.js';
export type { Sides, Tolerance } from './tolerance.js';
