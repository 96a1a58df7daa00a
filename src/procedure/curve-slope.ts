import type { OutputModel } from './output-model.js';
import type { Setting } from './specification.js';

/** How power follows the load around a point, and whether the published data say so. */
export interface CurveSlope {
  /** d ln P / d ln R. */
  readonly slope: number;
  /** False when nothing published reaches beyond the load: constant power is assumed then. */
  readonly published: boolean;
}

/** Relative step to either side of the load: about the error that a bench load may have. */
const relativeStep = 0.01;

/** Slope of the published power around a load, over 1 % to either side, or to one side at the end of the data. */
export function curveSlope(model: OutputModel, setting: Setting, load: number): CurveSlope {
  const at = (ratio: number): number | undefined => {
    const answer = model.powerAt(setting, load * ratio);
    return typeof answer === 'string' ? undefined : answer.power;
  };
  const here = at(1);
  const below = at(1 - relativeStep);
  const above = at(1 + relativeStep);
  const [lowRatio, lowPower] = below === undefined ? [1, here] : [1 - relativeStep, below];
  const [highRatio, highPower] = above === undefined ? [1, here] : [1 + relativeStep, above];
  if (lowPower === undefined || highPower === undefined || lowRatio === highRatio)
    return { slope: 0, published: false };
  return { slope: Math.log(highPower / lowPower) / Math.log(highRatio / lowRatio), published: true };
}
