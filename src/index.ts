export * from './band/index.js';
export * from './checks/index.js';
export * from './circuit/index.js';
export * from './curve/index.js';
export * from './procedure/index.js';
export * from './uncertainty/index.js';
export * from './units/index.js';
export * from './working/index.js';
