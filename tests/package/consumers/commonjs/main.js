// The package in a CommonJS script, each room by its sub-path.
const { CalculationError } = require('esu-limits');
const { currentFromPower } = require('esu-limits/circuit');
const { loadCurve } = require('esu-limits/curve');
const { recompute } = require('esu-limits/model');
const { planVerification } = require('esu-limits/procedure');
const { worksheetText } = require('esu-limits/report');
const { parseBench, parseSpecification } = require('esu-limits/schema');
const {
  arcsineInput,
  monteCarlo,
  normalInput,
  rectangularInput,
  repeatedReadingsInput,
  triangularInput,
} = require('esu-limits/uncertainty');
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
const limits = [symmetricInterval.lower, symmetricInterval.upper, shortestInterval.lower, shortestInterval.upper];
console.log(`monte carlo ${[value, u, ...limits].join(' ')}`);

for (const faulty of [() => currentFromPower(-1, 500), () => parseBench([])]) {
  try {
    faulty();
  } catch (error) {
    if (error instanceof CalculationError) console.log(`refused ${error.code}`);
  }
}
