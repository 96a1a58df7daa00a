// The package in a CommonJS script, each room by its sub-path.
const { CalculationError } = require('esu-limits');
const { currentFromPower } = require('esu-limits/circuit');
const { loadCurve } = require('esu-limits/curve');
const { recompute } = require('esu-limits/model');
const { planVerification } = require('esu-limits/procedure');
const { worksheetText } = require('esu-limits/report');
const { parseBench, parseSpecification } = require('esu-limits/schema');
const { parseQuantity } = require('esu-limits/units');
const { catalogue } = require('esu-limits/working');
const bench = require('./bench.json');
const sheet = require('./sheet.json');

console.log(`current ${currentFromPower(120, 500)}`);

console.log(`text ${parseQuantity('750 mA').value}`);

const curve = loadCurve([
  { load: 100, power: 100 },
  { load: 300, power: 300 },
]);
console.log(`curve ${curve.powerAt(200)}`);

const plan = planVerification(parseSpecification(sheet), parseBench(bench));
for (const point of plan.points) {
  console.log(`plan ${point.id} ${point.limits.lower} ${point.limits.upper}`);
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
