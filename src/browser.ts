export * from './index.js';
export * from './procedure/index.js';
