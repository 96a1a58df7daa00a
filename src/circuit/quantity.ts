/** A quantity in which RF output is read or limited: rms current, rms voltage or power. */
export type Quantity = 'power' | 'current' | 'voltage';
