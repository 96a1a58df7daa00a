// The package as one script in a page.
const { CalculationError, currentFromPower, loadCurve, parseBench, parseQuantity, parseSpecification } =
  globalThis.esuLimits;
const { planVerification, worksheetText } = globalThis.esuLimits;
const { arcsineInput, monteCarlo, normalInput, rectangularInput, repeatedReadingsInput, triangularInput } =
  globalThis.esuLimits;

const [sheet, bench] = await Promise.all(
  ['sheet.json', 'bench.json'].map((name) => fetch(name).then((response) => response.json())),
);
const lines = [`current ${currentFromPower(120, 500)}`];

lines.push(`text ${parseQuantity('750 mA').value}`);

const curve = loadCurve([
  { load: 100, power: 100 },
  { load: 300, power: 300 },
]);
lines.push(`curve ${curve.powerAt(200)}`);

const plan = planVerification(parseSpecification(sheet), parseBench(bench));
for (const point of plan.points) lines.push(`plan ${point.id} ${point.limits.lower} ${point.limits.upper}`);

lines.push(`sheet ${worksheetText(plan).includes('500 Ω')}`);

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
lines.push(`monte carlo ${[value, u, ...limits].join(' ')}`);

for (const faulty of [() => currentFromPower(-1, 500), () => parseBench([])]) {
  try {
    faulty();
  } catch (error) {
    if (error instanceof CalculationError) lines.push(`refused ${error.code}`);
  }
}

const report = document.getElementById('report');
report.textContent = lines.join('\n');
report.dataset.done = 'yes';
