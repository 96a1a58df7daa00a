// The package in a TypeScript project of ES modules, each room by its sub-path.
import { CalculationError, type Plan } from 'esu-limits';
import type { Band } from 'esu-limits/band';
import { currentFromPower } from 'esu-limits/circuit';
import { type LoadCurve, loadCurve } from 'esu-limits/curve';
import { recompute } from 'esu-limits/model';
import { planVerification } from 'esu-limits/procedure';
import { worksheetText } from 'esu-limits/report';
import { parseBench, parseSpecification } from 'esu-limits/schema';
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

for (const faulty of [() => currentFromPower(-1, 500), () => parseBench([])]) {
  try {
    faulty();
  } catch (error) {
    if (error instanceof CalculationError) console.log(`refused ${error.code}`);
  }
}
