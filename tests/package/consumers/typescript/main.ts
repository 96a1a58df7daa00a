// The package in a TypeScript project of ES modules, each room by its sub-path.
import { CalculationError } from 'esu-limits';
import type { Band } from 'esu-limits/band';
import { currentFromPower } from 'esu-limits/circuit';
import { type LoadCurve, loadCurve } from 'esu-limits/curve';
import { recompute } from 'esu-limits/model';
import { type Plan, planVerification } from 'esu-limits/procedure';
import { worksheetText } from 'esu-limits/report';
import { parseBench, parseSpecification } from 'esu-limits/schema';
import {
  arcsineInput,
  monteCarlo,
  normalInput,
  rectangularInput,
  repeatedReadingsInput,
  triangularInput,
} from 'esu-limits/uncertainty';
import { parseQuantity } from 'esu-limits/units';
import { catalogue } from 'esu-limits/working';
import bench from './bench.json' with { type: 'json' };
import sheet from './sheet.json' with { type: 'json' };

const current: number = currentFromPower(120, 500);
console.log(`current ${current}`);

console.log(`text ${parseQuantity('750 mA').value}`);

const curve: LoadCurve = loadCurve([
  { load: 100, power: 100 },
  { load: 300, power: 300 },
]);
console.log(`curve ${curve.powerAt(200)}`);

const plan: Plan = planVerification(parseSpecification(sheet), parseBench(bench));
for (const point of plan.points) {
  const limits: Band = point.limits;
  console.log(`plan ${point.id} ${limits.lower} ${limits.upper}`);
  for (const step of point.working) {
    if (!catalogue.some((entry) => entry.id === step.formula)) console.log(`unknown formula ${step.formula}`);
    if (Math.abs(recompute(step) / step.value - 1) > 1e-12) console.log(`not recomputed: ${step.formula}`);
  }
}

console.log(`sheet ${worksheetText(plan).includes('500 Ω')}`);

// The same digits for this seed on every engine.
const {
  value,
  standardUncertainty: u,
  symmetricInterval,
  shortestInterval,
} = monteCarlo(
  (x) => x.I * x.I * x.R * (1 + x.strays) + x.offset * x.ripple,
  {
    I: normalInput({ value: 0.5, standardUncertainty: 0.004 }),
    R: rectangularInput({ value: 400, halfWidth: 4 }),
    strays: triangularInput({ value: 0, halfWidth: 0.01 }),
    offset: repeatedReadingsInput([0.1, 0.13, 0.11, 0.12]),
    ripple: arcsineInput({ value: 1, halfWidth: 0.5 }),
  },
  { seed: 2026, trials: 20_000, interval: 'both' },
);
const limits = [symmetricInterval?.lower, symmetricInterval?.upper, shortestInterval?.lower, shortestInterval?.upper];
console.log(`monte carlo ${[value, u, ...limits].join(' ')}`);

for (const faulty of [() => currentFromPower(-1, 500), () => parseBench([])]) {
  try {
    faulty();
  } catch (error) {
    if (error instanceof CalculationError) console.log(`refused ${error.code}`);
  }
}
