export { allowedFunctions, modelFunctions } from './closed-list.js';
export type { DifferentiatedModel, MeasurementModel, ModelExpression, ModelInputs, ModelOptions } from './model.js';
export { parseModel } from './parse-model.js';
export { type Recomputable, recompute } from './recompute.js';
export { expressionTex } from './tex/expression-tex.js';
