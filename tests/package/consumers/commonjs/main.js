const { CalculationError, currentFromPower } = require('esu-limits');

console.log(`current ${currentFromPower(120, 500)}`);

try {
  currentFromPower(-1, 500);
} catch (error) {
  if (error instanceof CalculationError) console.log(`refused ${error.code}`);
}
