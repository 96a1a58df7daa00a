export { allowedFunctions, type Recomputable, recompute } from './recompute.js';
