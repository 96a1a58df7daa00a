// The package as one script in a page.
const { CalculationError, currentFromPower, loadCurve, parseBench, parseQuantity, parseSpecification } =
  globalThis.esuLimits;
const { planVerification, worksheetText } = globalThis.esuLimits;

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
