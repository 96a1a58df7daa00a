import { choice } from '../parts/choice.js';

/** State of the unit when it was read. */
export const phase = choice(['as-found', 'as-left']);
