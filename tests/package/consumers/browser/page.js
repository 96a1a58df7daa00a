const { CalculationError, currentFromPower } = globalThis.esuLimits;

const lines = [`current ${currentFromPower(120, 500)}`];

try {
  currentFromPower(-1, 500);
} catch (error) {
  if (error instanceof CalculationError) lines.push(`refused ${error.code}`);
}

document.getElementById('report').textContent = lines.join('\n');
